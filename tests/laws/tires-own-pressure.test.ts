/** A table load counts only at the pressure of its own row, and no answer asks for more pressure than the tire's own. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import {
  familyPressureTable,
  type InflationTable,
  inflationTables,
  loadAtPressure,
  pressureForLoad,
  rangePressure,
  readTireDesignation,
  type Service,
  tireLoadAsRun,
  tireLoadRating,
  tirePressureForLoad,
  tiresTables,
} from '../../src/tires/index.js';
import { lb, psi } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';

const single: Service = { fitment: 'single', on: 'trailer' };
const rows = inflationTables.flatMap((table) =>
  table.rows.map(([size, letter, at, load, dual]) => ({ table: table.name, size, letter, at, load, dual })),
);

/** A size with the letter of the row, and with every stronger letter that its family knows. */
const written = (size: string, letter: string): string =>
  `${size} ${letter.length === 1 ? `LR${letter}` : letter}`.trim();
/** ST-3 prints one chart for radial and bias: `ST225/75-15`. */
const sizeOf = (size: string): string => size.replace(/-(?=\d+$)/, 'R');
const letters = ['B', 'C', 'D', 'E', 'F', 'G', 'SL', 'XL'];

/** Every printed load with the tire of its letter, or with one of each letter where none is printed; and the same row as molded. */
const prints = rows.flatMap(({ table, size, letter, at, load, dual }) =>
  (['single', 'dual'] as const)
    .filter((fitment) => (fitment === 'single' ? load : dual) !== '')
    .flatMap((fitment) =>
      (letter === '' ? letters : [letter]).map((each) => ({
        table,
        letter,
        at,
        service: { fitment, on: 'trailer' } satisfies Service,
        designation: written(size, each),
        molded: {
          single: lb(load === '' ? dual : load),
          ...(dual === '' ? {} : { dual: lb(dual) }),
          pressure: psi(at),
        },
      })),
    ),
);

/** Whether the tire as tabulated carries no more, run at a pressure, than as molded; undefined where one of them has no answer. */
function carriesNoMore(
  { designation, service, molded }: (typeof prints)[number],
  pressure: number | string,
  table?: string,
): boolean | undefined {
  const tire = table === undefined ? { designation } : { designation, table };
  const asRun = tireLoadAsRun(tire, service, psi(pressure));
  const asMolded = tireLoadAsRun({ ...tire, molded }, service, psi(pressure));
  return isLeft(asRun) || isLeft(asMolded)
    ? undefined
    : asRun.right.load.value.value.lte(asMolded.right.load.value.value);
}

/** 49 CFR 571.119 S6.5(d): the load molded into a tire is that at the pressure molded beside it. */
describe('every row of every table', () => {
  it('gives no more to a tire run at its pressure than the same row given as molded', () => {
    const asked = prints.map((print) => ({ print, holds: carriesNoMore(print, print.at) }));
    expect(asked.filter(({ holds }) => holds === false)).toEqual([]);
    expect(asked.filter(({ holds }) => holds === true).length).toBeGreaterThan(250);
  });
  it('gives no more at any pressure to the letter of the row than the same row given as molded, in its own table too', () => {
    // TR-2 prints one row at a pressure below that of its letter: that row is not the rating of the letter.
    // ST-3 prints load range E of one size at 90 psi, the others at 80: molded at 90 it is a weaker tire than theirs.
    const ofAnother = new Set(['TR-2 85', 'ST-3 90']);
    const rated = prints.filter(({ letter, table, at }) => letter !== '' && !ofAnother.has(`${table} ${at}`));
    const asked = rated.flatMap((print) =>
      [25, 35, 50, 65, 80, 95, 110]
        .filter((pressure) => pressure >= 0.3 * Number(print.at))
        .flatMap((pressure) =>
          [undefined, print.table].map((table) => ({
            print,
            pressure,
            table,
            holds: carriesNoMore(print, pressure, table),
          })),
        ),
    );
    expect(asked.filter(({ holds }) => holds === false)).toEqual([]);
    expect(asked.filter(({ holds }) => holds === true).length).toBeGreaterThan(1000);
  });
  it('never rates a tire molded with less pressure by the row of a higher one', () => {
    for (const { size, letter } of rows.filter((row) => row.letter !== '' && row.load !== '')) {
      for (const at of [15, 30, 35, 50, 65, 80, 95, 110, 125]) {
        const found = tireLoadRating({ designation: written(size, letter), molded: { pressure: psi(at) } }, single);
        if (isLeft(found)) continue;
        const reached = rows
          .filter((row) => sizeOf(row.size) === sizeOf(size) && row.load !== '' && Number(row.at) <= at)
          .map((row) => Number(row.load));
        expect(Number(found.right.rating.value.value), `${size} ${letter} molded at ${at} psi`).toBeLessThanOrEqual(
          Math.max(0, ...reached),
        );
      }
    }
  });
  const loads = [500, 1000, 1500, 2000, 2500, 2830, 2900, 3000, 3420, 3500, 3640, 3960];
  const lettered = prints.filter(({ letter }) => letter !== '');
  it('answers no pressure above that of the family and letter', () => {
    const asked = lettered.flatMap(({ designation, letter, service }) => {
      const { family, size } = rightOf(readTireDesignation(designation));
      const most = familyPressureTable.rows.find(([of, at]) => of === family && at === letter)?.[2];
      // A numeric size is printed with a pressure of its own.
      if (most === undefined || size.form === 'numeric') return [];
      const rated = tireLoadRating({ designation }, service);
      return loads.flatMap((load) => [
        { designation, load, most, found: pressureForLoad(designation, lb(load), service.fitment) },
        ...(isLeft(rated) ? [] : [{ designation, load, most, found: tirePressureForLoad(rated.right, lb(load)) }]),
      ]);
    });
    const above = asked.filter(({ found, most }) => !isLeft(found) && found.right.pressure.value.value.gt(most));
    expect(above.map(({ designation, load }) => `${designation} for ${load} lb`)).toEqual([]);
    expect(asked.filter(({ found }) => !isLeft(found)).length).toBeGreaterThan(500);
  });
  it.each([35, 60, 79])('answers no pressure above the one molded: %d psi', (pressure) => {
    const asked = lettered.flatMap(({ designation, service }) => {
      const molded = { single: lb(4000), dual: lb(4000), pressure: psi(pressure) };
      const rated = tireLoadRating({ designation, molded }, service);
      return isLeft(rated)
        ? []
        : loads.map((load) => ({ designation, found: tirePressureForLoad(rated.right, lb(load)) }));
    });
    const above = asked.filter(({ found }) => !isLeft(found) && found.right.pressure.value.value.gt(pressure));
    expect(above.map(({ designation }) => designation)).toEqual([]);
    expect(asked.filter(({ found }) => !isLeft(found)).length).toBeGreaterThan(500);
  });
});

/** ST-3 prints these at the pressures of the next letter (LR-4; ST-1 and ST-6 print E at 80 psi and G at 110 psi). */
const disputed = (tiresTables.find(({ name }) => name === 'ST-3, pressures disputed')?.rows ??
  []) as InflationTable['rows'];
describe.each(disputed.map(([size, letter, at, load]) => ({ size: sizeOf(size), letter, at, load })))(
  'the disputed row $size $letter at $at psi',
  ({ size, letter, at, load }) => {
    const designations = [written(size, letter), written(size, 'E'), size];
    it('gives its load to no tire at any pressure', () => {
      for (const designation of designations)
        for (let pressure = 5; pressure <= 130; pressure += 5) {
          const run = tireLoadAsRun({ designation }, single, psi(pressure));
          const printed = loadAtPressure(designation, psi(pressure), 'single');
          for (const found of [run, printed])
            if (!isLeft(found)) expect(found.right.load.value.value.toFixed(), designation).not.toBe(load);
        }
    });
    it('gives its pressure to no load', () => {
      for (const designation of designations)
        for (const asked of [1000, 2000, 3000, Number(load), 4000]) {
          const needed = pressureForLoad(designation, lb(asked), 'single');
          // Without a letter the row G at 110 psi of ST-6 speaks too, with its own 4,080 lb.
          if (!isLeft(needed) && needed.right.carries.value.value.lt(4080))
            expect(needed.right.pressure.value.value.lt(at), designation).toBe(true);
        }
      const rated = rangePressure('ST-metric', letter, size);
      if (!isLeft(rated)) expect(rated.right.notes).toEqual([]);
    });
  },
);

/** Makers' pages print ST235/80R16 E at 80 psi with 3,420 lb (ST-1); index 123 beside it is 1,550 kg. */
describe('ST235/80R16 LRE', () => {
  it('carries 3,420 lb at 80 psi, and two of them do not bear a GAWR of 7,000 lb', () => {
    const run = rightOf(tireLoadAsRun({ designation: 'ST235/80R16 LRE' }, single, psi(80)));
    expect([run.load.value.value.toFixed(), run.from]).toEqual(['3420', 'rating']);
    const axle = {
      gawr: '7,000 lb',
      tires: { designation: 'ST235/80R16 LRE', count: 2, fitment: 'single', pressure: '80 psi' },
    };
    expect(assessJson({ trailer: { hitch: 'ball', gvwr: '7,000 lb', axles: [axle] } })).toMatchObject({ _tag: 'Left' });
  });
  it('of load range E or F in 85 series is not tabulated: the molded figures are asked for', () => {
    expect(leftOf(tireLoadRating({ designation: 'ST235/85R16 LRE' }, single))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(pressureForLoad('ST235/85R16 LRE', lb(3600), 'single'))).toMatchObject({ tag: 'NotTabulated' });
  });
});
