/** What a part must be rated for: read off the loads it fails at. */
import type { Assessment } from '../../assessment/index.js';
import { leavesOf } from '../../spec/index.js';
import { convert, lb, type Quantity, showNumber, type Unit } from '../../units/index.js';
import type { Changes } from './asking.js';
import { type Demands, demandsIn } from './demands.js';
import type { Part } from './lever.js';

export interface Need {
  readonly changes: Changes;
  readonly says: string;
}

const inputsOf = ({ paths }: Part) => paths.map((path) => ({ path, unit: 'lb' }) as const);

/** The demands of a part as functions of its ratings. */
export const demandsOfPart = (assessment: Assessment, part: Part): Demands => demandsIn(assessment, inputsOf(part));

/** Whether a demand is eased by greater ratings of a part. */
export const isEased = (demands: Demands, demand: number): boolean => demands.slopes(demand).some((slope) => slope > 0);

const wordFor = (path: string): string => {
  const word = path.split('.').at(-1) as string;
  return word === 'rating' ? '' : ` ${word}`;
};

/** The least ratings, in steps, at which every check that this part can ease is met; undefined when it eases none. */
export function needOf(assessment: Assessment, part: Part): Need | undefined {
  const demands = demandsOfPart(assessment, part);
  const leaves = leavesOf(assessment.spec);
  const need = new Map<number, number>();
  const now = part.paths.map((path) => {
    const leaf = leaves.get(path);
    return leaf && (convert(leaf.value as Quantity<'kg'>, 'lb') as Quantity<Unit>).value.toNumber();
  });
  for (const demand of demands.short) {
    const slopes = demands.slopes(demand);
    const i = slopes.findIndex((slope) => slope > 0);
    const rated = now[i];
    if (i < 0 || rated === undefined) continue;
    const short = -demands.at(
      demand,
      now.map((figure) => figure ?? 0),
    );
    need.set(i, Math.max(need.get(i) ?? 0, rated + short / (slopes[i] as number)));
  }
  if (need.size === 0) return undefined;
  const rated = [...need].map(([i, least]) => {
    const path = part.paths[i] as string;
    const to = Math.ceil(least / part.step - 1e-9) * part.step;
    return { path, to, says: `${showNumber(lb(to).value)} lb${wordFor(path)}` };
  });
  return {
    changes: Object.fromEntries(rated.map(({ path, to }) => [path, `${to} lb`])),
    says: `fit ${part.name.replace(/^stronger /, '')} rated for at least ${rated.map(({ says }) => says).join(' and ')}`,
  };
}
