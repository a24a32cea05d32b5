/** The tiedowns of each piece of cargo: strong enough, and enough of them? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type LoadError,
  type Tiedown,
  type TiedownAnswer,
  type TiedownPart,
  tiedowns,
  tiedownWll,
} from '../../load/index.js';
import { type Note, note } from '../../ratings/index.js';
import type { DecodedCargo, DecodedSpec, DecodedTiedown, DecodedTrailer } from '../../spec/index.js';
import { type AnyWeight, constant, type Decision, decide, type TraceError } from '../../trace/index.js';
import { ratio } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { answered } from './answered.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';
import { type Keys, wantingOf } from './wanting-keys.js';
import type { Weighed } from './weights.js';

export interface TiedownsPart extends Part {
  /** Each piece of cargo with known tiedowns. */
  readonly pieces: readonly { readonly name: string; readonly index: number; readonly answer: TiedownAnswer }[];
}

type Problem = LoadError | TraceError;

type Anchors = DecodedTrailer['anchors'];

function partOf({ marked, chain, webbing }: DecodedTiedown): TiedownPart | undefined {
  if (marked !== undefined) return { part: 'other', name: 'tiedown', marked };
  if (chain !== undefined) return { part: 'chain', size: chain.size, grade: chain.grade };
  return webbing === undefined ? undefined : { part: 'webbing', width: webbing };
}

/** A tiedown by its marking, or by the printed table of what it is made of; never more than the anchor point it hangs on. */
function tiedownOf(given: DecodedTiedown, anchors: Anchors): Either<Problem, Tiedown | undefined> {
  const { runs, marked } = given;
  const part = partOf(given);
  if (part === undefined) return right(undefined);
  if (marked !== undefined && anchors === undefined) return right({ wll: marked, runs });
  const anchor = (each: AnyWeight): TiedownPart => ({ part: 'other', name: 'anchor point', marked: each });
  const limit = tiedownWll([part, ...(anchors === undefined ? [] : [anchor(anchors.each)])]);
  return isLeft(limit) ? limit : right({ wll: limit.right.wll, runs });
}

/** One end of a direct tiedown is on the trailer, both ends of any other. */
function endsAgainst({ trailer: { anchors }, cargo = [] }: DecodedSpec): {
  readonly attention: readonly Note[];
  readonly decisions: readonly Decision[];
} {
  const fitted = collected(cargo, ({ tiedowns: given = [] }) => given);
  if (anchors === undefined || fitted.length === 0) return { attention: [], decisions: [] };
  const ends = fitted.reduce((sum, { runs }) => sum + (runs === 'direct' ? 1 : 2), 0);
  const told = cargo.flatMap(({ tiedowns: given }, i) => (given === undefined ? [] : [`cargo.${i}.tiedowns`]));
  const enough = decide(constant(ratio(ends), 'tiedown ends'), '<=', constant(ratio(anchors.count), 'anchor points'));
  const says = `${ends} tiedown ends hang on ${anchors.count} anchor points: one that holds two must bear both`;
  return {
    attention: enough.holds ? [] : [{ ...note('FewAnchors', says), paths: ['trailer.anchors.count', ...told] }],
    decisions: [enough],
  };
}

function tiedOf(
  cargo: DecodedCargo,
  index: number,
  anchors: Anchors,
  { weightless }: Weighed,
): Either<Problem, TiedownsPart> {
  const { name, length, tiedowns: given, section } = cargo;
  const path = `cargo.${index}`;
  const unasked = (missing: string, paths: Keys): Either<never, TiedownsPart> => {
    const question = { id: 'tiedowns', what: `tiedowns of ${name}`, missing, paths, piece: index };
    return right({ pieces: [], ...open(question) });
  };
  if (given === undefined) return unasked('tiedowns', [`${path}.tiedowns`]);
  if (length === undefined || section === undefined)
    return unasked('length and the section it is tied by', wantingOf(path, cargo, 'length', 'section'));
  if (weightless[index]?.holds === true) return unasked('a weight above zero', [`${path}.weight`]);
  const fitted: Tiedown[] = [];
  for (const [place, each] of given.entries()) {
    const read = tiedownOf(each, anchors);
    if (isLeft(read)) return left({ ...read.left, path: `${path}.tiedowns.${place}` });
    if (read.right === undefined)
      return unasked(
        `what tiedown ${place + 1} is`,
        wantingOf(`${path}.tiedowns.${place}`, each, 'marked', 'chain', 'webbing'),
      );
    fitted.push(read.right);
  }
  const answer = tiedowns(
    { weight: cargo.weight, length, blockedForward: cargo.blockedForward ?? false, section },
    fitted,
  );
  if (isLeft(answer))
    return left({ ...answer.left, path: answer.left.tag === 'SectionNotForThisWeight' ? `${path}.section` : path });
  return right({
    pieces: [{ name, index, answer: answer.right }],
    ...emptyPart,
    notes: answer.right.notes,
    decisions: answer.right.decisions,
  });
}

/** Checks the tiedowns of every piece; a remark that several share is kept once. */
export function tiedownsPart(spec: DecodedSpec, weighed: Weighed): TiedownsPart {
  const { cargo = [], trailer } = spec;
  const all = cargo.map((piece, index) => {
    const asked = { id: 'tiedowns', what: `tiedowns of ${piece.name}`, path: `cargo.${index}.tiedowns`, piece: index };
    return answered(tiedOf(piece, index, trailer.anchors, weighed), asked, (part) => ({ ...part, pieces: [] }));
  });
  const { checks, notes, attention, notChecked, decisions } = together(all);
  const ends = endsAgainst(spec);
  return {
    checks,
    notChecked,
    attention: [...attention, ...ends.attention],
    decisions: [...decisions, ...ends.decisions],
    notes: notes.filter((each, i) => notes.findIndex(({ says }) => says === each.says) === i),
    pieces: collected(all, ({ pieces }) => pieces),
  };
}
