/** The brakes of a spec against the GAWRs they must bear. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type BrakedAxle,
  type BrakingAsked,
  brakeCapacity,
  brakingAsked,
  type HardwareError,
} from '../../axles/index.js';
import { type Check, checkId } from '../../ratings/index.js';
import type { DecodedTrailer } from '../../spec/index.js';
import { type Derived, renamed } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { emptyPart, open, type Part } from './part-of-answer.js';
import { axleName, type Keys, wantingOfAxles } from './wanting-keys.js';

export interface BrakesPart extends Part {
  /** Ratings against ratings: they are listed with the parts, not with the loads. */
  readonly againstLabel: readonly Check[];
  /** What all brakes together are rated for, in lb. */
  readonly total?: Derived<'lb'>;
  /** What the brakes of truck and trailer must do together by the published table; what they do is measured. */
  readonly asked?: BrakingAsked;
}

/** The row of the published table for a truck of two axles with this trailer. */
function askedOf({ gvwr }: DecodedTrailer, combination: Derived<'lb'> | undefined): BrakingAsked | undefined {
  if (gvwr === undefined || combination === undefined) return undefined;
  const asked = brakingAsked({ towAxles: 2, trailerGvwr: gvwr, weight: combination });
  return isLeft(asked) ? undefined : asked.right;
}

/** The brakes against the GAWRs, where the label gives every axle one and some axle has a rated pair. */
function againstLabel(trailer: DecodedTrailer): Either<HardwareError, BrakesPart> {
  const { axles } = trailer;
  const unasked = (missing: string, paths: Keys): Either<never, BrakesPart> =>
    right({
      againstLabel: [],
      ...open({ id: checkId('brake capacity'), what: 'brakes against the GAWRs', missing, paths }),
    });
  if (axles.every(({ brakes }) => brakes === undefined))
    return unasked('brake ratings', wantingOfAxles(trailer, 'brakes'));
  const braked: BrakedAxle[] = [];
  for (const [index, { gawr, brakes }] of axles.entries()) {
    const { of, path } = axleName(index);
    if (gawr === undefined) return unasked(`GAWR of ${of}`, [`${path}.gawr`]);
    braked.push({
      of,
      gawr: renamed(`${of} GAWR`, gawr),
      ...(brakes && { brakes: [renamed(`${of} left brake`, brakes.left), renamed(`${of} right brake`, brakes.right)] }),
    });
  }
  const found = brakeCapacity(braked);
  if (isLeft(found)) return left({ ...found.left, path: 'trailer.axles' });
  const { checks, notes, decisions, total } = found.right;
  const unsaid = collected(axles, ({ brakes }, index) => {
    const { of, path } = axleName(index);
    if (brakes !== undefined) return [];
    const missing = 'brake ratings, if it has brakes';
    return [{ id: checkId('brakes', of), what: `${of} brakes against its GAWR`, missing, paths: [`${path}.brakes`] }];
  });
  // An axle with unknown brakes is not an axle without brakes, so the total stays open.
  const told = unsaid.length === 0 ? checks : checks.filter(({ part }) => part !== undefined);
  return right({ againstLabel: told, total, ...emptyPart, notes, notChecked: unsaid, decisions });
}

/** Asks the brakes against the label, and what is asked of truck and trailer together. */
export function brakesPart(
  trailer: DecodedTrailer,
  combination: Derived<'lb'> | undefined,
): Either<HardwareError, BrakesPart> {
  const label = againstLabel(trailer);
  const asked = askedOf(trailer, combination);
  if (isLeft(label) || asked === undefined) return label;
  return right({ asked, ...label.right, decisions: [...label.right.decisions, ...asked.decisions] });
}
