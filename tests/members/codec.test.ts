/** Cut lists and decks out of JSON: what they weigh, where each figure stands, and what cannot be read. The trailer is invented. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import { deckWeight, frameWeight, readCutList, readDeck, readMember, readSurface } from '../../src/members/index.js';
import { nodesOf, replay, weakestInputs } from '../../src/trace/index.js';
import { lb } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

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

describe('cut list', () => {
  const read = rightOf(readCutList(frame, 'trailer.curb.frame'));
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
    weighed.lines.forEach(({ weight, name }, i) =>
      expect(plain(weight) / (byHand[i] as number), name).toBeCloseTo(1, 3),
    );
    expectReplays(weighed.total, ...weighed.lines.map(({ at }) => at));
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
    const weighed = rightOf(deckWeight(rightOf(readDeck(areas, 'deck'))));
    expect(weighed.lines.map(({ weight }) => Number(plain(weight).toFixed(3)))).toEqual([
      4.75, 1.764, 5.779, 6.16, 1.8, 4,
    ]);
    expectReplays(weighed.total);
    const pine = rightOf(deckWeight(rightOf(readDeck(deck, 'trailer.curb.deck'))));
    expect(plain(pine.total)).toBeCloseTo((37.33 * 18 * (83 / 12)) / 8, 0);
    expect(JSON.stringify(pine.total.why)).toContain('trailer.curb.deck.0.surface.boards.wood.moisture');
  });
  it.each([
    [{ by: 'air-dry range', species: 'Keruing / apitong', end: 'high' }, 50 / 8],
    [{ by: 'treated', state: 'freshly treated', end: 'low' }, 70 / 8],
  ])('reads the wood %j', (wood, weight) =>
    expect(plain(rightOf(readSurface({ boards: { size: '2x8', wood } }, 'deck')) as never)).toBeCloseTo(weight, 10),
  );
});

describe('what cannot be read', () => {
  it.each<[string, unknown, object]>([
    ['no list', {}, { tag: 'UndecodableList', path: 'frame', needed: 'an array of cut-list lines' }],
    ['a line that is no record', ['rail'], { tag: 'UndecodableList', path: 'frame.0' }],
    ['a count with a unit', line({ count: '2 ft' }), { tag: 'UndecodableList', path: 'frame.0.count' }],
    ['a misspelt key', line({ lenght: '3 ft' }), { tag: 'UndecodableList', path: 'frame.0' }],
    [
      'a missing length',
      [{ name: 'rails', member: 'C6x8.2', count: '2', from: '48 in' }],
      { tag: 'UndecodableList', path: 'frame.0.length', found: 'nothing' },
    ],
    ['a length without a unit', line({ length: '20' }), { tag: 'UndecodableList', path: 'frame.0.length' }],
    ['a length in pounds', line({ length: '20 lb' }), { tag: 'UndecodableList', path: 'frame.0.length' }],
    ['a bare number', line({ length: 20 }), { tag: 'UndecodableList', path: 'frame.0.length', found: '20' }],
    [
      'a basis that is none',
      line({ length: { value: '20', unit: 'ft', basis: 'guess' } }),
      { tag: 'UndecodableList', path: 'frame.0.length' },
    ],
    ['both places', line({ at: '3 in' }), { tag: 'UndecodableList', path: 'frame.0' }],
    [
      'an unlisted section',
      line({ member: 'C6x9' }),
      { tag: 'NotTabulated', path: 'frame.0.member', nearest: ['C6X8.2', 'C6X10.5', 'C6X13'] },
    ],
    ['a text that is no section', line({ member: 'rail' }), { tag: 'UnreadableDesignation', path: 'frame.0.member' }],
    ['a member of no kind', line({ member: { beam: 'W8x10' } }), { tag: 'UndecodableList', path: 'frame.0.member' }],
    [
      'a member of two kinds',
      line({ member: { flatBar: {}, board: {} } }),
      { tag: 'UndecodableList', path: 'frame.0.member' },
    ],
    [
      'a material unknown',
      line({ member: { flatBar: { thickness: '1/4 in', width: '3 in', material: 'unobtainium' } } }),
      { tag: 'UndecodableList', path: 'frame.0.member.flatBar.material' },
    ],
    [
      'a bar without width',
      line({ member: { flatBar: { thickness: '1/4 in', width: '0 in', material: 'steel' } } }),
      { tag: 'OutsideItsRange', what: 'bar width', path: 'frame.0.member.flatBar.width' },
    ],
    ['a count rule unknown', [{ ...frame[1], rule: 'about every' }], { tag: 'UndecodableList', path: 'frame.0.rule' }],
    [
      'a wood by nothing',
      line({ member: { board: { size: '2x8', wood: { species: 'Oak' } } } }),
      { tag: 'UndecodableList', path: 'frame.0.member.board.wood.by' },
    ],
  ])('%s', (_, input, error) => {
    const read = readCutList(input, 'frame');
    expect(leftOf(read)).toMatchObject(error);
    if (isLeft(read))
      expect(describeError(read.left)).toMatch(
        /^frame[^:]*: (.+; it must be .+|the table .+|".+" is not the name of a section; .+)/,
      );
  });
  it('a spacing below zero is refused when it is weighed, at its place in the spec', () => {
    expect(leftOf(frameWeight(rightOf(readCutList([{ ...frame[1], spacing: '-16 in' }], 'frame'))))).toMatchObject({
      tag: 'OutsideItsRange',
      path: 'frame.0.spacing',
    });
  });
  it('decks and surfaces', () => {
    expect(leftOf(readDeck([{ ...deck[0], surface: { sheet: { gauge: 10 } } }], 'deck'))).toMatchObject({
      path: 'deck.0.surface.sheet.system',
    });
    expect(leftOf(readDeck([{ ...deck[0], surface: { floorPlate: '1/16' } }], 'deck'))).toMatchObject({
      tag: 'NotTabulated',
      path: 'deck.0.surface.floorPlate',
    });
    expect(leftOf(readDeck('deck', 'deck'))).toMatchObject({ tag: 'UndecodableList', path: 'deck' });
  });
  it('never throws, whatever the JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (input) => {
        for (const read of [
          readCutList(input, 'x'),
          readDeck(input, 'x'),
          readCutList([input], 'x'),
          readDeck([input], 'x'),
          readMember(input, 'x'),
          readSurface(input, 'x'),
          readCutList(line({ member: input }), 'x'),
        ]) {
          if (isLeft(read)) expect(describeError(read.left)).not.toContain('undefined');
        }
      }),
      { numRuns: 200 },
    );
  });
});
