/** The tiedowns of each piece of cargo: strong enough, and enough of them? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type LoadError, type Tiedown, type TiedownAnswer, tiedowns, tiedownWll } from '../../load/index.js';
import type { DecodedCargo, DecodedSpec, DecodedTiedown } from '../../spec/index.js';
import type { TraceError } from '../../trace/index.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';

export interface TiedownsPart extends Part {
  /** Each piece of cargo whose tiedowns are told. */
  readonly pieces: readonly { readonly name: string; readonly answer: TiedownAnswer }[];
}

type Problem = LoadError | TraceError;

const untied = (what: string, missing: string): TiedownsPart => ({ ...open(what, missing), pieces: [] });

/** A tiedown by its marking, or by the printed table of what it is made of. */
function tiedownOf({ runs, marked, chain, webbing }: DecodedTiedown): Either<Problem, Tiedown | undefined> {
  if (marked !== undefined) return right({ wll: marked, runs });
  if (chain === undefined && webbing === undefined) return right(undefined);
  const part =
    chain === undefined
      ? ({ part: 'webbing', width: webbing as string } as const)
      : ({ part: 'chain', size: chain.size, grade: chain.grade } as const);
  const limit = tiedownWll([part]);
  return isLeft(limit) ? limit : right({ wll: limit.right.wll, runs });
}

function tiedOf(cargo: DecodedCargo, index: number): Either<Problem, TiedownsPart> {
  const { name, length, tiedowns: given, section } = cargo;
  if (given === undefined || length === undefined || section === undefined)
    return right(
      untied(`tiedowns of ${name}`, given === undefined ? 'tiedowns' : 'length and the section it is tied by'),
    );
  const fitted: Tiedown[] = [];
  for (const [place, each] of given.entries()) {
    const read = tiedownOf(each);
    if (isLeft(read)) return left({ ...read.left, path: `cargo.${index}.tiedowns.${place}` });
    if (read.right === undefined) return right(untied(`tiedowns of ${name}`, `what tiedown ${place + 1} is`));
    fitted.push(read.right);
  }
  const answer = tiedowns(
    { weight: cargo.weight, length, blockedForward: cargo.blockedForward ?? false, section },
    fitted,
  );
  if (isLeft(answer)) return left({ ...answer.left, path: `cargo.${index}` });
  return right({
    ...emptyPart,
    notes: answer.right.notes,
    decisions: answer.right.decisions,
    pieces: [{ name, answer: answer.right }],
  });
}

/** Asks the tiedowns of every piece; a remark that several share is told once. */
export function tiedownsPart({ cargo = [] }: DecodedSpec): Either<Problem, TiedownsPart> {
  const all: TiedownsPart[] = [];
  for (const [index, piece] of cargo.entries()) {
    const part = tiedOf(piece, index);
    if (isLeft(part)) return part;
    all.push(part.right);
  }
  const { notes, ...rest } = together(all);
  return right({
    ...rest,
    notes: notes.filter((each, i) => notes.findIndex(({ says }) => says === each.says) === i),
    pieces: all.flatMap(({ pieces }) => pieces),
  });
}
