/** Markdown, MathML, LaTeX: the formula means what was computed, and names from a spec are escaped. */
import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/assessment/index.js';
import { latexText, markdownText, toLatex, toMarkdown, toMathML, xmlText } from '../../../src/print/index.js';
import {
  type Derived,
  given,
  leastOf,
  minus,
  over,
  plus,
  result,
  root,
  times,
  workingLines,
} from '../../../src/trace/index.js';
import { lb, ratio } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

type Number = Derived<'ratio'>;
const { tree } = fc.letrec<{ tree: Number; leaf: Number }>((tie) => ({
  leaf: fc.integer({ min: -9, max: 9 }).map((n) => given('x', ratio(n === 0 ? 1 : n))),
  tree: fc.oneof(
    { depthSize: 'small', maxDepth: 5 },
    tie('leaf'),
    fc.tuple(tie('tree'), tie('tree')).map(([a, b]) => plus(a, b)),
    fc.tuple(tie('tree'), tie('tree')).map(([a, b]) => minus(a, b)),
    fc.tuple(tie('tree'), tie('tree')).map(([a, b]) => times(a, b)),
    fc.tuple(tie('tree'), tie('tree')).map(([a, b]) => (b.value.value.isZero() ? a : over(a, b))),
    fc.tuple(tie('tree'), tie('tree')).map(([a, b]) => leastOf([a, b])),
    tie('tree').map((a) => (a.value.value.isNegative() ? a : root(a))),
  ),
}));

/** The line of figures read by JavaScript: brackets and order are its own. */
const readBack = (text: string): number => {
  const script = text
    .replaceAll(',', '')
    .replaceAll('×', '*')
    .replaceAll('√', 'Math.sqrt')
    .replace(/least of \(/g, 'Math.min(');
  return new Function(`return ${script}`)() as number;
};

describe('a formula', () => {
  it('read by another program gives the result: brackets stand where they must', () => {
    let read = 0;
    fc.assert(
      fc.property(tree, (figure) => {
        const text = toMarkdown(result('all', figure));
        const numbers = /\*\*all\*\* {2}\n {3}= [^\n]*\n {3}= ([^\n*]*) {2}\n/.exec(text)?.[1];
        // Lists lose their commas with the thousands, so they are read where no figure has any.
        if (numbers === undefined || numbers.includes('least')) return;
        read += 1;
        expect(readBack(numbers)).toBeCloseTo(figure.value.value.toNumber(), 9);
      }),
      { numRuns: 500, seed: 11 },
    );
    expect(read).toBeGreaterThan(100);
  });
  it('is written with a bar, and without brackets that the bar makes idle, in LaTeX and MathML', () => {
    const share = result('share', over(plus(given('a', lb(1)), given('b', lb(2))), given('c', lb(-4))));
    expect(toLatex(share)).toContain('\\frac{\\text{a} + \\text{b}}{\\text{c}}');
    expect(toLatex(share)).toContain('\\frac{1\\,\\mathrm{lb} + 2\\,\\mathrm{lb}}{-4\\,\\mathrm{lb}}');
    expect(toMathML(share)).toContain(
      '<mfrac><mrow><mtext>a</mtext><mo>+</mo><mtext>b</mtext></mrow><mtext>c</mtext></mfrac>',
    );
    expect(toMarkdown(share)).toContain('= (1 lb + 2 lb) / (-4 lb)');
  });
});

describe('text from outside', () => {
  const texts = fc.sample(fc.oneof(fc.string({ unit: 'binary', maxLength: 30 }), fc.string({ maxLength: 30 })), {
    numRuns: 400,
    seed: 5,
  });
  const awkward = [
    '</mtext><script>',
    '\\end{align*}',
    '$\\input{x}$',
    '| a |\n# b',
    '`x` [y](z) <b>',
    '\ud800',
    '&amp;',
  ];
  const all = [...texts, ...awkward];
  it('stays text in XML: an independent parser gives it back, page signs aside', () => {
    const documents = all.map((text) => `<t>${xmlText(text)}</t>`);
    const python = [
      'import json, sys, xml.etree.ElementTree as tree',
      'print(json.dumps([tree.fromstring(each).text or "" for each in json.load(sys.stdin)]))',
    ].join('\n');
    const back = JSON.parse(
      execFileSync('python3', ['-c', python], { input: JSON.stringify(documents), encoding: 'utf8' }),
    ) as string[];
    const plain = (text: string): string =>
      text.replace(/\p{Surrogate}/gu, '\ufffd').replace(/[\p{Cc}\u2028\u2029\ufffe\uffff]+/gu, ' ');
    expect(back).toEqual(all.map(plain));
  });
  it('leaves no sign of Markdown bare, and loses none', () => {
    for (const text of all) {
      const written = markdownText(text);
      expect(written.replace(/\\[!-/:-@[-`{-~]/g, '')).not.toMatch(/[\\`*_{}[\]<>#|~&\n]/);
      expect(written.replace(/\\([!-/:-@[-`{-~])/g, '$1')).toBe(markdownText(text).replaceAll(/\\(.)/gu, '$1'));
    }
  });
  it('leaves no sign of LaTeX bare, and its braces balanced', () => {
    for (const text of all) {
      const rest = latexText(text)
        .replace(/\\text(backslash|asciicircum|asciitilde|less|greater|bar|quotedbl|asciigrave)\{\}/g, '')
        .replaceAll('{\\textquotesingle}', '')
        .replaceAll('{-}', '')
        .replace(/\\[{}$&#%_]/g, '');
      expect(rest).not.toMatch(/[\\{}$&#%_^~\n]/);
    }
  });
  it('cannot break a working: every MathML element of the example is read by an independent parser', () => {
    const name = '</mtext><script> $\\input{x}$ | a | `x` [y](z) <b> &amp;';
    const { checks } = rightOf(assess(changed(tiltDeck(), 'cargo.0.name', name)));
    const markup = `<page>${toMathML(...checks.map(({ reserve }) => reserve))}</page>`;
    const python = 'import sys, xml.etree.ElementTree as t; print(len(t.fromstring(sys.stdin.read())))';
    expect(markup).toContain(xmlText(`${name} weight`));
    const count = Number(execFileSync('python3', ['-c', python], { input: markup, encoding: 'utf8' }));
    expect(count).toBe(workingLines(checks.map(({ reserve }) => reserve.why)).length);
  });
  it('gives the same text twice', () => {
    const [check] = rightOf(assess(tiltDeck())).checks;
    for (const write of [toMarkdown, toMathML, toLatex])
      expect(check && write(check.reserve)).toBe(check && write(check.reserve));
  });
});
