/** Random sheets: some that agree with themselves, some with one figure printed wrong. */
import fc from 'fast-check';
import type { Sheet } from '../../src/choose/index.js';

interface Truth {
  readonly gvwr: number;
  readonly emptyWeight: number;
  readonly axles: readonly number[];
  readonly each: number;
  readonly coupler: number;
  readonly deckLength: number;
  readonly tongueLength: number;
  readonly dovetailLength: number;
  readonly rounding: number;
  readonly totals: boolean;
}

const truth: fc.Arbitrary<Truth> = fc
  .record({
    gvwr: fc.integer({ min: 40, max: 260 }).map((n) => n * 100),
    empty: fc.integer({ min: 15, max: 45 }),
    odd: fc.integer({ min: 0, max: 99 }),
    count: fc.integer({ min: 1, max: 3 }),
    spare: fc.integer({ min: 0, max: 20 }),
    coupler: fc.integer({ min: 0, max: 30 }),
    deckLength: fc.integer({ min: 120, max: 480 }),
    tongueLength: fc.integer({ min: 48, max: 90 }),
    dovetailLength: fc.integer({ min: 40, max: 60 }),
    rounding: fc.constantFrom(1, 5, 10, 50),
    totals: fc.boolean(),
  })
  .map(({ gvwr, empty, odd, count, spare, coupler, ...rest }) => {
    const axle = Math.ceil((gvwr * (0.86 + spare / 100)) / count / 100) * 100;
    return {
      ...rest,
      gvwr,
      emptyWeight: Math.round((gvwr * empty) / 100) + odd,
      axles: Array.from({ length: count }, () => axle),
      each: Math.ceil(axle / 2 / 10) * 10 + spare * 10,
      coupler: gvwr + coupler * 100,
    };
  });

const rounded = (figure: number, to: number, unit = 'lb') => ({
  text: `${Math.round(figure / to) * to} ${unit}`,
  rounding: `${to} ${unit}`,
});

const total = (figures: readonly number[]): number => figures.reduce((a, b) => a + b);

/** The truth as a sheet prints it: weights to their rounding, labels as they are. */
const printed = ({ rounding, totals, ...true_ }: Truth): Sheet => ({
  gvwr: rounded(true_.gvwr, 1),
  emptyWeight: rounded(true_.emptyWeight, rounding),
  payload: rounded(true_.gvwr - true_.emptyWeight, rounding),
  axles: true_.axles.map((axle) => rounded(axle, 1)),
  tires: { each: rounded(true_.each, 1), count: 2 },
  coupler: rounded(true_.coupler, 1),
  ...(totals
    ? {
        axleCapacity: rounded(total(true_.axles), rounding),
        tireCapacity: rounded(true_.each * 2 * true_.axles.length, rounding),
      }
    : {}),
  overallLength: rounded(true_.deckLength + true_.tongueLength, 6, 'in'),
  tongueLength: rounded(true_.tongueLength, 1, 'in'),
  deckLength: rounded(true_.deckLength, 1, 'in'),
  flatLength: rounded(true_.deckLength - true_.dovetailLength, 1, 'in'),
  dovetailLength: rounded(true_.dovetailLength, 1, 'in'),
});

/** Sheets that agree. */
export const agreeing: fc.Arbitrary<Sheet> = truth.map(printed);

/**
 * A figure printed wrong, further off than all roundings of its relation together: empty weight and payload are each printed up to
 * half a rounding r off and each may be read half a rounding off again, 2 r, and the GVWR half a pound.
 */
export const planted = fc
  .tuple(truth, fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 30 }), fc.boolean())
  .map(([true_, which, size, more]) => {
    const sheet = printed(true_);
    const off = (more ? 1 : -1) * (2 * true_.rounding + 2 + size * 10);
    const far = (more ? 1 : -1) * (9 + size);
    const few = true_.axles.length;
    const weak = (axle: number): number => 0.85 * true_.gvwr - axle * (few - 1) - 2 - size * 5;
    const wrong: readonly (readonly [path: string, Partial<Sheet>])[] = [
      ['emptyWeight', { emptyWeight: rounded(true_.emptyWeight + off, 1) }],
      ['payload', { payload: rounded(true_.gvwr - true_.emptyWeight + off, 1) }],
      ['coupler', { coupler: rounded(true_.gvwr - 2 - size * 10, 1) }],
      ['tires.each', { tires: { each: rounded((true_.axles[0] as number) / 2 - 2 - size * 10, 1), count: 2 } }],
      ['axles.0', { axles: true_.axles.map((axle, i) => rounded(i === 0 ? weak(axle) : axle, 1)) }],
      ['gvwr', { gvwr: rounded(true_.gvwr + off, 1) }],
      ['overallLength', { overallLength: rounded(true_.deckLength + true_.tongueLength + far, 1, 'in') }],
      ['tongueLength', { tongueLength: rounded(true_.tongueLength + far, 1, 'in') }],
      ['flatLength', { flatLength: rounded(true_.deckLength - true_.dovetailLength + far, 1, 'in') }],
      ['dovetailLength', { dovetailLength: rounded(true_.dovetailLength + far, 1, 'in') }],
    ];
    const [path, change] = wrong[which] as (typeof wrong)[number];
    return { path, sheet: { ...sheet, ...change } };
  });
