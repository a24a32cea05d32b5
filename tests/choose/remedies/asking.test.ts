/** No more assessments than a question may cost, and each change assessed once. */
import { expect, it } from 'vitest';
import { asking, putsRight } from '../../../src/choose/remedies/asking.js';
import { tiltDeck } from '../../helpers/specs.js';

it('asks each change once, in whatever order its keys come, and ends at the most', () => {
  const { ask, made, spent } = asking(tiltDeck(), 2);
  expect([made(), spent()]).toEqual([0, false]);
  const lighter = ask({ 'cargo.0.weight': '8,000 lb', 'trailer.rearLegs': '12,000 lb' });
  expect(lighter).toBeDefined();
  expect([made(), spent()]).toEqual([1, false]);
  expect(ask({ 'trailer.rearLegs': '12,000 lb', 'cargo.0.weight': '8,000 lb' })).toBe(lighter);
  expect([made(), spent()]).toEqual([1, false]);
  expect(ask({ 'cargo.0.weight': 'heavy' })).toBeUndefined(); // refused, and counted
  expect([made(), spent()]).toEqual([2, true]);
  expect(ask({ 'cargo.0.weight': '7,000 lb' })).toBeUndefined(); // too many
  expect(ask({ 'cargo.0.weight': '8,000 lb', 'trailer.rearLegs': '12,000 lb' })).toBe(lighter);
  expect(made()).toBe(2);
});

it('puts right what is then within', () => {
  const { ask } = asking(tiltDeck(), 9);
  expect(putsRight(undefined)).toBe(false);
  expect(putsRight(ask({ 'trailer.rearLegs': '12,000 lb' }))).toBe(true);
  expect(putsRight(ask({ 'trailer.rearLegs': '12,000 lb', 'cargo.0.weight': '20,000 lb' }))).toBe(false);
});
