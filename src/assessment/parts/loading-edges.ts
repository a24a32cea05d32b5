/** Does the machine hang up at the ends of the ramps or of the dovetail? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { crestClearance, crestsOf, type LoadError, rampAngle } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import type { OutsideItsRange } from '../../trace/index.js';
import type { LoadingPart } from './loading-part.js';
import { emptyPart, open } from './part-of-answer.js';

type Problem = LoadError | OutsideItsRange;

const atRamps = <E extends Problem>(problem: E) => left({ ...problem, path: 'trailer.ramps' });

/** Asks whether the first machine whose wheelbase and low point are known clears every edge. */
export function edgesPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, LoadingPart> {
  const machine = cargo.find(({ wheelbase, lowPoint }) => wheelbase !== undefined && lowPoint !== undefined);
  if (ramps === undefined || cargo.length === 0) return right(emptyPart);
  if (machine?.wheelbase === undefined || machine.lowPoint === undefined)
    return right(open('hanging up at the edge of the deck', 'wheelbase and low point of a wheeled machine'));
  const angle = rampAngle(ramps.height, ramps.length);
  if (isLeft(angle)) return atRamps(angle.left);
  const found = crestsOf(angle.right.angle, ramps.dovetail ?? 'straight deck', machine.wheelbase);
  if (isLeft(found)) return atRamps(found.left);
  const clear = crestClearance(machine.wheelbase, [{ name: 'low point', ...machine.lowPoint }], found.right.crests);
  if (isLeft(clear)) return atRamps(clear.left);
  return right({
    ...emptyPart,
    edges: clear.right,
    notes: [...found.right.notes, ...clear.right.notes],
    decisions: [...angle.right.decisions, ...found.right.decisions, ...clear.right.decisions],
  });
}
