/** Does a machine hang up at the ends of the ramps or of the dovetail? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { crestClearance, crestsOf, type LoadError, type RampAngle } from '../../load/index.js';
import type { DecodedCargo, DecodedTrailer } from '../../spec/index.js';
import type { OutsideItsRange } from '../../trace/index.js';
import { answered } from './answered.js';
import { withLeast } from './cargo-pieces.js';
import type { LoadingPart } from './loading-part.js';
import { emptyPart, open, together } from './part-of-answer.js';
import { wantingOfCargo } from './wanting-keys.js';

type Problem = LoadError | OutsideItsRange;

/** One machine over every edge; an empty part where its wheelbase or low point is unknown. */
function clearanceOf(
  { dovetail }: NonNullable<DecodedTrailer['ramps']>,
  { angle }: RampAngle,
  { wheelbase, lowPoint }: DecodedCargo,
  index: number,
): Either<Problem, LoadingPart> {
  if (wheelbase === undefined || lowPoint === undefined) return right(emptyPart);
  const found = crestsOf(angle, dovetail ?? 'straight deck', wheelbase);
  if (isLeft(found)) return left({ ...found.left, path: 'trailer.ramps.dovetail' });
  const clear = crestClearance(wheelbase, [{ name: 'low point', ...lowPoint }], found.right.crests);
  if (isLeft(clear)) return left({ ...clear.left, path: `cargo.${index}.lowPoint` });
  return right({
    ...emptyPart,
    edges: clear.right,
    notes: [...found.right.notes, ...clear.right.notes],
    decisions: [...found.right.decisions, ...clear.right.decisions],
  });
}

/** Every machine with known wheelbase and low point; the one that clears least is reported. */
export function edgesPart(
  ramps: NonNullable<DecodedTrailer['ramps']>,
  angle: RampAngle,
  cargo: readonly DecodedCargo[],
): LoadingPart {
  if (cargo.length === 0) return emptyPart;
  const asked = { id: 'edges', what: 'hanging up at the edge of the deck' };
  if (cargo.every(({ wheelbase, lowPoint }) => wheelbase === undefined || lowPoint === undefined))
    return open({
      ...asked,
      missing: 'wheelbase and low point of a wheeled machine',
      paths: wantingOfCargo({ cargo }, 'wheelbase', 'lowPoint'),
    });
  const each = cargo.map((piece, index) =>
    answered(
      clearanceOf(ramps, angle, piece, index),
      { ...asked, path: 'trailer.ramps', piece: index },
      (part): LoadingPart => part,
    ),
  );
  const clear = each.flatMap(({ edges }) => edges ?? []);
  const worst = withLeast(clear, ({ least }) => least);
  const { notes, decisions, ...rest } = together(each);
  return {
    ...rest,
    ...(worst && { edges: worst.found }),
    notes: notes.filter((one, i) => notes.findIndex(({ says }) => says === one.says) === i),
    decisions: [...decisions, ...(worst?.decisions ?? [])],
  };
}
