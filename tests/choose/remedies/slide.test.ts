/** How far a figure may be moved, and the first step at which something holds (counting). */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import type { Slide } from '../../../src/choose/remedies/lever.js';
import { changeAt, firstWhere, reach, stretchWhere, valueAt } from '../../../src/choose/remedies/slide.js';
import { rightOf } from '../../helpers/either.js';
import { proposals } from '../../helpers/pulled.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const slide = (now: number, least: number, most: number, step = 5): Slide =>
  ({ kind: 'slide', path: 'cargo.0.at', unit: 'in', now, least, most, step }) as unknown as Slide;

describe('the reach of a slide', () => {
  it.each([
    [slide(100, 60, 140), 1, [1, 8]],
    [slide(100, 60, 140), -1, [1, 8]],
    [slide(100, 60, 143), 1, [1, 8]], // a step that would pass the end is none
    [slide(100, 90, 200), -1, [1, 2]],
    [slide(100, 100, 200), -1, [1, 0]], // at its end already: no way to go
    [slide(100, 120, 200), 1, [4, 20]], // from below its least
    [slide(100, 60, 80), -1, [4, 8]],
  ] as const)('case %#', (one, way, steps) => {
    expect(reach(one, way)).toEqual(steps);
  });
  it('writes the figure with the digits that its unit needs', () => {
    expect(valueAt(slide(100, 0, 200, 0.1), 3)).toBe(100.3);
    expect(valueAt({ ...slide(0.12, 0, 1, 0.0025), unit: 'ratio' } as Slide, 1)).toBe(0.1225);
    expect(valueAt(slide(100.00006, 0, 200), 1)).toBe(105.0001);
    expect(valueAt({ ...slide(0.1234567, 0, 1, 0.01), unit: 'ratio' } as Slide, 1)).toBe(0.133457);
    expect(changeAt(slide(100, 0, 200), -2)).toEqual({ 'cargo.0.at': { text: '90 in', basis: 'stated' } });
  });
});

describe('the first step at which something holds', () => {
  it.each([1, 2, 7, 8, 9, 20])('is found by halving: %i', (first) => {
    expect(firstWhere(1, 20, (k) => k >= first)).toBe(first);
  });
});

describe('the steps at which every demand is met', () => {
  /** Demands of one figure, each met where it is not below zero. */
  const stretch = (demands: readonly ((k: number) => number)[], leftOut?: (demand: number) => boolean) =>
    stretchWhere(
      { count: demands.length, at: (i: number, [k]: readonly number[]) => demands[i]?.(k ?? 0) ?? 0 } as never,
      1,
      20,
      (k) => [k],
      leftOut,
    );
  it.each([
    [[], [1, 20]],
    [[(k: number) => k - 5], [5, 20]],
    [[(k: number) => 12 - k], [1, 12]],
    [
      [(k: number) => k - 5, (k: number) => 12 - k],
      [5, 12],
    ],
    [
      [(k: number) => k - 12, (k: number) => 12 - k],
      [12, 12],
    ],
    [[(k: number) => k - 12, (k: number) => 11 - k], undefined],
    [[() => -1], undefined],
    [[() => 0], [1, 20]],
  ] as const)('case %#', (demands, steps) => {
    expect(stretch(demands)).toEqual(steps);
  });
  it('passes over what is left out', () => {
    expect(stretch([() => -1, (k) => k - 5], (demand) => demand === 0)).toEqual([5, 20]);
  });
});

it('asks as far as it must for what no formula foresees', () => {
  // Without legs the truck holds the tail of up to some 6,890 lb while it is loaded; no figure of a check says so.
  const verdict = (pounds: number) =>
    rightOf(assessJson(changed(tiltDeck(), 'cargo.0.weight', `${pounds} lb`))).verdict;
  expect([verdict(6890), verdict(6900)]).toEqual(['within', 'attention']);
  expect(proposals({ 'trailer.rearLegs': undefined }, 'unload')).toEqual([
    ['take 2,110 lb off excavator, or carry a lighter one: 6,890 lb at most'],
  ]);
});
