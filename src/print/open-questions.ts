/** Which open questions would decide most: the whole trailer before its axles, those before the hitch, that before the rest. */
import type { NotChecked } from '../assessment/index.js';

/** From the question that holds back most of the answer to the one that holds back least. */
const weightiest: readonly RegExp[] = [
  /^gross weight|^the laden trailer/,
  /GVWR/,
  /^tongue band/,
  /^axle loads/,
  /^coupler, chains and tow vehicle/,
  /^axle \d+ (parts|tires)/,
  /brakes/,
  /^tow vehicle/,
  /tongue against|against tongue|receiver|ball|coupler|chains/,
  /^tiedowns/,
  /^where .* may stand/,
  /^lifting|^what the truck holds/,
  /side to side|off level/,
];

const rankOf = ({ what }: NotChecked): number => {
  const found = weightiest.findIndex((pattern) => pattern.test(what));
  return found === -1 ? weightiest.length : found;
};

/** The first two of the questions that one fact would answer, and how many more there are. */
const inShort = (whats: readonly string[]): string =>
  whats.length <= 2 ? whats.join(', ') : `${whats.slice(0, 2).join(', ')} and ${whats.length - 2} more`;

/** The same questions, those that would decide most first; what one fact would answer stands together, once. */
export function openOnesFirst(open: readonly NotChecked[]): readonly NotChecked[] {
  const sorted = open
    .map((question, i) => ({ question, i }))
    .sort((a, b) => rankOf(a.question) - rankOf(b.question) || a.i - b.i);
  const byMissing = new Map<string, string[]>();
  for (const { question } of sorted) {
    const whats = byMissing.get(question.missing) ?? [];
    byMissing.set(question.missing, [...whats, question.what]);
  }
  return [...byMissing].map(([missing, whats]) => ({ missing, what: inShort(whats) }));
}
