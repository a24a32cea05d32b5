/** The whole stack in one call: do the ratings stack up, what may it carry, which part is the limit? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { contradictionsIn, type DecodedSpec, decodeSpec, type SpecInput } from '../spec/index.js';
import type { Assessment } from './assessment.js';
import type { AssessError } from './errors.js';
import { headingsOf, limitHeadingsOf } from './headings.js';
import { joinHeadings } from './join-headings.js';
import { knownOf } from './known.js';

/**
 * Do tires, axles, coupler and label stack up, what may this build honestly carry, and which part is the limit?
 *
 * Three separate questions, never one: gross against GVWR; each axle against its GAWR; tongue load against coupler and
 * tow vehicle. The payload is the least of what every known limit allows.
 *
 * A static calculation: no road loads, no fatigue, no safe speed, and never "legal". Labels and makers govern.
 *
 * @param spec what is known of the trailer, its cargo and what tows it: an editor offers the keys, each with where it is read;
 * figures as people write them, `'9,200 lb'`, or as quantities, `lb(9200)`
 * @returns checks, payload and its governing limit, tongue and axle loads in lb, open questions; Left `UndecodableSpec` with every
 * fault at its key, or an empty trailer that weighs nothing (`NothingWeighed`); an overload is an answer, and so is a heading whose figures cannot be so
 * @example isLeft(assess({ trailer: { hitch: 'ball', axles: [] } })) // true
 * @source each check and figure carries its own
 */
export const assess = (spec: SpecInput): Either<AssessError, Assessment> => assessJson(spec);

/**
 * The same for parsed JSON of unknown content.
 *
 * @param input what `JSON.parse` or `readJson` made of a text
 * @returns as `assess`
 * @example isLeft(assessJson({ trailer: 'a big one' })) // true
 * @source each check and figure carries its own
 */
export function assessJson(input: unknown): Either<AssessError, Assessment> {
  const decoded = decodeSpec(input);
  return isLeft(decoded) ? decoded : assessSpec(decoded.right);
}

/**
 * Do tires, axles, coupler and label stack up, for a spec that has been read already?
 *
 * The same arithmetic as `assess`, without the reading.
 *
 * Not for JSON as it comes: that goes through `decodeSpec` or `assess`.
 *
 * @param spec from `decodeSpec`
 * @returns as `assess`; `UndecodableSpec` only for two statements that contradict each other
 * @example orThrow(assessSpec(orThrow(decodeSpec(spec)))).verdict // attention
 * @source each check and figure carries its own
 */
export function assessSpec(spec: DecodedSpec): Either<AssessError, Assessment> {
  const contradictions = contradictionsIn(spec);
  if (contradictions.error !== undefined) return left(contradictions.error);
  const known = knownOf(spec);
  if (isLeft(known)) return known;
  const headings = headingsOf(known.right);
  const limited = limitHeadingsOf(known.right, headings);
  if (isLeft(limited)) return limited;
  return right(joinHeadings(known.right, headings, limited.right, contradictions.decisions));
}
