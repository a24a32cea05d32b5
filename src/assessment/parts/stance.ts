/** Side-to-side share, loads off level on independent axles, and yaw inertia of the laden trailer. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxlesError } from '../../axles/index.js';
import type { LoadError } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import type { NotAWholeCount, OutsideItsRange } from '../../trace/index.js';
import { own } from '../../units/internal.js';
import { together } from './part-of-answer.js';
import { offLevelOf } from './stance-off-level.js';
import type { StancePart } from './stance-part.js';
import { sidesOf } from './stance-sides.js';
import { yawOf } from './stance-yaw.js';
import type { Weighed } from './weights.js';

type Found = Either<AxlesError | LoadError | OutsideItsRange | NotAWholeCount, StancePart>;

/** Asks all three. */
export function stancePart(spec: DecodedSpec, weighed: Weighed): Found {
  const sides = sidesOf(spec, weighed);
  if (isLeft(sides)) return left({ ...sides.left, path: 'trailer.track' });
  const offLevel = offLevelOf(spec, weighed);
  if (isLeft(offLevel)) return left({ ...offLevel.left, path: 'trailer.ballAboveLevel' });
  const yaw = yawOf(spec, weighed);
  if (isLeft(yaw)) return left({ ...yaw.left, path: 'cargo' });
  const { checks, notes, attention, notChecked, decisions } = together([sides.right, offLevel.right, yaw.right]);
  return right({
    checks,
    notes,
    attention,
    notChecked,
    decisions,
    sides: own(sides.right, 'sides'),
    offLevel: own(offLevel.right, 'offLevel'),
    yaw: own(yaw.right, 'yaw'),
  });
}
