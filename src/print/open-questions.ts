/** Which open questions would decide most: the whole trailer before its axles, those before the hitch, that before the rest. */
import type { OpenQuestion } from '../assessment/index.js';
import { collected } from '../units/internal.js';
import type { BriefOpen } from './brief-data.js';

/** By their ids, from the question that holds back most of the answer to the one that holds back least. */
const weightiest: readonly RegExp[] = [
  /^(gross|gvwr|cargo)\b/,
  /^tongue-practice/,
  /^(balance|axle-places|sharing|spring-rates)\b/,
  /^axle-\d+\//,
  /^brake-capacity/,
  /^tow(:|$|\/gross|\/g?c?vwr)/,
  /^(tow|coupler)\/|^(chains|jack)\b/,
  /^bars/,
  /^tiedowns/,
  /^placement/,
  /^loading\//,
  /^(side-to-side|off-level)\b/,
];

const rankOf = ({ id }: OpenQuestion): number => {
  const found = weightiest.findIndex((pattern) => pattern.test(id));
  return found === -1 ? weightiest.length : found;
};

/** The first two of the questions that one fact would answer, and how many more there are. */
const inShort = (whats: readonly string[]): string =>
  whats.length <= 2 ? whats.join(', ') : `${whats.slice(0, 2).join(', ')} and ${whats.length - 2} more`;

/** The same questions, the most decisive first; questions that one fact answers are grouped and named once. */
export function openOnesFirst(open: readonly OpenQuestion[]): readonly BriefOpen[] {
  const sorted = open
    .map((question, i) => ({ question, i }))
    .sort((a, b) => rankOf(a.question) - rankOf(b.question) || a.i - b.i);
  const byMissing = new Map<string, OpenQuestion[]>();
  for (const { question } of sorted)
    byMissing.set(question.missing, [...(byMissing.get(question.missing) ?? []), question]);
  return [...byMissing].map(([missing, questions]) => ({
    ids: questions.map(({ id }) => id),
    missing,
    paths: [...new Set(collected(questions, ({ paths }) => paths))],
    what: inShort(questions.map(({ what }) => what)),
  }));
}
