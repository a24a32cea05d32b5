/** Cache of parsed designations and table lookups: a study asks the same few tires a million times. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { frozen } from '../../units/internal.js';
import type { UnreadableDesignation } from '../designation-errors.js';
import type { Designation } from './designation.js';
import { readTireDesignation } from './read-designation.js';

/** Cache size; the cache is cleared when full. */
const most = 200;
const read = new Map<string, Either<UnreadableDesignation, Designation>>();

/** The designations in that map. They are frozen: an answer kept for one cannot become wrong. */
const ours = new WeakSet<Designation>();

function known(d: Designation): Designation {
  ours.add(d);
  return frozen(d);
}

/** A designation as it is given: read, when it is a text. */
export function designationOf(given: string | Designation): Either<UnreadableDesignation, Designation> {
  if (typeof given !== 'string') return right(given);
  const before = read.get(given);
  if (before !== undefined) return before;
  const found = readTireDesignation(given);
  if (isLeft(found)) return found;
  if (read.size >= most) read.clear();
  const kept = Object.freeze(right(known(found.right)));
  read.set(given, kept);
  return kept;
}

/** The same function, asked once for each designation that is kept. */
export function keptFor<A>(answer: (d: Designation) => A): (d: Designation) => A {
  const answers = new WeakMap<Designation, { readonly answer: A }>();
  return (d) => {
    if (!ours.has(d)) return answer(d);
    const before = answers.get(d);
    if (before !== undefined) return before.answer;
    const kept = { answer: frozen(answer(d)) };
    answers.set(d, kept);
    return kept.answer;
  };
}
