/** The decisions of an answer on tires say for which other figures it still speaks: studies rely on them. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { describe, it } from 'vitest';
import {
  checkRimPressure,
  estimateBetweenRows,
  estimateLoadAtPressure,
  estimatePMetricLoad,
  loadAtPressure,
  mixedTires,
  placard,
  pressureForLoad,
  speedInformation,
  type Tire,
  tireLoadAsRun,
  tireLoadRating,
  tirePressureForLoad,
} from '../../src/tires/index.js';
import { type Derived, given } from '../../src/trace/index.js';
import { kPa, lb, mph, psi, type Unit } from '../../src/units/index.js';
import { Decimal } from '../../src/units/internal.js';
import { rightOf } from '../helpers/either.js';
import { expectSpeaksFor, type Spoken } from '../helpers/speaks-for.js';

const single = { fitment: 'single', on: 'trailer' } as const;
const dual = { fitment: 'dual', on: 'trailer' } as const;
const at80 = { single: lb(2830), pressure: psi(80) };
const tires: Readonly<Record<string, Tire>> = {
  listed: { designation: 'ST225/75R15 LRD' },
  molded: { designation: 'ST225/75R15 117/112N LRE', molded: at80 },
  'with two prints': { designation: 'ST205/75R14 LRD' },
  weak: { designation: 'LT235/85R16 LRD', molded: { single: lb(2368), pressure: psi(80) } },
  'above its rows': { designation: 'LT235/85R16 LRD', molded: { single: lb(3042), pressure: psi(80) } },
  'without rows': { designation: 'ST235/85R16 LRG', molded: { single: lb(4400), pressure: psi(110) } },
  passenger: { designation: 'P235/75R15 XL' },
  'in kilopascals': { designation: 'ST225/75R15 LRE', molded: { single: lb(2830), pressure: kPa(550) } },
};
const rated = (tire: Tire) => rightOf(tireLoadRating(tire, single));

/** An answer, or undefined for a refusal. */
function spoken<A extends Pick<Spoken, 'decisions'>>(
  answer: Either<unknown, A>,
  figures: (answer: A) => readonly Derived<Unit>[],
  says: (answer: A) => readonly unknown[],
): Spoken | undefined {
  if (isLeft(answer)) return undefined;
  return { figures: figures(answer.right), says: says(answer.right), decisions: answer.right.decisions };
}
const tags = ({ notes }: { readonly notes: readonly { readonly tag: string }[] }): readonly string[] =>
  notes.map(({ tag }) => tag);

const pressures = [
  13, 14, 15, 16, 29, 30, 35, 36, 40, 41, 42, 50, 55, 60, 62, 64, 65, 66, 70, 75, 79, 80, 81, 90, 110, 120,
];
const atPressures = pressures.map((p) => [new Decimal(p), given('run', psi(p), 'stated', 'run')] as const);
const loads = [
  300, 1000, 1500, 1984, 1985, 2040, 2041, 2100, 2200, 2380, 2381, 2540, 2541, 2623, 2830, 2831, 3000, 4400,
];
const atLoads = loads.map((pounds) => [new Decimal(pounds), given('load', lb(pounds), 'stated', 'load')] as const);

describe('the decisions say for which figures it still speaks:', () => {
  it.each(Object.entries(tires))('the load as run of a tire %s', (_, tire) => {
    expectSpeaksFor('run', atPressures, (run) =>
      spoken(
        tireLoadAsRun(tire, single, run),
        ({ load }) => [load],
        (answer) => [answer.from, tags(answer)],
      ),
    );
  });
  it.each(Object.entries(tires))('the pressure for a load of a tire %s', (_, tire) => {
    expectSpeaksFor('load', atLoads, (load) =>
      spoken(
        tirePressureForLoad(rated(tire), load),
        ({ pressure, carries }) => [pressure, carries],
        (answer) => [answer.tables, tags(answer)],
      ),
    );
  });
  it.each(['ST225/75R15 LRD', 'ST225/75R15 LRE', 'ST205/75R14 LRD', 'P235/75R15 XL'])(
    'the printed rows of %s',
    (of) => {
      expectSpeaksFor('run', atPressures, (run) =>
        spoken(
          loadAtPressure(of, run, 'single'),
          ({ load, row }) => [load, row],
          (answer) => [answer.tables, tags(answer)],
        ),
      );
      expectSpeaksFor('run', atPressures, (run) =>
        spoken(
          estimateBetweenRows(of, run, 'single'),
          ({ safe, estimate }) => [safe.load, estimate],
          (answer) => [tags(answer)],
        ),
      );
      expectSpeaksFor('load', atLoads, (load) =>
        spoken(
          pressureForLoad(of, load, 'single'),
          ({ pressure, carries }) => [pressure, carries],
          (answer) => [answer.tables, tags(answer)],
        ),
      );
    },
  );
  it('estimates', () => {
    const full = { load: lb(2540), pressure: psi(65) };
    expectSpeaksFor('run', atPressures, (run) =>
      spoken(
        estimateLoadAtPressure('ST225/75R15', full, run),
        ({ load }) => [load],
        (answer) => [tags(answer)],
      ),
    );
    expectSpeaksFor('run', atPressures, (run) =>
      spoken(
        estimatePMetricLoad('P235/75R15', run),
        ({ load }) => [load],
        (answer) => [tags(answer)],
      ),
    );
  });
  it.each(Object.entries(tires))('the rating by the load molded into a tire %s', (_, tire) => {
    for (const service of [single, dual])
      expectSpeaksFor('load', atLoads, (load) =>
        spoken(
          tireLoadRating({ ...tire, molded: { single: lb(2830), [service.fitment]: load } }, service),
          ({ rating }) => [rating],
          (answer) => [answer.from, tags(answer)],
        ),
      );
  });
  it.each(Object.entries(tires))('the rating by the pressure molded into a tire %s', (_, tire) => {
    expectSpeaksFor('run', atPressures, (pressure) =>
      spoken(
        tireLoadRating({ designation: tire.designation, molded: { pressure } }, single),
        ({ rating }) => [rating],
        (answer) => [answer.from, tags(answer)],
      ),
    );
  });
  it.each(Object.entries(tires))('the pressure for a load by what is molded into a tire %s', (_, { designation }) => {
    const asked = (molded: NonNullable<Tire['molded']>, pounds: number) => {
      const found = tireLoadRating({ designation, molded }, single);
      return isLeft(found)
        ? undefined
        : spoken(
            tirePressureForLoad(found.right, lb(pounds)),
            ({ pressure, carries }) => [pressure, carries],
            (answer) => [answer.tables, tags(answer)],
          );
    };
    for (const pounds of [1000, 2200, 2400]) {
      expectSpeaksFor('run', atPressures, (pressure) => asked({ single: lb(2400), pressure }, pounds));
      expectSpeaksFor('load', atLoads, (load) => asked({ single: load, pressure: psi(80) }, pounds));
    }
  });
  it('tires that are not alike', () => {
    expectSpeaksFor('load', atLoads, (load) =>
      spoken(
        mixedTires([
          rated({ designation: 'ST225/75R15', molded: { single: load } }),
          rated({ designation: 'ST225/75R15', molded: { single: lb(2540) } }),
        ]),
        ({ each }) => [each],
        (answer) => [tags(answer)],
      ),
    );
  });
  it('wheels, placards and speeds', () => {
    expectSpeaksFor('run', atPressures, (run) =>
      spoken(
        checkRimPressure(run, psi(65)),
        ({ reserve }) => [reserve],
        ({ verdict }) => [verdict],
      ),
    );
    const axle1 = { where: 'axle 1', designation: 'ST205/75R15 LRD', coldPressure: psi(65) };
    expectSpeaksFor('load', atLoads, (unloaded) =>
      spoken(
        placard({ gvwr: lb(2623), unloaded, tires: [axle1] }),
        ({ cargo, cargoKg }) => [cargo, cargoKg],
        () => [],
      ),
    );
    const speeds = [30, 64, 65, 66, 75, 76, 81, 85, 86, 100];
    for (const of of ['ST225/75R15 LRD', 'ST225/75R15 117/112N', 'LT235/85R16 LRE'])
      expectSpeaksFor(
        'speed',
        speeds.map((speed) => [new Decimal(speed), given('speed', mph(speed), 'stated', 'speed')] as const),
        (speed) =>
          spoken(
            speedInformation(of, speed),
            () => [],
            (answer) => [answer.says, tags(answer)],
          ),
      );
  });
});
