/** The weight of a frame from its cut list, line by line, each with its place. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  aboveZero,
  allHold,
  asDerived,
  type Decision,
  type Derived,
  inInches,
  inPounds,
  inUnit,
  over,
  plus,
  result,
  times,
  whole,
} from '../../trace/index.js';
import { has } from '../../units/internal.js';
import type { MembersError } from '../errors.js';
import type { CutLine, CutList, SpacedLine } from './cut-list.js';
import { countOf, placeOf } from './spacing.js';

/** One line of a weight list: an item for `curbWeight` and `balance`. */
export interface WeightLine {
  readonly name: string;
  readonly weight: Derived<'lb'>;
  /** Of its centre of gravity, in inches behind the coupler. */
  readonly at: Derived<'in'>;
  /** How many pieces, where the line is a number of pieces. */
  readonly count?: Derived<'ratio'>;
}

export interface WeightList {
  readonly lines: readonly WeightLine[];
  readonly total: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

interface Weighed {
  readonly line: WeightLine;
  readonly decisions: readonly Decision[];
}

/** `w x length x count`; length in feet. */
function weightOf(
  name: string,
  perFoot: Derived<'lb/ft'>,
  length: Derived<'in'>,
  count: Derived<'ratio'>,
): Derived<'lb'> {
  return result(`${name} weight`, times(perFoot, inUnit(length, 'ft'), count));
}

function weighSpaced(line: SpacedLine, length: Derived<'in'>): Either<MembersError, Weighed> {
  const { name, member, rule } = line;
  const [spacing, over, from] = [
    inInches(`${name} spacing`, line.spacing),
    inInches(`${name} run`, line.over),
    inInches(`${name} start`, line.from),
  ];
  const tested = allHold([
    aboveZero(`${name} length`, length),
    aboveZero(`${name} spacing`, spacing),
    aboveZero(`${name} run`, over),
  ]);
  if (isLeft(tested)) return tested;
  const count = countOf(name, spacing, over, rule);
  const some = allHold([aboveZero(`number of ${name}`, count)]);
  if (isLeft(some)) return some;
  const at = placeOf(name, from, spacing, over, count, rule);
  return right({
    line: { name, weight: weightOf(name, member.weightPerFoot, length, count), at, count },
    decisions: [...tested.right, ...some.right],
  });
}

function weigh(line: CutLine): Either<MembersError, Weighed> {
  const { name } = line;
  if (has(line, 'weight')) {
    const weight = inPounds(`${name} weight`, line.weight);
    const tested = allHold([aboveZero(`${name} weight`, weight)]);
    return isLeft(tested)
      ? tested
      : right({ line: { name, weight, at: inInches(`${name} position`, line.at) }, decisions: tested.right });
  }
  const length = inInches(`${name} length`, line.length);
  if (has(line, 'spacing')) return weighSpaced(line, length);
  const count = asDerived(`number of ${name}`, line.count);
  const tested = allHold<MembersError>([
    aboveZero(`${name} length`, length),
    aboveZero(`number of ${name}`, count),
    whole(`number of ${name}`, count),
  ]);
  if (isLeft(tested)) return tested;
  const at = has(line, 'at')
    ? inInches(`${name} position`, line.at)
    : result(`${name} position`, plus(inInches(`${name} front end`, line.from), over(length, 2)));
  return right({
    line: { name, weight: weightOf(name, line.member.weightPerFoot, length, count), at, count },
    decisions: tested.right,
  });
}

/** Weighs each of a list and adds them up; or the error of the first that cannot be weighed, with its path. */
export function weighAll<L>(
  of: string,
  list: readonly L[],
  one: (line: L) => Either<MembersError, Weighed>,
): Either<MembersError, WeightList> {
  if (list.length === 0) return left({ chapter: 'members', tag: 'NothingListed', what: `${of} parts` });
  const lines: WeightLine[] = [];
  const decisions: Decision[] = [];
  for (const [i, each] of list.entries()) {
    const weighed = one(each);
    if (isLeft(weighed))
      return left(weighed.left.path === undefined ? { ...weighed.left, path: `${i}` } : weighed.left);
    lines.push(weighed.right.line);
    decisions.push(...weighed.right.decisions);
  }
  return right({
    lines,
    total: result(`${of} weight`, plus(...lines.map(({ weight }) => weight))),
    decisions,
  });
}

/**
 * What does this frame weigh, and where does each part of it act?
 *
 * Each line `weight per foot x length x count`; a lengthwise piece acts at its front end plus half its length, pieces at a
 * spacing at the mean of their places. The total is their sum.
 *
 * Weld metal, paint, galvanizing, mill tolerance and fasteners are only in it when they are listed. Cut lengths, not stock
 * lengths. Weigh the trailer when there is one to weigh.
 *
 * @param cutList lines from the drawing: lengths in any unit, places behind the coupler; spacing lines name their count rule
 * @returns lines and total in lb, places in inches; Left `OutsideItsRange`, `NotAWholeCount`, `NothingListed`, with the place in the list
 * @example frameWeight([{ name: 'rails', member: c6, length: foot(20), count: ratio(2), from: inch(48) }]) // Right 328 lb, at 168 in
 * @source the tables of its members; count rules: common practice, no source
 */
export const frameWeight = (cutList: CutList): Either<MembersError, WeightList> => weighAll('frame', cutList, weigh);
