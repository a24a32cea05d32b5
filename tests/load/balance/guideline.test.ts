/** The tongue share against a band with a source. */
import { describe, expect, it } from 'vitest';
import { guideline, guidelineFor, tongueAdvice } from '../../../src/load/index.js';
import { commonPractice, given } from '../../../src/trace/index.js';
import { lb, percent, ratio, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

describe('a guideline', () => {
  it('is that of the place, where one is named; a gooseneck has one everywhere', () => {
    const bandOf = (...asked: Parameters<typeof guidelineFor>): readonly string[] => {
      const { low, high } = guidelineFor(...asked);
      return [show(low.value), show(high.value)];
    };
    expect(bandOf('ball', 'Europe')).toEqual(['0.04', '0.07']);
    expect(bandOf('ball', 'Australia')).toEqual(['0.06', '0.1']);
    expect(bandOf('ball', 'US and Canada')).toEqual(bandOf('ball'));
    expect(bandOf('gooseneck', 'Europe')).toEqual(bandOf('gooseneck'));
    expect(guidelineFor('ball', 'Europe').source.clause).toContain('never below 25 kg');
  });
  it('comes with the text it is from', () => {
    const bands = (['ball', 'gooseneck'] as const).map((hitch) => guidelineFor(hitch));
    expectReplays(...workingsIn(bands));
    expect(
      bands.map(({ low, high, source }) => [
        show(low.value),
        show(high.value),
        source.title,
        source.clause,
        source.grade,
      ]),
    ).toEqual([
      ['0.1', '0.15', 'tow-vehicle owner manuals (four makes), guidance', 'ball hitch', 'B'],
      ['0.15', '0.25', 'tow-vehicle owner manual, guidance', 'fifth wheel and gooseneck pin', 'B'],
    ]);
  });
  it("may be one of one's own, in percent or as a plain number", () => {
    for (const [low, high] of [
      [percent(12), percent(14)],
      [ratio('0.12'), ratio('0.14')],
    ] as const) {
      const own = rightOf(guideline(low, high, commonPractice));
      expectReplays(...workingsIn(own));
      expect([show(own.low.value), show(own.high.value), own.source]).toEqual(['0.12', '0.14', commonPractice]);
    }
  });
  it('may be a single share', () => {
    expect(rightOf(guideline(percent(10), percent(10), commonPractice)).decisions.every(({ holds }) => holds)).toBe(
      true,
    );
  });
  it.each([
    [0, 15],
    [-1, 15],
    [15, 10],
    [10, 100],
    [10, 120],
  ])('refuses %d to %d percent', (low, high) => {
    expect(leftOf(guideline(percent(low), percent(high), commonPractice))).toMatchObject({
      chapter: 'trace',
      tag: 'OutsideItsRange',
    });
  });
});

describe('the advice on a tongue load', () => {
  const advise = (tongue: string) => {
    const advice = tongueAdvice(
      { gross: given('gross', lb(10000)), tongue: given('tongue', lb(tongue)) },
      guidelineFor('ball'),
    );
    expectReplays(...workingsIn(advice));
    return [advice.verdict, show(advice.aboveLeast.value), show(advice.belowMost.value)];
  };
  it.each([
    ['999.999', 'light', '-0.001 lb', '500.001 lb'],
    ['1000', 'inside', '0 lb', '500 lb'],
    ['1250', 'inside', '250 lb', '250 lb'],
    ['1500', 'inside', '500 lb', '0 lb'],
    ['1500.001', 'heavy', '500.001 lb', '-0.001 lb'],
    ['-200', 'light', '-1,200 lb', '1,700 lb'],
  ])('%s lb on 10,000 lb is %s', (tongue, ...expected) => expect(advise(tongue)).toEqual(expected));
});
