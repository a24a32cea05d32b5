/** What every heading of an answer starts from: running gear, weights, and the band of the tongue. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Guideline, ShareBand } from '../load/index.js';
import type { DecodedSpec } from '../spec/index.js';
import type { AssessError } from './errors.js';
import { type Climbers, climbersOf } from './parts/climbers.js';
import { guidelineOf } from './parts/guideline.js';
import { shareBand } from './parts/payload.js';
import { type Stack, stackOf } from './parts/running-gear.js';
import { type Weighed, weigh } from './parts/weights.js';

export interface Known {
  readonly spec: DecodedSpec;
  readonly stack: Stack;
  readonly weighed: Weighed;
  /** The band of tongue shares that the spec gives, or manuals. */
  readonly band: Guideline;
  /** The shares for which the payload is asked: one where the spec states it, or that band. */
  readonly share: ShareBand;
  readonly climbers: Climbers;
}

export function knownOf(spec: DecodedSpec): Either<AssessError, Known> {
  const stack = stackOf(spec.trailer);
  if (isLeft(stack)) return stack;
  const weighed = weigh(spec, stack.right.at);
  if (isLeft(weighed)) return weighed;
  const band = guidelineOf(spec.trailer);
  if (isLeft(band)) return left({ ...band.left, path: 'trailer.guideline' });
  const share = shareBand(spec, band.right);
  const climbers = climbersOf(spec);
  return right({ spec, stack: stack.right, weighed: weighed.right, band: band.right, share, climbers });
}
