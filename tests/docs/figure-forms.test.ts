/** The guide's table of the forms of figures: each is read as the table says, and each refused text is refused. */
import { readFileSync } from 'node:fs';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { convert, dimensionOf, parseAny, parseMeasure, type Quantity, show, type Unit } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';

const guide = readFileSync(new URL('../../docs/guide/spec.md', import.meta.url), 'utf8');
const section = guide.split('\n## ').find((each) => each.startsWith('Forms of figures')) ?? '';
const rows = [...section.matchAll(/^\| (`.+) \| (.+) \|$/gm)].map(([, texts = '', second = '']) => ({
  texts: [...texts.matchAll(/`([^`]+)`/g)].map(([, text = '']) => text),
  second,
}));
const [read, refused] = [rows.slice(0, 11), rows.slice(11)];

describe('the forms of figures in the guide', () => {
  it('are all found', () => expect([read.length, refused.length]).toEqual([11, 6]));
  it.each(read.flatMap(({ texts, second }) => texts.map((text) => [text, second] as const)))(
    '%s is %s',
    (text, printed) => {
      const said = rightOf(parseAny(printed));
      const found = rightOf(parseMeasure(text, dimensionOf(said.unit))) as Quantity<Unit>;
      expect(show(convert(found, said.unit as never) as Quantity<Unit>)).toBe(printed);
    },
  );
  it.each(refused.flatMap(({ texts }) => texts))('%s is refused', (text) => {
    expect([parseAny(text), parseMeasure(text, 'length'), parseMeasure(text, 'mass')].every(isLeft)).toBe(true);
  });
});
