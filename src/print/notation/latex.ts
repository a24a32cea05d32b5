/** A working in LaTeX: one aligned block, for a document that loads amsmath. */
import { type Derived, workingLines } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { Notation } from './notation.js';
import { plainText } from './plain-text.js';
import { stepIn } from './writer.js';

const signs: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '{': '\\{',
  '}': '\\}',
  $: '\\$',
  '&': '\\&',
  '#': '\\#',
  '%': '\\%',
  _: '\\_',
  '^': '\\textasciicircum{}',
  '~': '\\textasciitilde{}',
  '<': '\\textless{}',
  '>': '\\textgreater{}',
  '|': '\\textbar{}',
  '"': '\\textquotedbl{}',
  '`': '\\textasciigrave{}',
  "'": '{\\textquotesingle}',
  '-': '{-}',
};

/** Any text as itself in the text mode of LaTeX. @example latexText('50 % of {this}') // 50 \% of \{this\} */
export const latexText = (text: string): string =>
  plainText(text).replace(/[\\{}$&#%_^~<>|"`'-]/g, (sign) => signs[sign] ?? sign);

const inText = (words: string): string => `\\text{${latexText(words)}}`;
const unitIn = (unit: string): string =>
  `\\mathrm{${unit
    .replace('%', '\\%')
    .replaceAll('\u00b7', '{\\cdot}')
    .replace(/[234]/g, (digit) => `^{${digit}}`)}}`;

const latex: Notation = {
  name: inText,
  figure: (digits, unit) => {
    const number = digits.replaceAll(',', '{,}');
    return unit === '' ? number : `${number}\\,${unitIn(unit)}`;
  },
  brackets: (inside) => `\\left(${inside}\\right)`,
  sum: (terms) => terms.join(' + '),
  difference: (a, b) => `${a} - ${b}`,
  product: (a, b) => `${a} \\times ${b}`,
  quotient: (a, b) => `\\frac{${a}}{${b}}`,
  bar: true,
  called: (word, of) => `\\operatorname{${word.replaceAll(' ', '\\ ')}}\\left(${of.join(',\\ ')}\\right)`,
  root: (a) => `\\sqrt{${a}}`,
  power: (a, b) => `{${a}}^{${b}}`,
  remarked: (a, words) => `${a}\\ ${inText(words)}`,
};

/**
 * How did this figure come about, for a paper set in LaTeX?
 *
 * One `align*` block: each line of the working with its formula, its figures and its result. Names and sources are escaped.
 *
 * Not a whole document: the caller's loads the packages `amsmath` and `textcomp`.
 *
 * @param derived one or more figures with their working
 * @returns LaTeX, the same text for the same working
 * @example toLatex(grossWeight).startsWith('\\begin{align*}') // true
 * @source each step and input carries its own
 */
export function toLatex<U extends Unit>(...derived: readonly Derived<U>[]): string {
  const lines = collected(workingLines(derived.map(({ why }) => why)), ({ node, symbol, from }) => {
    const { name, formula, numbers, result } = stepIn(node, symbol, latex);
    const source = from === undefined ? '' : ` && ${inText(`[${from}]`)}`;
    const rights = [formula, numbers].filter((part) => part !== undefined);
    return [...rights, `${result}${source}`].map((right, i) => `${i === 0 ? name : ''} &= ${right}`);
  });
  return ['\\begin{align*}', lines.join(' \\\\\n'), '\\end{align*}', ''].join('\n');
}
