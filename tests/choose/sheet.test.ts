/** Sheets that agree raise no alarm; a planted error is found, with the planted figure in the set. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { auditSheet, type Sheet, type SheetAudit } from '../../src/choose/index.js';
import { sheetText } from '../../src/print/index.js';
import { leftOf, rightOf } from '../helpers/either.js';

const sheets = process.env.LONG === undefined ? 500 : 5000;

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
        axleCapacity: rounded(
          true_.axles.reduce((a, b) => a + b),
          rounding,
        ),
        tireCapacity: rounded(true_.each * 2 * true_.axles.length, rounding),
      }
    : {}),
  overallLength: rounded(true_.deckLength + true_.tongueLength, 6, 'in'),
  tongueLength: rounded(true_.tongueLength, 1, 'in'),
  deckLength: rounded(true_.deckLength, 1, 'in'),
  flatLength: rounded(true_.deckLength - true_.dovetailLength, 1, 'in'),
  dovetailLength: rounded(true_.dovetailLength, 1, 'in'),
});

/** A figure printed wrong, further off than all roundings of the relation together. */
const planted = fc
  .tuple(truth, fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 30 }), fc.boolean())
  .map(([true_, which, size, more]) => {
    const sheet = printed(true_);
    const off = (more ? 1 : -1) * (1.5 * true_.rounding + 2 + size * 10);
    const far = (more ? 1 : -1) * (9 + size);
    const few = true_.axles.length;
    const wrong: readonly (readonly [path: string, Partial<Sheet>])[] = [
      ['emptyWeight', { emptyWeight: rounded(true_.emptyWeight + off, 1) }],
      ['payload', { payload: rounded(true_.gvwr - true_.emptyWeight + off, 1) }],
      ['coupler', { coupler: rounded(true_.gvwr - 2 - size * 10, 1) }],
      ['tires.each', { tires: { each: rounded((true_.axles[0] as number) / 2 - 2 - size * 10, 1), count: 2 } }],
      [
        'axles.0',
        {
          axles: true_.axles.map((axle, i) =>
            rounded(i === 0 ? 0.85 * true_.gvwr - axle * (few - 1) - 2 - size * 5 : axle, 1),
          ),
        },
      ],
      ['gvwr', { gvwr: rounded(true_.gvwr + off, 1) }],
      ['overallLength', { overallLength: rounded(true_.deckLength + true_.tongueLength + far, 1, 'in') }],
      ['tongueLength', { tongueLength: rounded(true_.tongueLength + far, 1, 'in') }],
      ['flatLength', { flatLength: rounded(true_.deckLength - true_.dovetailLength + far, 1, 'in') }],
      ['dovetailLength', { dovetailLength: rounded(true_.dovetailLength + far, 1, 'in') }],
    ];
    const [path, change] = wrong[which] as (typeof wrong)[number];
    return { path, sheet: { ...sheet, ...change } };
  });

/** The sheet without some of its figures. */
function without(sheet: Sheet, paths: readonly string[]): Sheet {
  const axles = sheet.axles?.map((axle, i) =>
    paths.includes(`axles.${i}`) ? { text: '20000 lb', rounding: '40000 lb' } : axle,
  );
  const kept = Object.fromEntries(
    Object.entries({ ...sheet, axles }).filter(
      ([key]) => !paths.includes(key) && !(key === 'tires' && paths.includes('tires.each')),
    ),
  );
  return kept as Sheet;
}

const pathsOf = ({ conflicts }: SheetAudit): readonly (readonly string[])[] =>
  conflicts.map(({ figures }) => figures.map(({ path }) => path));

describe('auditSheet', () => {
  it('raises no alarm over sheets that agree', () => {
    for (const true_ of fc.sample(truth, { numRuns: sheets, seed: 41 }))
      expect(pathsOf(rightOf(auditSheet(printed(true_)))), JSON.stringify(true_)).toEqual([]);
  });

  it('finds every planted error; the set holds the planted figure, and without it the sheet agrees', () => {
    for (const { path, sheet } of fc.sample(planted, { numRuns: sheets, seed: 42 })) {
      const found = pathsOf(rightOf(auditSheet(sheet)));
      expect(found.length, JSON.stringify({ path, sheet })).toBeGreaterThan(0);
      expect(
        found.every((set) => set.includes(path)),
        JSON.stringify({ path, found, sheet }),
      ).toBe(true);
      const rest = auditSheet(without(sheet, [path]));
      if (rest._tag === 'Right') expect(pathsOf(rest.right)).toEqual([]);
    }
  });

  it('gives smallest sets: freeing any member makes the others agree', () => {
    for (const { sheet } of fc.sample(planted, { numRuns: sheets / 5, seed: 43 })) {
      const audit = rightOf(auditSheet(sheet));
      const all = audit.figures.map(({ path }) => path);
      for (const set of pathsOf(audit))
        for (const member of set) {
          const others = all.filter((path) => path === member || !set.includes(path));
          const alone = auditSheet(without(sheet, others));
          if (alone._tag === 'Right') expect(pathsOf(alone.right)).toEqual([]);
        }
    }
  });

  it('answers the question of the counter: 14,000, 3,650 and 10,500', () => {
    const { conflicts } = rightOf(auditSheet({ gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,500 lb' }));
    expect(conflicts.map(({ arithmetic }) => arithmetic)).toEqual([
      [
        'empty weight and payload make the GVWR: empty weight 3,650 lb + payload 10,500 lb = 14,150 lb must be GVWR 14,000 lb',
      ],
    ]);
    const agrees = auditSheet({ gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,350 lb' });
    expect(rightOf(agrees).conflicts).toEqual([]);
  });
  it('joins relations: no GVWR is printed, and empty weight with payload is more than the axles bear', () => {
    const { conflicts } = rightOf(
      auditSheet({ emptyWeight: '3,650 lb', payload: '10,500 lb', axles: ['5,200 lb', '5,200 lb'] }),
    );
    expect(conflicts[0]?.figures.map(({ path }) => path)).toEqual(['emptyWeight', 'payload', 'axles.0', 'axles.1']);
  });
  it('finds an empty weight above the GVWR', () => {
    const { conflicts } = rightOf(auditSheet({ gvwr: '3,000 lb', emptyWeight: '3,650 lb', coupler: '5,000 lb' }));
    expect(conflicts[0]?.figures.map(({ path }) => path)).toEqual(['gvwr', 'emptyWeight']);
  });
  it('prints a conflict with its arithmetic', () => {
    const text = sheetText(rightOf(auditSheet({ gvwr: '14,000 lb', coupler: '12,500 lb' })));
    expect(text).toContain('cannot all be true: GVWR 14,000 lb, coupler gross rating 12,500 lb');
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
  it.each([
    [{ gvwr: '14,000 lb', emptyWeight: '3,650 lb' }, 'NothingToAnswer'],
    [{}, 'NothingToAnswer'],
    [{ gvwr: '14,000', payload: '9,000 lb', emptyWeight: '5,000 lb' }, 'UnusableFigure'],
    [{ gvwr: '20 ft' }, 'UnusableFigure'],
    [{ gvwr: { text: '14,000 lb', rounding: '-5 lb' } }, 'UnusableFigure'],
    [{ gvwr: '14,000 lb', tongueShareMost: '130 %' }, 'UnusableFigure'],
  ])('refuses %j', (sheet, tag) => expect(leftOf(auditSheet(sheet)).tag).toBe(tag));
});
