/** What the left and the right wheels carry. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type LoadError, lateralCentre, wheelShares } from '../../load/index.js';
import { note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { constant, decide, type OutsideItsRange, quotient, statics } from '../../trace/index.js';
import { inch, lb } from '../../units/index.js';
import { emptyPart, open } from './part-of-answer.js';
import type { StancePart } from './stance-part.js';
import { type Keys, unbalanced, wantingOfCargo } from './wanting-keys.js';
import type { Weighed } from './weights.js';

type Found = Either<LoadError | OutsideItsRange, StancePart>;

const nothing = constant(lb(0));
const takenAsEven = note(
  'TrailerTakenAsEven',
  'From side to side the empty trailer is taken to weigh alike on both sides.',
);

/** Loads of the left and right wheels. The ball is on the centre line and takes no roll, so the axles alone resist the whole lateral moment. */
export function sidesOf(spec: DecodedSpec, { trailer, cargo: placed, balance }: Weighed): Found {
  const { cargo = [] } = spec;
  const { track } = spec.trailer;
  const unasked = (missing: string, paths: Keys): StancePart =>
    open({ id: 'side-to-side', what: 'side to side', missing, paths });
  const offset = cargo.map(({ rightOfMiddle }) => rightOfMiddle);
  if (track === undefined)
    return right(cargo.length === 0 ? emptyPart : unasked('track of the trailer', ['trailer.track']));
  if (offset.some((each) => each === undefined))
    return right(unasked('how far the cargo stands from the middle', wantingOfCargo(spec, 'rightOfMiddle')));
  if (trailer === undefined || balance === undefined) return right(unasked('balance of the trailer', unbalanced(spec)));
  const presses = decide(balance.axleLoad, '>', nothing);
  if (!presses.holds) return right({ ...unasked('a load on the axles', []), decisions: [presses] });
  const across = [
    { name: trailer.name, weight: trailer.weight, rightOfMiddle: constant(inch(0)) },
    ...cargo.map(({ name, weight: w }, i) => ({
      name,
      weight: placed[i]?.weight ?? w,
      rightOfMiddle: offset[i] as NonNullable<(typeof offset)[number]>,
    })),
  ];
  const centre = lateralCentre(across);
  if (isLeft(centre)) return centre;
  const sides = wheelShares(
    balance.axleLoad,
    quotient('what the axles carry, right of the middle', centre.right.moment, balance.axleLoad, statics),
    track,
  );
  if (isLeft(sides)) return sides;
  return right({
    sides: sides.right,
    ...emptyPart,
    notes: [...sides.right.notes, takenAsEven],
    decisions: [presses, ...centre.right.decisions, ...sides.right.decisions],
  });
}
