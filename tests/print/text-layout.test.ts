/** How places and comparisons are printed. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { comparisonText, report } from '../../src/print/index.js';
import { rightOf } from '../helpers/either.js';
import { compare } from '../helpers/untyped.js';

const read = (name: string): unknown =>
  JSON.parse(readFileSync(fileURLToPath(new URL(`../../examples/${name}`, import.meta.url)), 'utf8'));
const base = read('tilt-deck.json') as { readonly tow: object; readonly rules: object };

describe('print', () => {
  it('rounds both ends of the window inward: 119.52 in and 127.11 in', () => {
    const text = report(rightOf(assessJson(base)));
    expect(text).toMatch(/furthest forward, balance point at .* 14' 11 9\/16"/);
    expect(text).toMatch(/furthest back, balance point at .* 15' 7 1\/16"/);
    expect([...text.matchAll(/machine front at \.+ +(\S+ .*?")/g)].map(([, place]) => place)).toEqual([
      '9\' 11 9/16"',
      '10\' 7 1/16"',
    ]);
  });
  it('keeps a comparison within 80 columns', () => {
    const text = comparisonText(rightOf(compare({ now: base, 'one class up': read('tilt-deck-16.json') })));
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(text).toContain('- now: closest to its limit is tongue against ball mount tongue');
  });
});
