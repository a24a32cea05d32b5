/** One axle system: beam, springs, hubs, wheels and tires, rated by the weakest of them at the ground. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Bound, capacity, checkPart, governedBy, rating } from '../ratings/index.js';
import { asDerived, constant, type Decision, type Derived, decide, product, type Source } from '../trace/index.js';
import { lb, ratio, toWire } from '../units/index.js';
import { has } from '../units/internal.js';
import type { AxlePartName, AxleParts, AxleSystem } from './axle-parts.js';
import type { AxlesError } from './errors.js';

/** Agency letters aiam1472 and aiam2521: GAWR is the rating of the axle system at the ground; the weakest part governs. */
export const gawrSource: Source = Object.freeze({
  id: 'aiam1472',
  title: 'NHTSA interpretation aiam1472 (GAWR at the tire-ground interface, weakest part governs)',
  edition: '1974',
  clause: '49 CFR 571.3',
  grade: 'A',
});

/** What the tires of an axle must bear. */
export const tireSumSource: Source = Object.freeze({
  id: 'RG-2',
  title: 'NHTSA interpretation nht76-1.42 (sum of tire ratings at least the GAWR)',
  edition: '1976-12-01',
  clause: '49 CFR 571.120 S5.1.2',
  grade: 'A',
});

/** The parts of an axle system that must bear its GAWR, in the order they are reported. */
const partNames = ['beam', 'springs', 'hubs', 'wheels', 'tires'] as const;

const nothing = constant(lb(0));

function bearing(of: string, parts: AxleParts, name: AxlePartName): Derived<'lb'> | undefined {
  const part = parts[name];
  if (part === undefined) return undefined;
  if (!has(part, 'each')) return asDerived(`${of} ${name}`, part, 'label');
  const count = constant(ratio(part.count), undefined);
  return product(
    `${of} ${name}`,
    asDerived(`${of} each of ${name}`, part.each, 'label'),
    count,
    name === 'tires' ? tireSumSource : undefined,
  );
}

/**
 * What may this axle carry at the ground, and which part says so?
 *
 * `rating = least of (GAWR, beam, springs, hubs, wheels x count, tires x count)`, all in lb, over the parts that are given.
 *
 * Not for a re-rating: the label is its maker's, and a computed figure never replaces it. Brakes are judged apart.
 *
 * @param parts ratings in lb: GAWR from the label; beam, springs and hubs from the axle maker's plate; wheels and tires each, from stamping and sidewall
 * @param of which axle, for the report: `axle 1`
 * @returns the rating in lb, every part that ties for it, each part against the GAWR, and the parts nobody rated; Left `AxleUnknown` when nothing is given, `RatingNotPositive`, `GawrAboveParts` when the label claims more than a part bears
 * @example orThrow(axleSystem({ beam: lb(5200), tires: { each: lb(2540), count: 2 } }, 'axle 1')).rating // 5,080 lb
 * @source NHTSA interpretation aiam1472 (1974); 49 CFR 571.120 S5.1.2 (tires)
 */
export function axleSystem(parts: AxleParts, of: string): Either<AxlesError, AxleSystem> {
  const bounds: Bound[] = [];
  const notGiven: AxlePartName[] = [];
  const positive: Decision[] = [];
  for (const name of partNames) {
    const limit = bearing(of, parts, name);
    if (limit === undefined) {
      notGiven.push(name);
      continue;
    }
    const above = decide(limit, '>', nothing);
    if (!above.holds)
      return left({ chapter: 'axles', tag: 'RatingNotPositive', of, part: name, rating: toWire(limit.value) });
    positive.push(above);
    bounds.push({ name, limit });
  }
  if (parts.gawr === undefined) {
    if (bounds.length === 0) return left({ chapter: 'axles', tag: 'AxleUnknown', of });
    const governed = governedBy(`${of} rating`, bounds);
    return right({ label: of, rating: governed.limit, governed, checks: [], notGiven, decisions: positive });
  }
  const stated = asDerived(`${of} GAWR`, parts.gawr, 'label');
  const above = decide(stated, '>', nothing);
  if (!above.holds)
    return left({ chapter: 'axles', tag: 'RatingNotPositive', of, part: 'GAWR', rating: toWire(stated.value) });
  const gawr = rating('GAWR', stated, { part: of, clause: gawrSource });
  const borne = bounds.map(({ limit }) => decide(gawr.limit, '<=', limit));
  const failed = bounds[borne.findIndex(({ holds }) => !holds)];
  if (failed !== undefined) {
    return left({
      chapter: 'axles',
      tag: 'GawrAboveParts',
      of,
      gawr: toWire(gawr.limit.value),
      part: failed.name,
      bears: toWire(failed.limit.value),
    });
  }
  const checks = bounds.map(({ name, limit }) => checkPart(capacity(name as AxlePartName, limit, of), gawr));
  const governed = governedBy(`${of} rating`, [{ name: 'GAWR', limit: gawr.limit }, ...bounds]);
  return right({
    label: of,
    rating: governed.limit,
    governed,
    gawr,
    checks,
    notGiven,
    decisions: [...positive, above, ...borne],
  });
}
