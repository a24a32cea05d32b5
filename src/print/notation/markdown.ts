/** A working in Markdown: inputs as a table, steps as a list. */
import { type Derived, type WorkingLine, workingLines } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import type { Notation } from './notation.js';
import { plainText } from './plain-text.js';
import { stepIn } from './writer.js';

/** Every sign of ASCII that Markdown may read as more than itself; each may be written behind a backslash. */
const special = /[\\`*_{}[\]<>()#+\-.!|~&$@:=^"']/g;

/** Any text as itself in Markdown. @example markdownText('4 * 1,250 lb | a_b') // 4 \* 1,250 lb \| a\_b */
export const markdownText = (text: string): string => plainText(text).replace(special, '\\$&');

const figure = (digits: string, unit: string): string => `${digits} ${unit}`.trimEnd().replace(/[*|^]/g, '\\$&');

const markdown: Notation = {
  name: markdownText,
  figure,
  brackets: (inside) => `(${inside})`,
  sum: (terms) => terms.join(' + '),
  difference: (a, b) => `${a} - ${b}`,
  product: (a, b) => `${a} × ${b}`,
  quotient: (a, b) => `${a} / ${b}`,
  bar: false,
  called: (word, of) => `${word} (${of.join(', ')})`,
  root: (a) => `√(${a})`,
  power: (a, b) => `${a} \\^ ${b}`,
  remarked: (a, words) => `${a} ${words}`,
};

function inputRow({ node, symbol, from = '' }: WorkingLine): string {
  const { name, result } = stepIn(node, symbol, markdown);
  return `| ${name} | ${result} | ${markdownText(from)} |`;
}

function stepItem({ node, symbol, from }: WorkingLine): string {
  const { name, formula, numbers, result } = stepIn(node, symbol, markdown);
  const source = from === undefined ? '' : ` \\[${markdownText(from)}\\]`;
  const rights = [formula, numbers].filter((part) => part !== undefined);
  // Two spaces at the end of a line keep the next one from running on.
  return [`1. **${name}**`, ...rights.map((right) => `= ${right}`), `= **${result}**${source}`].join('  \n   ');
}

/**
 * How did this figure come about, for a page written in Markdown?
 *
 * Inputs once, as a table with what each rests on; then the steps, each as formula, figures and result. Names are escaped
 * completely, so that any name in a spec is shown as plain text.
 *
 * Not for reading figures back: they are cut to two decimals for reading.
 *
 * @param derived one or more figures with their working
 * @returns Markdown (CommonMark, and the tables of its common extension), the same text for the same working
 * @example toMarkdown(grossWeight).split('\n')[0] // | figure | value | from |
 * @source each step and input carries its own
 */
export function toMarkdown<U extends Unit>(...derived: readonly Derived<U>[]): string {
  const lines = workingLines(derived.map(({ why }) => why));
  const inputs = lines.filter(({ operation }) => operation === undefined);
  const steps = lines.filter(({ operation }) => operation !== undefined);
  return [
    ...(inputs.length === 0 ? [] : ['| figure | value | from |', '|---|---:|---|', ...inputs.map(inputRow), '']),
    ...steps.map(stepItem),
    '',
  ].join('\n');
}
