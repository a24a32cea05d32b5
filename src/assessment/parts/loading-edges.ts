/** Does a machine hang up at the ends of the ramps or of the dovetail? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type CrestClearance, crestClearance, crestsOf, type LoadError, rampAngle } from '../../load/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import type { OutsideItsRange } from '../../trace/index.js';
import { withLeast } from './cargo-pieces.js';
import type { LoadingPart } from './loading-part.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';
import { wantingOfCargo } from './wanting-keys.js';

type Problem = LoadError | OutsideItsRange;

const atRamps = <E extends Problem>(problem: E) => left({ ...problem, path: 'trailer.ramps' });

/** Every machine whose wheelbase and low point are told; the one that clears least is told. */
export function edgesPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, LoadingPart> {
  if (ramps === undefined || cargo.length === 0) return right(emptyPart);
  const angle = rampAngle(ramps.height, ramps.length);
  if (isLeft(angle)) return atRamps(angle.left);
  const clearances: { readonly part: Part; readonly edges: CrestClearance }[] = [];
  for (const { wheelbase, lowPoint } of cargo) {
    if (wheelbase === undefined || lowPoint === undefined) continue;
    const found = crestsOf(angle.right.angle, ramps.dovetail ?? 'straight deck', wheelbase);
    if (isLeft(found)) return atRamps(found.left);
    const clear = crestClearance(wheelbase, [{ name: 'low point', ...lowPoint }], found.right.crests);
    if (isLeft(clear)) return atRamps(clear.left);
    const part = {
      ...emptyPart,
      notes: [...found.right.notes, ...clear.right.notes],
      decisions: [...found.right.decisions, ...clear.right.decisions],
    };
    clearances.push({ part, edges: clear.right });
  }
  const worst = withLeast(clearances, ({ edges }) => edges.least);
  if (worst === undefined)
    return right(
      open({
        id: 'edges',
        what: 'hanging up at the edge of the deck',
        missing: 'wheelbase and low point of a wheeled machine',
        paths: wantingOfCargo({ cargo }, 'wheelbase', 'lowPoint'),
      }),
    );
  const { notes, decisions } = together(clearances.map(({ part }) => part));
  return right({
    ...emptyPart,
    edges: worst.found.edges,
    notes: notes.filter((each, i) => notes.findIndex(({ says }) => says === each.says) === i),
    decisions: [...angle.right.decisions, ...decisions, ...worst.decisions],
  });
}
