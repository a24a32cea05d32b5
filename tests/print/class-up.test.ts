/** One class up in print: the table, the lines that change their answer, and that there are none. */
import { describe, expect, it } from 'vitest';
import { oneClassUp } from '../../src/choose/index.js';
import { classUpText } from '../../src/print/index.js';
import { rightOf } from '../helpers/either.js';
import { heavier, tiltDeck } from '../helpers/specs.js';

const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('one class up', () => {
  it('tells every published line whose answer changes, as it was and as it is', () => {
    const found = rightOf(oneClassUp(tiltDeck(), heavier()));
    const text = classUpText(found);
    expect(text.startsWith('ONE CLASS UP\n')).toBe(true);
    expect(found.crossed.length).toBeGreaterThan(0);
    expect(text).toContain('  Published lines whose answer changes:');
    expect(text.match(/was: /g)).toHaveLength(found.crossed.length);
    for (const { says } of found.notes) expect(flat(text)).toContain(flat(says));
    expect(text.split('\n').every((line) => [...line].length <= 80)).toBe(true);
  });
  it('says that no line changes where the trailers are alike', () => {
    const text = classUpText(rightOf(oneClassUp(tiltDeck(), tiltDeck())));
    expect(text).toContain('  No published line changes its answer.');
    expect(text).not.toContain('was: ');
  });
});
