/** Where the load index governs, kilograms govern: an axle, its group, the payload and the load as run keep them exactly. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../src/assessment/index.js';
import { describeError } from '../../src/errors.js';
import { loadIndex, tireLoadRating } from '../../src/tires/index.js';
import type { Derived } from '../../src/trace/index.js';
import { convert, kg, lb, roundCapacityDown, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';

const indices = Array.from({ length: 91 }, (_, i) => 60 + i);
const kilograms = (index: number) => rightOf(loadIndex(index)).kg.value.value;
const inKg = ({ value }: Derived<'lb'>): string => show(convert(value, 'kg'));

interface Rig {
  readonly index: number;
  readonly fitment: 'single' | 'dual';
  readonly axles: number;
}

/** Axles labeled for exactly what their tires carry, under a trailer labeled for exactly its axles, loaded to its last gram. */
function loadedFull({ index, fitment, axles }: Rig, addedGrams = 0): ReturnType<typeof assessJson> {
  const count = fitment === 'single' ? 2 : 4;
  const each = kilograms(index).times(count);
  const all = each.times(axles);
  const curb = all.div(10);
  const tires = {
    designation: `185R14C ${index}/${index}N`,
    count,
    fitment,
    molded: { pressure: '450 kPa' },
    pressure: '450 kPa',
  };
  const weight = all.minus(curb).plus(`${addedGrams}e-3`);
  return assessJson({
    trailer: {
      hitch: 'ball',
      gvwr: `${all.toFixed()} kg`,
      sharing: 'equalised',
      axles: Array.from({ length: axles }, (_, i) => ({ at: `${4 + i} m`, gawr: `${each.toFixed()} kg`, tires })),
      curb: { weight: `${curb.toFixed()} kg`, tongue: '0 kg' },
    },
    tongueShare: '20 %',
    cargo: [{ name: 'machine', weight: `${weight.toFixed()} kg`, at: `${4 + (axles - 1) / 2} m` }],
  });
}

/** What stands on the axles and their tires, each with what is left of it. */
const onAxles = ({ partChecks, checks }: Assessment): string[] =>
  [...partChecks, ...checks].map(({ what, verdict, reserve }) => `${what}: ${verdict}, ${show(reserve.value)}`);

/** The registers of load indices are in kilograms (UN R54 annex 2, by the lists LI); pounds beside them are a printing rule. */
describe.each([
  { fitment: 'single', axles: 1 },
  { fitment: 'single', axles: 2 },
  { fitment: 'single', axles: 3 },
  { fitment: 'dual', axles: 1 },
  { fitment: 'dual', axles: 2 },
] as const)('$axles axles on $fitment tires of an index from 60 to 150', ({ fitment, axles }) => {
  const rigs = indices.map((index): Rig => ({ index, fitment, axles }));
  it('bear a GAWR of exactly their kilograms, carry it exactly, and run it exactly', () => {
    for (const rig of rigs) {
      const found = onAxles(rightOf(loadedFull(rig)));
      expect(found.length, `${rig.index}`).toBeGreaterThanOrEqual(1 + 3 * axles);
      expect(found.filter((each) => !each.endsWith(': within, 0 lb'))).toEqual([]);
    }
  });
  it('are over with one gram more', () => {
    for (const rig of rigs) {
      const { checks } = rightOf(loadedFull(rig, 1));
      expect([...new Set(checks.map(({ verdict }) => verdict))], `${rig.index}`).toEqual(['over']);
    }
  });
  it('leave a payload of exactly those kilograms', () => {
    for (const rig of rigs) {
      const { payload: carry } = rightOf(loadedFull(rig));
      const all = kilograms(rig.index)
        .times(fitment === 'single' ? 2 : 4)
        .times(axles);
      // With a fifth of it on the tongue the axles carry four fifths of the gross weight: payload = all / 0.8 - all / 10.
      const byAxles = carry?.anywhere?.limits.filter(({ name }) => name !== 'GVWR') ?? [];
      expect(byAxles.map(({ name }) => name)).toEqual(expect.arrayContaining(['GAWR', 'tires']));
      for (const { name, limit } of byAxles)
        expect(inKg(limit), `${rig.index} by ${name}`).toBe(show(kg(all.times('1.15').toFixed())));
    }
  });
});

describe('pounds of an index', () => {
  it.each(indices)('%d are shown rounded down from its kilograms, whatever a list prints', (index) => {
    const { rating, from } = rightOf(
      tireLoadRating({ designation: `185R14C ${index}N` }, { fitment: 'single', on: 'trailer' }),
    );
    expect([from, inKg(rating)]).toEqual(['index', show(kg(kilograms(index).toFixed()))]);
    const shown = roundCapacityDown(rating.value, lb(1)).value;
    expect(shown.lte(kilograms(index).div('0.45359237')) && shown.plus(1).gt(kilograms(index).div('0.45359237'))).toBe(
      true,
    );
  });
  it('of a passenger tire on a trailer are its kilograms over 1.10: index 101, 825 kg, counts for 750 kg', () => {
    const axle = (gawr: string): object => ({
      gawr,
      tires: { designation: '185R14 101T', count: 2, fitment: 'single' },
    });
    const under = (gawr: string) => assessJson({ trailer: { hitch: 'ball', gvwr: gawr, axles: [axle(gawr)] } });
    expect(onAxles(rightOf(under('1500 kg')))).toEqual(['axle 1 tires against GAWR: within, 0 lb']);
    expect(isLeft(under('1500.001 kg'))).toBe(true);
  });
  it('refuse a gram more in whole pounds, the label up and the tires down', () => {
    const tires = { designation: '185R14C 98N', count: 2, fitment: 'single' };
    const found = assessJson({ trailer: { hitch: 'ball', gvwr: '1500 kg', axles: [{ gawr: '1500.001 kg', tires }] } });
    expect(isLeft(found) && describeError(found.left)).toContain(
      'trailer.axles.0.gawr: this is 3,307 lb; it must be at most 3,306 lb, the rating of its tires',
    );
  });
});
