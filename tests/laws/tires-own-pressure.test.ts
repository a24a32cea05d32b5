/** A table load counts only at the pressure of its own row, and where the load index governs, kilograms govern. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import {
  familyPressureTable,
  inflationTables,
  loadIndex,
  pressureForLoad,
  readDesignation,
  type Service,
  tireLoadAsRun,
  tireLoadRating,
  tirePressureForLoad,
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

/** 49 CFR 571.119 S6.5(d): the load molded into a tire is that at the pressure molded beside it. */
describe('every row of every table', () => {
  it('gives no more to a tire run at its pressure than the same row given as molded', () => {
    let asked = 0;
    for (const { size, letter, at, load, dual, table } of rows) {
      for (const fitment of ['single', 'dual'] as const) {
        const own = fitment === 'single' ? load : dual;
        if (own === '') continue;
        for (const each of letter === '' ? letters : [letter]) {
          const designation = written(size, each);
          const molded = {
            single: lb(load === '' ? own : load),
            ...(dual === '' ? {} : { dual: lb(dual) }),
            pressure: psi(at),
          };
          const service: Service = { fitment, on: 'trailer' };
          const asMolded = tireLoadAsRun({ designation, molded }, service, psi(at));
          const asRun = tireLoadAsRun({ designation }, service, psi(at));
          if (isLeft(asRun) || isLeft(asMolded)) continue;
          asked += 1;
          expect(
            asRun.right.load.value.value.lte(asMolded.right.load.value.value),
            `${table}: ${designation} ${fitment} at ${at} psi`,
          ).toBe(true);
        }
      }
    }
    expect(asked).toBeGreaterThan(250);
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
  it('answers no pressure above the molded one, or above that of the family and letter', () => {
    let asked = 0;
    for (const { size, letter } of rows.filter((row) => row.letter !== '')) {
      const designation = written(size, letter);
      const { family } = rightOf(readDesignation(size));
      const most =
        rightOf(readDesignation(size)).size.form === 'numeric'
          ? undefined
          : familyPressureTable.rows.find(([of, at]) => of === family && at === letter)?.[2];
      for (const load of [500, 1000, 1500, 2000, 2500, 2830, 2900, 3000, 3420, 3500, 3640, 3960]) {
        const byTable = pressureForLoad(designation, lb(load), 'single');
        if (!isLeft(byTable) && most !== undefined)
          expect(byTable.right.pressure.value.value.lte(most), `${designation} for ${load} lb`).toBe(true);
        const rated = tireLoadRating({ designation, molded: { single: lb(4000), pressure: psi(60) } }, single);
        if (isLeft(rated)) continue;
        const needed = tirePressureForLoad(rated.right, lb(load));
        if (!isLeft(needed))
          expect(needed.right.pressure.value.value.lte(60), `${designation} molded at 60 psi`).toBe(true);
        asked += 1;
      }
    }
    expect(asked).toBeGreaterThan(500);
  });
});

/** Makers' pages print ST235/80R16 E at 80 psi with 3,420 lb (ST-1); index 123 beside it is 1,550 kg. */
describe('ST235/80R16 LRE', () => {
  it('carries 3,420 lb at 80 psi, and two of them do not bear a GAWR of 7,000 lb', () => {
    const run = rightOf(tireLoadAsRun({ designation: 'ST235/80R16 LRE' }, single, psi(80)));
    expect([run.load.value.value.toFixed(), run.from]).toEqual(['3420', 'rating']);
    const axle = {
      gawr: '7,000 lb',
      tires: { designation: 'ST235/80R16 LRE', count: 2, fitment: 'single', pressure: '80 psi' },
    };
    expect(assess({ trailer: { hitch: 'ball', gvwr: '7,000 lb', axles: [axle] } })).toMatchObject({ _tag: 'Left' });
  });
  it('of load range E or F in 85 series is not tabulated: the molded figures are asked for', () => {
    expect(leftOf(tireLoadRating({ designation: 'ST235/85R16 LRE' }, single))).toMatchObject({ tag: 'NotTabulated' });
    expect(leftOf(pressureForLoad('ST235/85R16 LRE', lb(3600), 'single'))).toMatchObject({ tag: 'NotTabulated' });
  });
});

/** The registers of load indices are in kilograms (UN R54 annex 2, by the lists LI); pounds beside them are a printing rule. */
describe('two tires of an index', () => {
  const indices = Array.from({ length: 91 }, (_, i) => 60 + i);
  it.each(indices)('%d stand under an axle of twice its kilograms, and not under one gram more', (index) => {
    const each = rightOf(loadIndex(index)).kg.value.value;
    const under = (gawr: string): ReturnType<typeof assess> =>
      assess({
        trailer: {
          hitch: 'ball',
          gvwr: gawr,
          axles: [{ gawr, tires: { designation: `185R14C ${index}N`, count: 2, fitment: 'single' } }],
        },
      });
    const tires = rightOf(under(`${each.times(2).toFixed()} kg`)).partChecks.find(({ what }) => what.includes('tires'));
    expect([tires?.verdict, tires?.reserve.value.value.toFixed()]).toEqual(['within', '0']);
    expect(isLeft(under(`${each.times(2).plus('0.001').toFixed()} kg`))).toBe(true);
  });
});
