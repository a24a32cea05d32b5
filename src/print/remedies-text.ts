/** What would put a rig right, in words for a page of 80 columns. */
import type { Remedies, Remedy, RemedyStep } from '../choose/index.js';
import type { BriefRemedy } from './brief-data.js';
import { remark } from './text-layout.js';

const stepText = ({ who, says }: RemedyStep): string => `${who}: ${says}`;
const remedyText = ({ steps }: Remedy): string => remark(steps.map(stepText).join('; and '));

function lines({ isWithin, anyhow, single, together }: Remedies, most: number): readonly string[] {
  if (isWithin) return ['Nothing needs putting right.'];
  const ways = [...single, ...together];
  if (ways.length === 0 && anyhow.length === 0) return ['Nothing was found that puts it right.'];
  const choice = ways.length === 1 ? [] : [`  one of:`];
  return [
    'This would put it right (each was tried):',
    ...anyhow.map(({ who, says }) => remark(`anyhow (${who}): ${says}`)),
    ...(ways.length === 0 ? [] : choice),
    ...ways.slice(0, most).map(remedyText),
  ];
}

/** The same as items for a first page: what must be done anyhow, then at most `most` ways. @example remedyItems(orThrow(remedies(spec)))[0].says.startsWith('driver: set legs') // true */
export function remedyItems({ anyhow, single, together }: Remedies, most = 2): readonly BriefRemedy[] {
  const ways = [...single, ...together].slice(0, most).map(({ steps }) => steps.map(stepText).join('; and '));
  return [...anyhow.map(stepText), ...ways.map((says, i) => (i === 0 ? says : `or ${says}`))].map((says) => ({ says }));
}

/** What must be done anyhow, and at most `most` ways to put the rest right. @example remediesText(orThrow(remedies(spec))).startsWith('This would put it right') // true */
export const remediesText = (found: Remedies, most = 3): string => lines(found, most).join('\n');
