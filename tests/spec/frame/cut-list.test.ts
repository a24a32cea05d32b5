/** Cut lists and decks out of JSON: what they weigh, the path of each figure, and what cannot be read. The trailer is invented. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../../src/errors.js';
import { deckWeight, frameWeight } from '../../../src/members/index.js';
import { cutListCodec } from '../../../src/spec/frame/cut-list.js';
import { decodeCutList, decodeDeck, decodeMember, decodeSurface } from '../../../src/spec/index.js';
import { nodesOf, replay, weakestInputs } from '../../../src/trace/index.js';
import { inch, lb } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

const frame = [
  { name: 'rails', member: 'C6x8.2', length: '20 ft', count: '2', from: '48 in' },
  {
    name: 'crossmembers',
    member: 'C3x4.1',
    length: '83 in',
    spacing: '16 in',
    over: '18 ft',
    from: '60 in',
    rule: 'first at the start',
  },
  {
    name: 'header',
    member: {
      formedChannel: {
        depth: '6 in',
        flangeWidth: '2 in',
        thickness: '3/16 in',
        insideRadius: '3/16 in',
        material: 'steel',
      },
    },
    length: `6' 11"`,
    count: 1,
    at: '49 in',
  },
  {
    name: 'rub rail',
    member: { flatBar: { thickness: '1/4 in', width: '3 in', material: 'steel' } },
    length: { value: '18', unit: 'ft', basis: 'label' },
    count: '2',
    from: '60 in',
  },
  {
    name: 'tie rods',
    member: { roundBar: { diameter: '1/2 in', material: '490 lb/ft3' } },
    length: '83 in',
    count: '4',
    at: '100 in',
  },
  {
    name: 'side rail',
    member: { own: { name: 'aluminium side rail', weightPerFoot: '3.5 kg/m' } },
    length: '18 ft',
    count: '2',
    from: '60 in',
  },
  {
    name: 'sill',
    member: { board: { size: '2x6', wood: { by: 'handbook gravity at 12 %', species: 'Oak, white' } } },
    length: '83 in',
    count: '1',
    at: '62 in',
  },
  { name: 'coupler', weight: '35 lb', at: '4 in' },
];
const deck = [
  {
    name: 'deck',
    length: '18 ft',
    width: '83 in',
    from: '60 in',
    surface: { boards: { size: '2x8', wood: { by: 'NDS gravity', species: 'Southern Pine', moisture: '19 %' } } },
  },
];
const line = (changes: object) => [{ ...frame[0], ...changes }];
const bar = (changes: object) =>
  line({ member: { flatBar: { thickness: '1/4 in', width: '3 in', material: 'steel', ...changes } } });
const oak = { by: 'handbook gravity at 12 %', species: 'Oak, white' };
const board = (changes: object) => line({ member: { board: { size: '2x8', wood: oak, ...changes } } });

describe('cut list', () => {
  const read = rightOf(decodeCutList(frame, 'trailer.curb.frame'));
  const weighed = rightOf(frameWeight(read));
  it('weighs as by hand', () => {
    const byHand = [
      328,
      (14 * 4.1 * 83) / 12,
      (5.987 * 83) / 12,
      2.552 * 36,
      (4 * 0.6682 * 83) / 12,
      2.35189 * 36,
      (((62.4 * 0.68 * 1.12 * 8.25) / 144) * 83) / 12,
      35,
    ];
    for (const [i, { weight, name }] of weighed.lines.entries())
      expect(plain(weight) / (byHand[i] as number), name).toBeCloseTo(1, 3);
    expectReplays(weighed.total, ...weighed.lines.map(({ at }) => at));
  });
  it('names every figure by its line', () => {
    const given = nodesOf([weighed.total.why]).flatMap((node) => (node.kind === 'given' ? [node.symbol] : []));
    const name = (frame[0] as { readonly name: string }).name;
    for (const symbol of [`${name} length`, `number of ${name}`]) expect(given).toContain(symbol);
    expect(given.join()).not.toMatch(/undefined/);
  });
  it('gives every figure its place in the spec, and its basis', () => {
    const paths = nodesOf([weighed.total.why, ...weighed.lines.map(({ at }) => at.why)]).flatMap((node) =>
      node.kind === 'given' ? [node.path] : [],
    );
    for (const path of [
      '0.length',
      '0.count',
      '0.from',
      '1.spacing',
      '1.over',
      '1.from',
      '2.member.formedChannel.thickness',
      '3.member.flatBar.width',
      '5.member.own.weightPerFoot',
      '7.weight',
      '7.at',
    ]) {
      expect(paths).toContain(`trailer.curb.frame.${path}`);
    }
    expect(paths).not.toContain(undefined);
    expect(weakestInputs(weighed.lines[3]!.weight).inputs.some(({ basis }) => basis === 'label')).toBe(false);
    expect(
      nodesOf([weighed.lines[3]!.weight.why]).some((node) => node.kind === 'given' && node.basis === 'label'),
    ).toBe(true);
  });
  it('weighs again with another length put in at its place', () => {
    const longer = replay(weighed.total, new Map([['trailer.curb.frame.0.length', lb(22).value]]));
    expect(longer.value.minus(weighed.total.value.value).toNumber()).toBeCloseTo(2 * 2 * 8.2, 9);
  });
});

describe('deck', () => {
  it('weighs every kind of surface', () => {
    const areas = [
      { boards: { size: '2x8', wood: { by: 'density', density: '38 lb/ft3' } } },
      { plate: { thickness: '1/8 in', material: 'aluminium' } },
      { sheet: { gauge: 10, system: 'galvanized' } },
      { floorPlate: '1/8' },
      { expandedMetal: '3/4 #9' },
      { weightPerSquareFoot: '4 lb/ft2' },
    ].map((surface, i) => ({ name: `area ${i}`, length: '1 ft', width: '1 ft', from: `${i} ft`, surface }));
    const weighed = rightOf(deckWeight(rightOf(decodeDeck(areas, 'deck'))));
    expect(weighed.lines.map(({ weight }) => Number(plain(weight).toFixed(3)))).toEqual([
      4.75, 1.764, 5.779, 6.16, 1.8, 4,
    ]);
    expectReplays(weighed.total);
    const pine = rightOf(deckWeight(rightOf(decodeDeck(deck, 'trailer.curb.deck'))));
    expect(plain(pine.total)).toBeCloseTo((37.33 * 18 * (83 / 12)) / 8, 0);
    expect(JSON.stringify(pine.total.why)).toContain('trailer.curb.deck.0.surface.boards.wood.moisture');
  });
  it.each([
    [{ by: 'air-dry range', species: 'Keruing / apitong', end: 'high' }, 50 / 8],
    [{ by: 'treated', state: 'freshly treated', end: 'low' }, 70 / 8],
  ])('reads the wood %j', (wood, weight) =>
    expect(plain(rightOf(decodeSurface({ boards: { size: '2x8', wood } }, 'deck')) as never)).toBeCloseTo(weight, 10),
  );
});

describe('what cannot be read', () => {
  it.each<[string, unknown, string, string]>([
    ['no list', {}, 'wrong kind', 'frame'],
    ['a line that is no record', ['rail'], 'wrong kind', 'frame.0'],
    ['a count with a unit', line({ count: '2 ft' }), 'wrong kind', 'frame.0.count'],
    ['a count of one and a half', line({ count: 1.5 }), 'out of range', 'frame.0.count'],
    ['a misspelt key', line({ lenght: '3 ft' }), 'unknown key', 'frame.0.lenght'],
    ['a missing length', line({ length: undefined }), 'missing', 'frame.0.length'],
    ['a length without a unit', line({ length: '20' }), 'no unit', 'frame.0.length'],
    ['a length in pounds', line({ length: '20 lb' }), 'unreadable', 'frame.0.length'],
    ['a bare number', line({ length: 20 }), 'no unit', 'frame.0.length'],
    ['a length beyond all sizes', line({ length: '200 ft' }), 'out of range', 'frame.0.length'],
    [
      'a basis that is none',
      line({ length: { value: '20', unit: 'ft', basis: 'guess' } }),
      'wrong kind',
      'frame.0.length',
    ],
    ['both places', line({ at: '3 in' }), 'misplaced key', 'frame.0.from'],
    ['an unlisted section', line({ member: 'C6x9' }), 'refused', 'frame.0.member'],
    ['a text that is no section', line({ member: 'rail' }), 'refused', 'frame.0.member'],
    ['a member of no kind', line({ member: { beam: 'W8x10' } }), 'wrong kind', 'frame.0.member'],
    ['a member of two kinds', line({ member: { flatBar: {}, board: {} } }), 'wrong kind', 'frame.0.member'],
    ['a material unknown', bar({ material: 'unobtainium' }), 'unreadable', 'frame.0.member.flatBar.material'],
    ['a bar without width', bar({ width: '0 in' }), 'out of range', 'frame.0.member.flatBar.width'],
    ['a count rule unknown', [{ ...frame[1], rule: 'about every' }], 'wrong kind', 'frame.0.rule'],
    ['a wood by nothing', board({ wood: { species: 'Oak' } }), 'wrong kind', 'frame.0.member.board.wood'],
    ['a species of no table', board({ wood: { ...oak, species: 'Balsa' } }), 'refused', 'frame.0.member.board.wood'],
    ['a size of no table', board({ size: '2x7' }), 'refused', 'frame.0.member.board.size'],
  ])('%s', (_, input, fault, path) => {
    const error = leftOf(decodeCutList(input, 'frame'));
    expect(error.problems.map((problem) => [problem.path, problem.fault])).toEqual([[path, fault]]);
    expect(describeError(error)).toMatch(/^frame[^:]*: .+/);
  });
  it.each([
    ['spacing', ['frame.0.over', 'frame.0.from', 'frame.0.rule']],
    ['over', ['frame.0.spacing', 'frame.0.from', 'frame.0.rule']],
    ['rule', ['frame.0.spacing', 'frame.0.over', 'frame.0.from']],
  ] as const)('a line with %s alone stands at a spacing, and lacks the rest', (key, missing) => {
    const { name, member, length } = frame[1] as Record<string, unknown>;
    const bare = { name, member, length, [key]: (frame[1] as Record<string, unknown>)[key] };
    expect(leftOf(decodeCutList([bare], 'frame')).problems.map(({ path }) => path)).toEqual(missing);
  });
  it('is told line by line, key by key', () => {
    const bad = [
      { ...frame[0], length: '20', member: 'C6x9' },
      { ...frame[7], weight: '35 in' },
      { ...bar({ width: '0 in' })[0], count: 0 },
    ];
    expect(leftOf(decodeCutList(bad, 'frame')).problems.map(({ path }) => path)).toEqual([
      'frame.0.member',
      'frame.0.length',
      'frame.1.weight',
      'frame.2.member.flatBar.width',
      'frame.2.count',
    ]);
  });
  it('names the nearest rows of a table, and the form a key belongs to', () => {
    const [unlisted] = leftOf(decodeCutList(line({ member: 'C6x9' }), 'frame')).problems;
    expect(unlisted?.needed).toContain('C6X8.2');
    expect(describeError(leftOf(decodeCutList(line({ at: '3 in' }), 'trailer.curb.frame')))).toBe(
      'trailer.curb.frame.0.from: the key "from" does not belong here; it belongs to lengthwise pieces or pieces at a spacing',
    );
  });
  it('takes a basis everywhere, and figures that a program made', () => {
    const said = { text: '20 ft', basis: 'scale' };
    const list = rightOf(
      decodeCutList(
        [
          { ...frame[0], length: said, count: { text: '2', basis: 'label' }, from: inch(48) },
          {
            name: 'box',
            weight: { text: '35 lb', basis: 'scale' },
            at: { value: '4', unit: 'in', basis: 'estimated' },
          },
          bar({ width: { text: '3 in', basis: 'label' } })[0],
        ],
        'frame',
      ),
    );
    const bases = JSON.stringify(list).match(/"basis":"(scale|label|estimated)"/g) ?? [];
    expect(new Set(bases).size).toBe(3);
    expect(cutListCodec.is(list)).toBe(true);
    expect(rightOf(decodeCutList(cutListCodec.encode(list), 'frame'))).toEqual(list);
  });
  it('a spacing below zero is refused at its key', () => {
    const { problems } = leftOf(decodeCutList([{ ...frame[1], spacing: '-16 in' }], 'frame'));
    expect(problems.map(({ path, fault }) => [path, fault])).toEqual([['frame.0.spacing', 'out of range']]);
  });
  it('decks and surfaces', () => {
    expect(leftOf(decodeDeck([{ ...deck[0], surface: { sheet: { gauge: 10 } } }], 'deck'))).toMatchObject({
      path: 'deck.0.surface.sheet.system',
    });
    expect(leftOf(decodeDeck([{ ...deck[0], surface: { floorPlate: '1/16' } }], 'deck'))).toMatchObject({
      path: 'deck.0.surface.floorPlate',
    });
    expect(leftOf(decodeDeck('deck', 'deck'))).toMatchObject({ tag: 'UndecodableSpec', path: 'deck' });
  });
  it('never throws, whatever the JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (input) => {
        for (const read of [
          decodeCutList(input, 'x'),
          decodeDeck(input, 'x'),
          decodeCutList([input], 'x'),
          decodeDeck([input], 'x'),
          decodeMember(input, 'x'),
          decodeSurface(input, 'x'),
          decodeCutList(line({ member: input }), 'x'),
        ]) {
          if (isLeft(read)) expect(describeError(read.left)).not.toContain('undefined');
        }
      }),
      { numRuns: 200 },
    );
  });
});
