/** What some figures are drawn from: nothing where an assessment does not know it. */
import { expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { lengthsFrom, sharesFrom } from '../../src/figures/index.js';
import { plain, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const without = (path: string) => rightOf(assess(changed(tiltDeck(), path, undefined)));
const whole = rightOf(assess(tiltDeck()));

it('the picture by length has the rows of the deck growth and the label', () => {
  const found = lengthsFrom(whole);
  expect(found?.rows).toEqual(whole.deckGrowth?.byLength.rows);
  expect(found && plain(found.gvwr)).toBe(14_000);
});

it('the picture by length is none without a label, or without lines that grow', () => {
  const unlabelled = without('trailer.gvwr');
  expect(lengthsFrom({ ...unlabelled, deckGrowth: whole.deckGrowth } as typeof whole)).toBeUndefined();
  const { deckGrowth: _, ...others } = whole;
  expect(lengthsFrom(others as typeof whole)).toBeUndefined();
});

it('the picture by share has the load as it is, where its balance is known', () => {
  const { now, curb, best, anywhere, limits } = sharesFrom(whole) ?? {};
  expect(now && [plain(now.payload), plain(now.share)]).toEqual([9000, plain(whole.weights.balance!.tongueShare)]);
  expect(curb && plain(curb)).toBe(3650);
  expect([best, anywhere]).toEqual([whole.payload?.best?.weight, whole.payload?.anywhere?.weight]);
  expect(limits).toBe(whole.payload?.limits);
  const unplaced = sharesFrom(without('cargo.0.front'));
  expect(unplaced).toBeDefined();
  expect(unplaced?.now).toBeUndefined();
  expect(sharesFrom(without('trailer.curb'))).toBeUndefined();
});
