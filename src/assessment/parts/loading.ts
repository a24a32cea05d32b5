/** Getting on: ramps, edges, and the lift of the tail while the machine climbs. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { LoadError } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import type { Derived, OutsideItsRange } from '../../trace/index.js';
import { edgesPart } from './loading-edges.js';
import type { LoadingPart } from './loading-part.js';
import { rampsPart, settingPart } from './loading-ramps.js';
import { tailPart } from './loading-tail.js';
import { together } from './part-of-answer.js';
import type { Weighed } from './weights.js';

/** Asks ramps, edges, tail lift and the setting of the ramps. */
export function loadingPart(
  spec: DecodedSpec,
  weighed: Weighed,
  axlesAt: Derived<'in'> | undefined,
): Either<LoadError | OutsideItsRange, LoadingPart> {
  const climbed = rampsPart(spec, weighed);
  if (isLeft(climbed)) return climbed;
  const crossed = edgesPart(spec);
  if (isLeft(crossed)) return crossed;
  const lifted = tailPart(spec, weighed, axlesAt);
  if (isLeft(lifted)) return lifted;
  const set = settingPart(spec);
  if (isLeft(set)) return set;
  const { ramps } = climbed.right;
  const { edges } = crossed.right;
  const { tailLift, onLegs } = lifted.right;
  const { setting } = set.right;
  return right({
    ...together([climbed.right, crossed.right, lifted.right, set.right]),
    ...(ramps && { ramps }),
    ...(edges && { edges }),
    ...(tailLift && { tailLift, onLegs: onLegs === true }),
    ...(setting && { setting }),
  });
}
