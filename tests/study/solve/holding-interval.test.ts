/** The interval in which all checks hold, tried by assess at and beyond its ends. */

import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { changed } from '../../../src/study/plan/spec-paths.js';
import { bracketWidth } from '../../../src/study/solve/zeros-of-a-working.js';
import { show } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { holdingInterval } from '../../helpers/untyped.js';
import { tiltDeck } from '../compared.js';
import { figuresOf, spec } from '../random-specs.js';

/** Holds at the end, holds just inside, does not hold just outside (unless the end is the most the input may be). */
function expectEnds(base: unknown, path: string): void {
  const found = holdingInterval(base, path);
  if (isLeft(found)) return;
  const { from, to, setBy, included, how } = found.right;
  const inside = how === 'exact' ? 1e-9 : 3 * Number(bracketWidth);
  const holds = (x: { toFixed(): string }): boolean => {
    const a = assessJson(changed(base, { [path]: `${x.toFixed()} ${from.unit}` }));
    return !isLeft(a) && a.right.verdict !== 'over';
  };
  if (to.value.minus(from.value).lt(4 * inside)) return;
  for (const [end, names, out, isIn] of [
    [from, setBy.from, -1, included.from],
    [to, setBy.to, 1, included.to],
  ] as const) {
    expect(holds(end.value.minus(out * inside)), `${path} just inside ${show(end)}`).toBe(true);
    expect(holds(end.value), `${path} at ${show(end)}`).toBe(isIn);
    if (how === 'exact' && !isIn)
      expect(
        isLeft(assessJson(changed(base, { [path]: `${end.value.toFixed()} ${from.unit}` }))) || names.length > 0,
        `${path}: why not at ${show(end)}`,
      ).toBe(true);
    if (names.length > 0 && !names.includes('what is checked changes'))
      expect(holds(end.value.plus(out * inside)), `${path} just outside ${show(end)}`).toBe(false);
  }
}

describe('the interval in which all checks hold', () => {
  it('names what sets its ends', () => {
    const { from, to, setBy, how } = rightOf(holdingInterval(tiltDeck, 'cargo.0.weight'));
    expect({ from: show(from), to: show(to), setBy, how }).toEqual({
      from: '0 lb',
      to: '10,350 lb',
      setBy: { from: [], to: ['gross against GVWR'] },
      how: 'exact',
    });
    expectEnds(tiltDeck, 'cargo.0.weight');
  });
  it.each([
    'cargo.0.weight',
    'cargo.0.front',
    'cargo.0.balancePoint',
    'trailer.gvwr',
    'trailer.curb.weight',
    'trailer.curb.tongue',
    'trailer.coupler.tongue',
    'trailer.axles.0.at',
    'trailer.axles.0.tires.pressure',
    'trailer.axles.0.tires.molded.single',
    'trailer.axles.0.gawr',
    'tongueShare',
  ])('is true by assess at its ends: %s', (path) => {
    expect(isLeft(holdingInterval(tiltDeck, path))).toBe(false);
    expectEnds(tiltDeck, path);
  });
  it('follows the program where it goes another way', () => {
    const { from, to, setBy } = rightOf(holdingInterval(tiltDeck, 'trailer.axles.0.gawr'));
    expect({ to: show(to), setBy: setBy.to }).toEqual({ to: '7,000 lb', setBy: ['no answer beyond'] });
    expect(from.value.toNumber()).toBeCloseTo(((9000 * 182) / 204 + 3130) / 2, 6);
    const weighed = rightOf(holdingInterval(tiltDeck, 'trailer.curb.weight'));
    expect({ from: show(weighed.from), setBy: weighed.setBy.from }).toEqual({
      from: '520 lb',
      setBy: ['no answer beyond'],
    });
    const pressure = rightOf(
      holdingInterval(
        changed(tiltDeck, { 'cargo.0.weight': '10,200 lb', 'cargo.0.front': '128 in' }),
        'trailer.axles.0.tires.pressure',
      ),
    );
    expect(show(pressure.to)).toBe('200 psi');
  });
  it('is found from outside', () => {
    const over = changed(tiltDeck, { 'cargo.0.weight': '11,000 lb' });
    expect(show(rightOf(holdingInterval(over, 'cargo.0.weight')).to)).toBe('10,350 lb');
  });
  it('is refused when no value holds', () => {
    expect(
      holdingInterval(
        changed(tiltDeck, { 'trailer.coupler.tongue': '1 lb', 'trailer.curb.tongue': '3,000 lb' }),
        'trailer.coupler.gross',
      ),
    ).toMatchObject({ left: { tag: 'NoSolution' } });
  });
  it('is true by assess at its ends, for random trailers', () => {
    const linear = /^(cargo\.\d\.(weight|at|front)|trailer\.gvwr|trailer\.coupler\.\w+)$/;
    fc.assert(
      fc.property(spec, fc.nat(), (base, n) => {
        const paths = figuresOf(base)
          .map(([path]) => path)
          .filter((path) => linear.test(path));
        const path = paths[n % Math.max(1, paths.length)];
        if (path !== undefined) expectEnds(base, path);
      }),
      { numRuns: 80, seed: 4 },
    );
  });
});
