/** Every `@example` line of the source runs, and gives the result after its `//`. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { right } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { chapters } from '../../scripts/chapters.js';
import { given } from '../../src/trace/index.js';
import { lb } from '../../src/units/index.js';
import { type Example, exampleOf, modules, run } from './run-example.js';
import { saysSo, told } from './told.js';

const src = join(import.meta.dirname, '../../src');
interface Placed extends Example {
  readonly file: string;
  readonly chapter: string;
}

function examplesOf(file: string): readonly Placed[] {
  const text = readFileSync(join(src, file), 'utf8');
  return [...text.matchAll(/@example (.*?)(?: @\w+ .*)?(?: \*\/)?$/gm)].map(([, line]) => ({
    ...exampleOf(line as string),
    file,
    chapter: file.split('/')[0]?.replace('.ts', '') as string,
  }));
}

const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.replaceAll('\\', '/'))
  .sort();

const examples = files.flatMap(examplesOf);

describe('examples in the doc comments', () => {
  it('are there', () => expect(examples.length).toBeGreaterThan(30));
  it.each(examples)('$file: $program', (example) => {
    const value = run(example.program, example.chapter);
    if (example.result === undefined) expect(value).toBeDefined();
    else
      expect(saysSo(example.result, value), `it gives ${told(value)}, the comment says ${example.result}`).toBe(true);
  });
});

it('notices a comment that says something else', () => {
  const answer = right({ load: given('load', lb('2535.3')), tag: 'Kept', fits: 'single' });
  for (const holds of [
    'Right: 2,535 lb',
    "Right 2,535.3 lb, 'single'",
    'Right: about 2,540 lb',
    'Right 2,535 lb; a remark of 99',
  ])
    expect(saysSo(holds, answer), holds).toBe(true);
  for (const fails of [
    'Right: 2,536 lb',
    'Right 2,535 kg',
    "Right 2,535 lb, 'dual'",
    'Left Kept',
    'Right: about 2,600 lb',
    'Right',
    'Left in prose',
    'Right TooMuch',
  ])
    expect(saysSo(fails, answer), fails).toBe(false);
  expect([
    saysSo('7,550 lb', lb(7550)),
    saysSo('7,550', lb(7550)),
    saysSo('7,550 lb', '7,550'),
    saysSo('over', 'over'),
    saysSo('true', false),
  ]).toEqual([true, true, false, true, false]);
});

describe('every function that a chapter exports', () => {
  it.each(chapters)('has an example: $name', ({ name }) => {
    const texts = files
      .filter((file) => file.startsWith(`${name}/`) || file === `${name}.ts`)
      .map((file) => readFileSync(join(src, file), 'utf8'));
    const functions = Object.entries(modules[name] as object)
      .filter(([, value]) => typeof value === 'function')
      .map(([key]) => key)
      .filter((key) => !/^wordsFor[A-Z]/.test(key)); // each chapter's part of `wordsFor`
    const without = functions.filter(
      (key) =>
        !texts.some((text) =>
          new RegExp(`@example(?:(?!\\*/)[\\s\\S])*\\*/\\s*export (?:function\\*?|const|class) ${key}\\b`).test(text),
        ),
    );
    expect(without).toEqual([]);
  });
});
