/** Assessing changed specs, each once, and no more of them than the question may cost. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Assessment, assessJson } from '../../assessment/index.js';
import { changed } from '../../study/index.js';
import { isWithin } from '../verdict.js';

export type Changes = Readonly<Record<string, unknown>>;

/** Assesses the spec with some changes; undefined when it is refused, or when no more may be asked. */
export interface Asking {
  readonly ask: (changes: Changes) => Assessment | undefined;
  readonly made: () => number;
  readonly spent: () => boolean;
}

/** At most `most` assessments of a spec. */
export function asking(base: unknown, most: number): Asking {
  const known = new Map<string, Assessment | undefined>();
  return {
    ask: (changes) => {
      const key = JSON.stringify(Object.entries(changes).sort(([a], [b]) => (a < b ? -1 : 1)));
      if (known.has(key)) return known.get(key);
      if (known.size >= most) return undefined;
      const assessed = assessJson(changed(base, changes));
      const answer = isLeft(assessed) ? undefined : assessed.right;
      known.set(key, answer);
      return answer;
    },
    made: () => known.size,
    spent: () => known.size >= most,
  };
}

export const putsRight = (assessment: Assessment | undefined): assessment is Assessment =>
  assessment !== undefined && isWithin(assessment);
