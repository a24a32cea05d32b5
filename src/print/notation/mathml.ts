/** A working in MathML Core: a block of its own for each step, to be put into a page. */
import { type Derived, workingLines } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { Notation } from './notation.js';
import { plainText } from './plain-text.js';
import { stepIn } from './writer.js';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Any text as itself in XML and HTML. @example xmlText('a < b & c') // a &lt; b &amp; c */
export const xmlText = (text: string): string => plainText(text).replace(/[&<>"']/g, (sign) => entities[sign] ?? sign);

const raised: Readonly<Record<string, string>> = { 2: '²', 3: '³', 4: '⁴' };
const unitText = (unit: string): string => xmlText(unit.replace(/[234]/g, (digit) => raised[digit] ?? digit));
const row = (...parts: readonly string[]): string => `<mrow>${parts.join('')}</mrow>`;
const operator = (sign: string): string => `<mo>${sign}</mo>`;
const text = (words: string): string => `<mtext>${words}</mtext>`;
const between = (parts: readonly string[], sign: string): readonly string[] =>
  collected(parts, (part, i) => (i === 0 ? [part] : [operator(sign), part]));

const mathml: Notation = {
  name: (symbol) => text(xmlText(symbol)),
  figure: (digits, unit) => {
    const number = digits.startsWith('-') ? row(operator('-'), `<mn>${digits.slice(1)}</mn>`) : `<mn>${digits}</mn>`;
    return unit === '' ? number : row(number, text(`&#160;${unitText(unit)}`));
  },
  brackets: (inside) => row(operator('('), inside, operator(')')),
  sum: (terms) => row(...between(terms, '+')),
  difference: (a, b) => row(a, operator('-'), b),
  product: (a, b) => row(a, operator('×'), b),
  quotient: (a, b) => `<mfrac>${a}${b}</mfrac>`,
  bar: true,
  called: (word, of) => row(text(`${word}&#160;`), operator('('), ...between(of, ','), operator(')')),
  root: (a) => `<msqrt>${a}</msqrt>`,
  power: (a, b) => `<msup>${a}${b}</msup>`,
  remarked: (a, words) => row(a, text(`&#160;${xmlText(words)}`)),
};

const line = (left: string, right: string, tail = ''): string =>
  `<mtr><mtd>${left}</mtd><mtd>${operator('=')}</mtd><mtd>${right}${tail}</mtd></mtr>`;

/**
 * How did this figure come about, for a page in a browser?
 *
 * One `math` element a line of the working: name, formula, figures, result, with what it rests on behind the result.
 * Elements of MathML Core only; everything a spec names is escaped.
 *
 * Not a whole page: the caller puts it into one.
 *
 * @param derived one or more figures with their working
 * @returns well-formed markup, the same for the same working
 * @example toMathML(grossWeight).startsWith('<math display="block">') // true
 * @source each step and input carries its own
 */
export function toMathML<U extends Unit>(...derived: readonly Derived<U>[]): string {
  return workingLines(derived.map(({ why }) => why))
    .map(({ node, symbol, from }) => {
      const { name, formula, numbers, result } = stepIn(node, symbol, mathml);
      const source = from === undefined ? '' : text(`&#160; [${xmlText(from)}]`);
      const rights = [formula, numbers].filter((part) => part !== undefined);
      const rows = [
        ...rights.map((right, i) => line(i === 0 ? name : '', right)),
        line(rights.length === 0 ? name : '', result, source),
      ];
      return `<math display="block"><mtable>${rows.join('')}</mtable></math>`;
    })
    .join('\n');
}
