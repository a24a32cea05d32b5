/** One class up, as text: the table and the published lines that change their answer. */
import type { ClassUp } from '../choose/index.js';
import { type Finding, findingText } from '../rules/index.js';
import { wrapText } from '../units/internal.js';
import { comparisonText } from './comparison.js';
import { remark, width } from './text-layout.js';

/** What it said before; of alternatives with the one that did. */
const said = ({ outcome, topic, rows }: Finding): string => (rows.length === 1 ? outcome : `${topic}: ${outcome}`);

/** The table in 80 columns, and the lines whose answer changes. @example classUpText(orThrow(oneClassUp(spec, spec))).startsWith('ONE CLASS UP') // true */
export function classUpText({ comparison, crossed, notes }: ClassUp): string {
  return [
    'ONE CLASS UP',
    comparisonText(comparison)
      .split('\n')
      .map((line) => wrapText(line, width, '    '))
      .join('\n'),
    '',
    crossed.length === 0 ? '  No published line changes its answer.' : '  Published lines whose answer changes:',
    ...crossed.map(({ now, next }) => remark(`was: ${said(now)}; is: ${findingText(next)}`)),
    ...notes.map(({ says }) => remark(says)),
  ].join('\n');
}
