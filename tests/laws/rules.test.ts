/** Laws of the rules chapter, over the shipped rows and over random figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addedWeightLimit,
  axleGroupLimit,
  axleGroups,
  commercialByWeight,
  type Facts,
  type Finding,
  federalRules,
  gcwrByDefinition,
  lengthFacts,
  licenceGroup,
  type Rule,
  screen,
  surgeBrakes,
  weightFacts,
  yesNoFacts,
} from '../../src/rules/index.js';
import { compare, foot, inch, lb } from '../../src/units/index.js';
import { orFail } from '../rules/helpers.js';

const pounds = fc.integer({ min: 1, max: 60000 });
const weights = weightFacts.filter((name) => name !== 'label GCWR');
const someFacts: fc.Arbitrary<Facts> = fc
  .record({
    ...Object.fromEntries(
      weights.map((name) => [
        name,
        fc.option(
          pounds.map((n) => lb(n)),
          { nil: undefined },
        ),
      ]),
    ),
    'label GCWR': fc.oneof(
      fc.constant('not shown' as const),
      fc.constant(undefined),
      pounds.map((n) => lb(n + 60000)),
    ),
    ...Object.fromEntries(
      lengthFacts.map((name) => [
        name,
        fc.option(
          fc.integer({ min: 1, max: 700 }).map((n) => inch(n)),
          { nil: undefined },
        ),
      ]),
    ),
    ...Object.fromEntries(yesNoFacts.map((name) => [name, fc.option(fc.boolean(), { nil: undefined })])),
  } as never)
  .map(
    (drawn) => Object.fromEntries(Object.entries(drawn as object).filter(([, value]) => value !== undefined)) as Facts,
  );

/** Contradictory draws are refused; the law then has nothing to say about them. */
const findings = (facts: Facts, rules: readonly Rule[] = federalRules): readonly Finding[] | undefined => {
  const answer = screen(facts, rules);
  return answer._tag === 'Right' ? answer.right.findings : undefined;
};

const holdsBySign = {
  '<': (sign: number) => sign < 0,
  '<=': (sign: number) => sign <= 0,
  '>': (sign: number) => sign > 0,
  '>=': (sign: number) => sign >= 0,
  '=': (sign: number) => sign === 0,
};

describe('screening', () => {
  it('the sign of the distance agrees with the operator', () => {
    let seen = 0;
    fc.assert(
      fc.property(someFacts, (facts) => {
        for (const { answers } of findings(facts) ?? []) {
          for (const { decision, distance } of answers) {
            if (decision === undefined || distance === undefined) continue;
            seen += 1;
            expect(holdsBySign[decision.comparison](Math.sign(distance.value.value.toNumber()))).toBe(decision.holds);
          }
        }
      }),
      { numRuns: 60 },
    );
    expect(seen).toBeGreaterThan(100);
  });
  it('one more fact never turns a settled answer round', () => {
    let settled = 0;
    fc.assert(
      fc.property(someFacts, fc.nat(), (facts, which) => {
        const names = Object.keys(facts) as (keyof Facts)[];
        const dropped = names[which % Math.max(1, names.length)];
        const more = findings(facts);
        const less = findings(Object.fromEntries(Object.entries(facts).filter(([name]) => name !== dropped)) as Facts);
        // "actual weights within ratings" is a statement about the weights that are not given: taking it away may only unsettle.
        if (more === undefined || less === undefined) return;
        less.forEach(({ outcome }, i) => {
          if (outcome === 'cannot be told') return;
          settled += 1;
          expect(more[i]?.outcome, `${more[i]?.id} without ${String(dropped)}`).toBe(outcome);
        });
      }),
      { numRuns: 150 },
    );
    expect(settled).toBeGreaterThan(100);
  });
  it('cannot be told exactly when something is missing', () => {
    fc.assert(
      fc.property(someFacts, (facts) => {
        for (const { outcome, missing } of findings(facts) ?? [])
          expect(outcome === 'cannot be told').toBe(missing.length > 0);
      }),
      { numRuns: 60 },
    );
  });
  it('a rule says the same alone as among all', () => {
    fc.assert(
      fc.property(someFacts, (facts) => {
        for (const { rows, outcome } of findings(facts) ?? [])
          expect(
            findings(
              facts,
              rows.map(({ rule }) => rule),
            )?.[0]?.outcome,
          ).toBe(outcome);
      }),
      { numRuns: 10 },
    );
  });
});

describe('combinations', () => {
  const unit = fc.record({ gvwr: pounds.map((n) => lb(n)), gross: pounds.map((n) => lb(n)) });
  it('GCWR never falls when a unit gets heavier, and is at least what the combination weighs', () => {
    fc.assert(
      fc.property(unit, unit, pounds, (powerUnit, trailer, more) => {
        const base = orFail(gcwrByDefinition({ powerUnit, towed: [trailer], labelGcwr: 'not shown' })).gcwr.value;
        const heavier = orFail(
          gcwrByDefinition({
            powerUnit,
            towed: [{ ...trailer, gross: lb(trailer.gross.value.plus(more)) }],
            labelGcwr: 'not shown',
          }),
        ).gcwr.value;
        expect(compare(heavier, base)).toBeGreaterThanOrEqual(0);
        expect(compare(base, lb(powerUnit.gross.value.plus(trailer.gross.value)))).toBeGreaterThanOrEqual(0);
      }),
    );
  });
  it('the functions and the rows give one answer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5000, max: 40000 }), fc.integer({ min: 1000, max: 40000 }), (truck, trailer) => {
        const combination = {
          powerUnit: { gvwr: lb(truck), gross: 'not above GVWR' },
          towed: [{ gvwr: lb(trailer), gross: 'not above GVWR' }],
          labelGcwr: 'not shown',
        } as const;
        const found = findings({
          'tow vehicle GVWR': lb(truck),
          'trailer GVWR': lb(trailer),
          'label GCWR': 'not shown',
          'actual weights within ratings': true,
          commercial: true,
          interstate: true,
          'surge brakes': true,
        }) as readonly Finding[];
        const of = (id: string) => found.find((finding) => finding.id === id);
        const group = orFail(licenceGroup(combination)).group;
        const { outcome, rule } = of('cdl') as Finding;
        expect(outcome === 'applies' ? rule.id : outcome).toBe(
          group === 'none by weight' ? 'does not apply' : `cdl-${group}`,
        );
        const commercial = orFail(commercialByWeight(combination)).reachesLine;
        expect(of('cmv-390')?.outcome).toBe(commercial ? 'applies' : 'does not apply');
        const { accepted } = orFail(surgeBrakes({ gvwr: lb(trailer), gross: 'not above GVWR' }, lb(truck)));
        const surge = accepted ? 'kept' : 'crossed';
        expect(of('surge')?.outcome).toBe(commercial ? surge : 'does not apply');
      }),
      { numRuns: 80 },
    );
  });
  it('added weight limit rises to 100 lb and stays there', () => {
    fc.assert(
      fc.property(pounds, pounds, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((gvwr) => orFail(addedWeightLimit(lb(gvwr))).value);
        expect(compare(low as NonNullable<typeof low>, high as NonNullable<typeof high>)).toBeLessThanOrEqual(0);
        expect(compare(high as NonNullable<typeof high>, lb(100))).toBeLessThanOrEqual(0);
      }),
    );
  });
});

describe('axle groups', () => {
  const options = fc.record({
    tie: fc.constantFrom('up' as const, 'down' as const),
    lengthRounding: fc.constantFrom(
      'none' as const,
      'nearest foot, halves up' as const,
      'nearest foot, halves down' as const,
    ),
  });
  it('a longer group may never weigh less', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 900 }),
        fc.boolean(),
        options,
        (count, a, b, twoTandems, how) => {
          const [short, long] = [Math.min(a, b), Math.max(a, b)].map(
            (length) => orFail(axleGroupLimit({ count, length: inch(length), twoTandems }, how)).limit.value,
          );
          expect(compare(short as NonNullable<typeof short>, long as NonNullable<typeof long>)).toBeLessThanOrEqual(0);
        },
      ),
    );
  });
  it('ties up and ties down are 0 or 500 lb apart, and within 250 lb of the formula', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 9, max: 80 }), (count, length) => {
        const [up, down] = (['up', 'down'] as const).map((tie) =>
          orFail(axleGroupLimit({ count, length: foot(length), twoTandems: false }, { tie, lengthRounding: 'none' })),
        );
        const figures = [up, down].map((found) => found?.byFormula?.value.value.toNumber() ?? Number.NaN);
        const exact = up?.exact?.value.value.toNumber() ?? Number.NaN;
        expect([0, 500]).toContain((figures[0] as number) - (figures[1] as number));
        for (const figure of figures) expect(Math.abs(figure - exact)).toBeLessThanOrEqual(250.000001);
        // The published form, in plain numbers: a second reading of the formula.
        expect(exact).toBeCloseTo(500 * ((length * count) / (count - 1) + 12 * count + 36), 6);
      }),
    );
  });
  it('n axles have n (n + 1) / 2 groups, and each limit is the one the run has by itself', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 300 }), { minLength: 1, maxLength: 5 }), (gaps) => {
        const positions = [0, ...gaps.map((_, i) => gaps.slice(0, i + 1).reduce((sum, gap) => sum + gap, 0))];
        const { groups } = orFail(
          axleGroups(
            positions.map((at) => ({ behind: inch(at) })),
            { tie: 'down', lengthRounding: 'none' },
          ),
        );
        expect(groups.length).toBe((positions.length * (positions.length + 1)) / 2);
        for (const { first, last, kind, limit } of groups) {
          const run = {
            count: last - first + 1,
            length: inch((positions[last - 1] as number) - (positions[first - 1] as number)),
            twoTandems: kind === 'two tandems',
          };
          expect(
            compare(orFail(axleGroupLimit(run, { tie: 'down', lengthRounding: 'none' })).limit.value, limit.value),
          ).toBe(0);
        }
      }),
      { numRuns: 60 },
    );
  });
});
