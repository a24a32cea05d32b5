/** Tongue bands with printed loads, each with its source; the loads are those of the load chapter's advice. */
import { describe, expect, it } from 'vitest';
import { guideline, tongueAdvice } from '../../src/load/index.js';
import { given } from '../../src/trace/index.js';
import { lb, percent, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const advice = (gross: number, low: number, high: number, title: string, tongue = gross / 10) =>
  tongueAdvice(
    { gross: given('gross', lb(gross)), tongue: given('tongue', lb(tongue)) },
    rightOf(guideline(percent(low), percent(high), { id: 'printed', title, grade: 'C' })),
  );
const band = (...asked: Parameters<typeof advice>): string[] => {
  const { least, most } = advice(...asked);
  expectReplays(least, most);
  return [least, most].map(({ value }) => show(value));
};

describe('tongue bands', () => {
  it('give the printed loads', () => {
    expect(band(12000, 20, 25, 'trailer maker manual (name withheld)')).toEqual(['2,400 lb', '3,000 lb']);
    expect(band(2000, 7, 10, 'trailer maker FAQ (name withheld)')).toEqual(['140 lb', '200 lb']);
    expect(band(7000, 9, 15, 'web example, reproduced by statics')).toEqual(['630 lb', '1,050 lb']);
    expect(band(5000, 10, 15, 'web example, reproduced by statics')).toEqual(['500 lb', '750 lb']);
  });
  it('speak of the loaded trailer: the dry hitch weight is not the tongue load', () => {
    // common mistake: 440 lb on 4,806 lb dry (9.2 %); loaded to 6,000 lb, 12 % is 720 lb
    const loaded = advice(6000, 12, 12, 'common mistake, from the notes', 440);
    expect(show(loaded.least.value)).toBe('720 lb');
    expect(loaded.verdict).toBe('light');
    expect(show(loaded.aboveLeast.value)).toBe('-280 lb');
  });
});
