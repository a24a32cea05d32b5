/** The verdict of a row as a small number, and its attention tags as bits. */
import type { Assessment, AssessmentVerdict } from '../../assessment/index.js';
import type { Names } from './name-index.js';

/** The verdicts by their number in a column: 0 over, 1 attention, 2 within, 3 unchecked. */
export const verdictNames = [
  'over',
  'attention',
  'within',
  'unchecked',
] as const satisfies readonly AssessmentVerdict[];

/** The number of a verdict. @example verdictCode('within') // 2 */
export const verdictCode = (verdict: AssessmentVerdict): number => verdictNames.indexOf(verdict);

/** The tags of what asks attention, each once, in the order of the answer. */
export const attentionTags = ({ attention }: Assessment): readonly string[] => [
  ...new Set(attention.map(({ tag }) => tag)),
];

/** The name of the last bit, which all tags beyond the 31st share. */
const others = 'others';
const lastBit = 31;

/** Tags as bits: the place of a tag in the list of names is its bit. */
export function bitsOf(tags: readonly string[], names: Names): number {
  let bits = 0;
  for (const tag of tags) {
    const full = names.names.length >= lastBit && !names.names.includes(tag);
    bits |= 1 << names.indexOf(full ? others : tag);
  }
  return bits >>> 0;
}

/** The tags of a row. @example tagsOf(3, ['Tiedowns', 'HangsUp']) // Tiedowns, HangsUp */
export const tagsOf = (bits: number, names: readonly string[]): readonly string[] =>
  bits === 0 ? [] : names.filter((_, bit) => ((bits >>> bit) & 1) === 1);
