/** Rules grouped by the question they answer, and the questions each of them refers to. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { own } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { federalRules } from '../federal/federal.js';
import type { Rule } from '../rule.js';

/** One question, and the rules that answer it. */
export interface RulesOfQuestion {
  readonly id: string;
  readonly topic: string;
  readonly rows: readonly [Rule, ...Rule[]];
}

const questionOf = (rule: Rule): { readonly id: string; readonly topic: string } => own(rule, 'alternativeOf') ?? rule;

/**
 * Which of these rules are alternatives of one question?
 *
 * A rule that has no alternative is a question by itself, under its own id.
 *
 * @param rules `federalRules`, or any others
 * @returns the questions, in the order of their first rules
 * @example rulesByQuestion(federalRules).length < federalRules.length // true
 * @source how rules are put together is our own
 */
export function rulesByQuestion(rules: readonly Rule[]): readonly RulesOfQuestion[] {
  const groups = new Map<string, RulesOfQuestion>();
  for (const rule of rules) {
    const { id, topic } = questionOf(rule);
    const known = groups.get(id);
    groups.set(id, known === undefined ? { id, topic, rows: [rule] } : { ...known, rows: [...known.rows, rule] });
  }
  return [...groups.values()];
}

const federalGroups = rulesByQuestion(federalRules);

/** Questions by id: those asked, and the federal ones that they may refer to. */
export type Book = ReadonlyMap<string, RulesOfQuestion>;

const federalBook: Book = new Map(federalGroups.map((group) => [group.id, group]));

/** The questions asked, each by its id, and the federal ones. */
export const bookOf = (asked: readonly RulesOfQuestion[]): Book =>
  asked.length === 0 ? federalBook : new Map([...federalGroups, ...asked].map((group) => [group.id, group]));

const leansOn = ({ rows }: RulesOfQuestion): readonly string[] =>
  rows.flatMap((rule) => [own(rule, 'bindsWhere'), own(rule, 'exceptWhere')].filter((id) => id !== undefined));

/** Whether a question refers to this id, directly or through the questions it refers to. */
function reaches(from: RulesOfQuestion, id: string, book: Book, seen: Set<string> = new Set()): boolean {
  if (from.id === id) return true;
  if (seen.has(from.id)) return false;
  seen.add(from.id);
  return leansOn(from).some((next) => {
    const group = book.get(next);
    return group !== undefined && reaches(group, id, book, seen);
  });
}

/** What a question refers to must be known, a duty, and must not refer back to it. */
function soundlyLeaning(group: RulesOfQuestion, book: Book): Either<RulesError, RulesOfQuestion> {
  const fits = (base: RulesOfQuestion | undefined): boolean =>
    base?.rows[0].kind === 'duty' && !reaches(base, group.id, book);
  const wrong = leansOn(group).find((id) => !fits(book.get(id)));
  if (wrong === undefined) return right(group);
  const known = [...book.values()].filter(fits).map(({ id }) => id);
  return left(rulesError({ tag: 'UnknownRule', found: wrong, known }, group.id));
}

/** Every question of a list, or the first with a reference that is not allowed. */
export function soundGroups(groups: readonly RulesOfQuestion[]): Either<RulesError, readonly RulesOfQuestion[]> {
  const book = bookOf(groups);
  for (const group of groups) {
    const sound = soundlyLeaning(group, book);
    if (isLeft(sound)) return sound;
  }
  return right(groups);
}
