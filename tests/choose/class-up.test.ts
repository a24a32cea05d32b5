/** One class up. */
import { describe, expect, it } from 'vitest';
import { classUpText } from '../../src/print/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, heavier, tiltDeck } from '../helpers/specs.js';
import { oneClassUp } from '../helpers/untyped.js';

const change = (...changes: readonly (readonly [string, unknown])[]): unknown =>
  changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck());

describe('one class up', () => {
  it('lists the published lines whose answer changes, with both', () => {
    const surge = (spec: unknown): unknown => changed(spec, 'rules.surgeBrakes', true);
    const { crossed, notes } = rightOf(oneClassUp(surge(tiltDeck()), surge(heavier())));
    expect(notes).toEqual([]);
    // 11,800 and 16,000 lb are 27,800 lb, above 26,001 lb (49 CFR 383.5); 16,000 lb is above 1.25 x 11,800 lb (49 CFR 393.48(d)).
    expect(crossed.map(({ now, next }) => [now.id, now.outcome, next.outcome])).toEqual([
      ['cdl', 'does not apply', 'applies'],
      ['surge', 'kept', 'crossed'],
    ]);
    for (const { now, next } of crossed) expect([now.id, now.outcome === next.outcome]).toEqual([next.id, false]);
  });
  it('lists alternatives of which another one fits', () => {
    const truck = (gvwr: string): unknown =>
      change(['tow.gvwr', '27,000 lb'], ['trailer.gvwr', gvwr], ['cargo.0.weight', '5,000 lb']);
    const { crossed } = rightOf(oneClassUp(truck('9,900 lb'), truck('14,000 lb')));
    const cdl = crossed.find(({ now }) => now.id === 'cdl');
    expect([cdl?.now.topic, cdl?.next.topic]).toEqual(['CDL group B, by weight', 'CDL group A, by weight']);
    expect(classUpText(rightOf(oneClassUp(truck('9,900 lb'), truck('14,000 lb'))))).toContain(
      'was: CDL group B, by weight: applies; is: CDL group A',
    );
  });
  it('says when it is not one job, or not a class up', () => {
    const tags = (next: unknown): readonly string[] =>
      rightOf(oneClassUp(tiltDeck(), next)).notes.map(({ tag }) => tag);
    expect(tags(change(['cargo.0.weight', '8,000 lb'], ['trailer.gvwr', '15,000 lb']))).toEqual(['NotTheSameJob']);
    expect(tags(tiltDeck())).toEqual(['NotAClassUp']);
    expect(tags(change(['trailer.gvwr', undefined]))).toEqual(['NotAClassUp']);
    // 6,804 kg are 15,000 lb and a little more: a label in kilograms is a class up all the same.
    expect(tags(change(['trailer.gvwr', '6,804 kg']))).toEqual([]);
    expect(tags(change(['trailer.gvwr', '6,350 kg']))).toEqual(['NotAClassUp']);
  });
  it('prints within 80 columns', () => {
    const text = classUpText(rightOf(oneClassUp(tiltDeck(), heavier())));
    expect(text).toMatch(/^ONE CLASS UP\n/);
    expect(text).toContain('was: CDL group, by weight: does not apply; is: CDL group A');
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
});
