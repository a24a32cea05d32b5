/** Does a plain answer follow from itself? Worked out again from its leaves in exact fractions, without `assess`. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { crc32, textOf } from './answer/checksum.js';
import type { DoesNotFollow } from './answer/does-not-follow.js';
import { follow } from './answer/follow.js';
import { readAnswer } from './answer/read-answer.js';
import type { Answer } from './answer/shape.js';
import { specLeaves } from './answer/spec-leaves.js';
import { summaryFault } from './answer/summary.js';
import { libraryVersion, tablesVersion } from './answer/version.js';
import type { NotAnAnswer, OtherAnswerVersion } from './errors.js';

/** Everything that can be worked out again follows. */
export interface Verified {
  /** The answer follows. */
  readonly follows: true;
  /** How many nodes were worked out again. */
  readonly nodes: number;
  /** How many checks were judged again. */
  readonly checks: number;
  /** How many figures were found in the spec of the answer, with what they rest on. */
  readonly fromSpec: number;
  /** How many looked-up figures were found in the shipped tables. */
  readonly fromTables: number;
  /** Leaves that could not be compared with a spec or a table, by name. */
  readonly taken: readonly string[];
  /** What this cannot know, in sentences. */
  readonly cannotKnow: readonly string[];
}

/** Something does not follow. */
export interface Refuted extends DoesNotFollow {
  /** The answer does not follow. */
  readonly follows: false;
}

const always = [
  'Nothing is signed: a spec that was rewritten together with all that follows from it is another answer, and verifies.',
  'Whether the figures of the spec are those of the trailer, its label and its scale ticket is not asked.',
  "Which questions were asked, and which limits a payload was the least of, is the program's word: run `assess` on the spec.",
];

function cannotKnow({ library, tables, spec }: Answer, taken: number): readonly string[] {
  return [
    ...always,
    ...(spec === undefined ? ['The answer holds no spec: its given figures are taken as told.'] : []),
    ...(library === libraryVersion ? [] : [`It was written by version ${library}; this is version ${libraryVersion}.`]),
    ...(tables === tablesVersion ? [] : ['It was written with other tables: looked-up figures were not compared.']),
    ...(taken === 0 ? [] : [`${taken} leaves were compared with nothing: they are in no spec and no shipped table.`]),
  ];
}

const refuted = (fault: DoesNotFollow): Either<never, Refuted> => right({ follows: false, ...fault });

/**
 * Does this answer follow from what it says itself?
 *
 * Every node of the working is worked out again from the leaves in exact fractions of big integers (roots, powers and angles to fifty
 * digits) and must agree to 24 digits; leaves must be in the spec of the answer, looked-up figures in the shipped tables where
 * they can be found; every figure, verdict, reserve and share of the summary must follow from the nodes. `assess` is not run.
 *
 * Not a signature. What it cannot know is said in `cannotKnow`.
 *
 * @param json a parsed JSON value, as `answerOf` made it or as it came over a wire
 * @returns `follows` true with counts, or false with the first place that does not follow; Left `NotAnAnswer` for another value or an
 * answer without its working, `OtherAnswerVersion` for another version of the format
 * @example orThrow(verifyAnswer(answerOf(assessment))).follows // true
 * @source common practice, no source: the form is this library's own
 */
export function verifyAnswer(json: unknown): Either<NotAnAnswer | OtherAnswerVersion, Verified | Refuted> {
  const read = readAnswer(json);
  if (isLeft(read)) return read;
  const answer = read.right;
  const { checks, partChecks, working, checksum, ...others } = answer;
  if (working === undefined)
    return {
      _tag: 'Left',
      left: { chapter: 'assessment', tag: 'NotAnAnswer', path: 'working', found: 'nothing', needed: 'written out' },
    };
  const leaves = answer.spec === undefined ? right(undefined) : specLeaves(answer.spec);
  if (isLeft(leaves)) return refuted(leaves.left);
  const followed = follow(working.nodes, { leaves: leaves.right, sameTables: answer.tables === tablesVersion });
  if (isLeft(followed)) return refuted(followed.left);
  const fault = summaryFault(answer, working.nodes, followed.right);
  if (fault !== undefined) return refuted(fault);
  const sum = crc32(textOf({ ...others, checks, partChecks, working }));
  if (sum !== checksum)
    return refuted({ at: 'checksum', what: 'the checksum over the whole answer', found: checksum, needed: sum });
  const { taken, fromSpec, fromTables } = followed.right;
  return right({
    follows: true,
    nodes: working.nodes.length,
    checks: checks.length + partChecks.length,
    fromSpec,
    fromTables,
    taken,
    cannotKnow: cannotKnow(answer, taken.length),
  });
}
