/** What an answer says fails or lifts, by names that programs use; and edits of the facts of a spec. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { type Assessment, assess } from '../../src/assessment/index.js';
import type { Check } from '../../src/ratings/index.js';
import type { JsonSpec } from './random-specs.js';

export const answerTo = (spec: unknown): Assessment | undefined => {
  const answer: Either<unknown, Assessment> = assess(spec as never);
  return isLeft(answer) ? undefined : answer.right;
};

/** Checks of loads by their ids; where several pieces share an id, the worse one. */
export function checksById({ checks }: Assessment): ReadonlyMap<string, Check> {
  const found = new Map<string, Check>();
  for (const check of checks) {
    const other = found.get(check.id);
    if (other === undefined || check.reserve.value.value.lt(other.reserve.value.value)) found.set(check.id, check);
  }
  return found;
}

/** Ids of the checks that are over. */
export const overIn = (answer: Assessment): ReadonlySet<string> =>
  new Set([...answer.checks, ...answer.partChecks].flatMap(({ id, verdict }) => (verdict === 'over' ? [id] : [])));

/** A copy without what stands at a path; a list keeps its places. */
export function without(spec: JsonSpec, path: string): JsonSpec {
  const copy = structuredClone(spec) as Record<string, unknown>;
  const keys = path.split('.');
  const last = keys.pop() as string;
  const place = keys.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], copy);
  delete (place as Record<string, unknown>)[last];
  return copy;
}
