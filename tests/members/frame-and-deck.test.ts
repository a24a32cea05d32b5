/** Cut lists, spacing rules, deck areas, growth per foot and what it costs. All trailers invented. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  board,
  type CountRule,
  type CutLine,
  deckWeight,
  frameWeight,
  payloadByLength,
  publishedSection,
  type SpacedLine,
  weightPerFootOfDeck,
} from '../../src/members/index.js';
import { given } from '../../src/trace/index.js';
import { compare, foot, inch, lb, lbPerFt, lbPerFt2, lbPerFt3, mm, ratio, show } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const [c6, c3, w10, c4] = [
  rightOf(publishedSection('C6x8.2')),
  rightOf(publishedSection('C3x4.1')),
  rightOf(publishedSection('W10x19')),
  rightOf(publishedSection('C4x5.4')),
];
const cross: SpacedLine = {
  name: 'crossmembers',
  member: c3,
  length: inch(83),
  spacing: inch(16),
  over: foot(18),
  from: inch(60),
  rule: 'first at the start',
};

describe('frame weight', () => {
  const list: readonly CutLine[] = [
    { name: 'rails', member: c6, length: foot(20), count: ratio(2), from: inch(48) },
    { name: 'header', member: c6, length: inch(83), count: ratio(1), at: inch(49) },
    cross,
    { name: 'coupler', weight: lb(35), at: inch(4) },
  ];
  it('weighs each line at its place and adds them up', () => {
    const frame = rightOf(frameWeight(list));
    expect(frame.lines.map(({ name, at }) => `${name} ${show(at.value)}`)).toEqual([
      'rails 168 in',
      'header 49 in',
      'crossmembers 164 in',
      'coupler 4 in',
    ]);
    expect(frame.lines.map(({ weight }) => plain(weight).toFixed(3))).toEqual([
      '328.000',
      '56.717',
      '397.017',
      '35.000',
    ]);
    expect(plain(frame.total)).toBeCloseTo(328 + (8.2 * 83) / 12 + (14 * 4.1 * 83) / 12 + 35, 10);
    expectReplays(frame.total, ...frame.lines.map(({ at }) => at), ...frame.lines.map(({ weight }) => weight));
  });
  it('keeps the spec paths of its lengths', () => {
    const length = given('rail length', foot(20), 'stated', 'trailer.curb.frame.0.length');
    const frame = rightOf(frameWeight([{ name: 'rails', member: c6, length, count: ratio(2), from: inch(48) }]));
    expect(JSON.stringify(frame.total.why)).toContain('trailer.curb.frame.0.length');
  });
  it.each<[string, CutLine, object]>([
    [
      'a negative spacing',
      { ...cross, spacing: inch(-16) },
      { tag: 'OutsideItsRange', what: 'crossmembers spacing', path: '0' },
    ],
    ['a spacing of zero', { ...cross, spacing: inch(0) }, { tag: 'OutsideItsRange', what: 'crossmembers spacing' }],
    ['a run of zero', { ...cross, over: inch(0) }, { tag: 'OutsideItsRange', what: 'crossmembers run' }],
    [
      'no piece between two ends',
      { ...cross, over: inch(16), rule: 'none at either end' },
      { tag: 'OutsideItsRange', what: 'number of crossmembers' },
    ],
    [
      'a length of zero',
      { name: 'rail', member: c6, length: inch(0), count: ratio(2), from: inch(0) },
      { tag: 'OutsideItsRange', what: 'rail length' },
    ],
    [
      'half a piece',
      { name: 'rail', member: c6, length: inch(9), count: ratio('1.5'), from: inch(0) },
      { tag: 'NotAWholeCount', what: 'number of rail' },
    ],
    [
      'a weight of nothing',
      { name: 'coupler', weight: lb(0), at: inch(0) },
      { tag: 'OutsideItsRange', what: 'coupler weight' },
    ],
  ])('refuses %s', (_, line, error) => expect(leftOf(frameWeight([line]))).toMatchObject(error));
  it('refuses an empty list, and a broken line says which it is by its path', () => {
    expect(leftOf(frameWeight([]))).toMatchObject({ tag: 'NothingListed' });
    const length = given('rail length', foot(-1), 'stated', 'frame.7.length');
    expect(leftOf(frameWeight([{ name: 'rail', member: c6, length, count: ratio(1), from: inch(0) }]))).toMatchObject({
      path: 'frame.7.length',
    });
  });
});

describe('count rules', () => {
  const rules: readonly CountRule[] = [
    'first at the start',
    'first at the start, last at the end',
    'none at either end',
  ];
  /** The places written out one by one, in whole inches. */
  function places(spacing: number, over: number, rule: CountRule): number[] {
    const inside: number[] = [];
    for (
      let x = rule === 'none at either end' ? spacing : 0;
      rule === 'first at the start' ? x <= over : x < over;
      x += spacing
    )
      inside.push(x);
    return rule === 'first at the start, last at the end' ? [...inside, over] : inside;
  }
  it('agree with the places written out one by one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 48 }),
        fc.integer({ min: 1, max: 480 }),
        fc.constantFrom(...rules),
        (spacing, over, rule) => {
          const at = places(spacing, over, rule);
          const read = frameWeight([{ ...cross, spacing: inch(spacing), over: inch(over), from: inch(100), rule }]);
          if (at.length === 0) {
            expect(leftOf(read).tag).toBe('OutsideItsRange');
            return;
          }
          const [line] = rightOf(read).lines;
          expect(plain(line!.count!)).toBe(at.length);
          expect(plain(line!.at)).toBeCloseTo(100 + at.reduce((a, b) => a + b, 0) / at.length, 9);
          expectReplays(line!.weight, line!.at);
        },
      ),
      { numRuns: 100 },
    );
  });
  it('16 in over 18 ft: 14, 15 and 13 pieces', () => {
    expect(rules.map((rule) => plain(rightOf(frameWeight([{ ...cross, rule }])).lines[0]!.count!))).toEqual([
      14, 15, 13,
    ]);
  });
});

describe('deck weight', () => {
  it('weighs areas at their places in any unit', () => {
    const pine = rightOf(board('2x8', { by: 'density', density: lbPerFt3(38) }));
    const deck = rightOf(
      deckWeight([
        { name: 'deck', length: foot(18), width: inch(83), from: inch(60), surface: pine.weightPerSquareFoot },
        { name: 'beavertail', length: mm(609.6), width: inch(83), from: inch(276), surface: lbPerFt2(6) },
      ]),
    );
    expect(plain(deck.lines[0]!.weight)).toBeCloseTo(591.375, 9);
    expect(deck.lines.map(({ at }) => show(at.value))).toEqual(['168 in', '288 in']);
    expect(plain(deck.total)).toBeCloseTo(591.375 + 83, 9);
    expectReplays(deck.total, deck.lines[1]!.at);
  });
  it('refuses no width, no weight, no area', () => {
    const area = { name: 'deck', length: foot(18), width: inch(83), from: inch(60), surface: lbPerFt2(5) };
    expect(leftOf(deckWeight([area, { ...area, width: inch(0) }]))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'deck width',
      path: '1',
    });
    expect(leftOf(deckWeight([{ ...area, surface: lbPerFt2(-5) }]))).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(deckWeight([]))).toMatchObject({ tag: 'NothingListed', what: 'deck parts' });
  });
});

describe('growth per foot of deck', () => {
  const pine = rightOf(board('2x8', { by: 'density', density: lbPerFt3(38) })).weightPerSquareFoot;
  const low = (spacing: number) =>
    rightOf(
      weightPerFootOfDeck({
        rails: [{ name: 'rails', member: c6, count: ratio(2) }],
        crossmembers: [{ name: 'crossmembers', member: c3, length: inch(83), spacing: inch(spacing) }],
        surfaces: [{ name: 'deck', width: inch(83), weight: pine }],
      }),
    );
  it('low deck of 83 in: 70.5 lb/ft at 16 in, 63.4 at 24 in (derived)', () => {
    expect(low(16).lines.map(({ perFoot }) => plain(perFoot).toFixed(1))).toEqual(['16.4', '21.3', '32.9']);
    expect(plain(low(16).perFoot)).toBeCloseTo(70.5, 1);
    expect(plain(low(24).perFoot)).toBeCloseTo(63.4, 1);
    expectReplays(low(16).perFoot);
  });
  it('deckover of 102 in: 115.3 lb/ft (derived)', () => {
    const over = rightOf(
      weightPerFootOfDeck({
        rails: [
          { name: 'main beams', member: w10, count: ratio(2) },
          { name: 'side rails', member: c4, count: ratio(2) },
        ],
        crossmembers: [{ name: 'crossmembers', member: c3, length: inch(102), spacing: inch(16) }],
        surfaces: [{ name: 'deck', width: inch(102), weight: pine }],
      }),
    );
    expect(plain(over.perFoot)).toBeCloseTo(115.3, 1);
  });
  it('refuses spacings and counts of nothing, and nothing at all', () => {
    expect(
      leftOf(
        weightPerFootOfDeck({
          rails: [],
          surfaces: [],
          crossmembers: [{ name: 'crossmembers', member: c3, length: inch(83), spacing: inch(-16) }],
        }),
      ),
    ).toMatchObject({ tag: 'OutsideItsRange', what: 'crossmembers spacing' });
    expect(
      leftOf(
        weightPerFootOfDeck({
          rails: [{ name: 'rails', member: c6, count: ratio(0) }],
          surfaces: [],
          crossmembers: [],
        }),
      ),
    ).toMatchObject({ tag: 'OutsideItsRange' });
    expect(leftOf(weightPerFootOfDeck({ rails: [], surfaces: [], crossmembers: [] }))).toMatchObject({
      tag: 'NothingListed',
    });
  });
});

describe('payload by length', () => {
  const design = {
    gvwr: lb(14000),
    baseWeight: lb(2950),
    baseLength: foot(18),
    perFoot: lbPerFt(71),
    lengths: [18, 20, 22, 24].map(foot),
  };
  it('14,000 lb, 2,950 lb at 18 ft, 71 lb/ft: 11,050 / 10,908 / 10,766 / 10,624 (derived)', () => {
    const { rows } = rightOf(payloadByLength(design));
    expect(rows.map(({ payload }) => plain(payload))).toEqual([11050, 10908, 10766, 10624]);
    expect(rows.map(({ verdict }) => verdict)).toEqual(['within', 'within', 'within', 'within']);
    expectReplays(...rows.map(({ payload }) => payload));
  });
  it('16 ft gains what 20 ft loses; an empty trailer above its GVWR is over, an answer', () => {
    const { rows } = rightOf(payloadByLength({ ...design, lengths: [foot(16)] }));
    expect(plain(rows[0]!.payload)).toBe(11192);
    const over = rightOf(payloadByLength({ ...design, gvwr: lb(2950), lengths: [foot(18), foot(19)] }));
    expect(over.rows.map(({ verdict }) => verdict)).toEqual(['within', 'over']);
    expect(compare(over.rows[1]!.payload.value, lb(-71))).toBe(0);
  });
  it('refuses lengths of nothing and a trailer that would weigh nothing', () => {
    expect(leftOf(payloadByLength({ ...design, lengths: [] }))).toMatchObject({ tag: 'NothingListed' });
    expect(leftOf(payloadByLength({ ...design, lengths: [foot(0)] }))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'length',
    });
    expect(leftOf(payloadByLength({ ...design, perFoot: lbPerFt(500), lengths: [foot(1)] }))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'empty weight at this length',
    });
  });
});
