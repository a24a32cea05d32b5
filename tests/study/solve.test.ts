/** Solved inputs: exact where the working is linear, bracketed and said so otherwise, and true by `assess` at every end. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../src/assessment/index.js';
import { bracketWidth, holdingInterval, solveFor } from '../../src/study/index.js';
import { changed } from '../../src/study/spec-paths.js';
import type { Derived } from '../../src/trace/index.js';
import { show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { tiltDeck } from './compared.js';
import { figuresOf, spec } from './random-specs.js';

const reserveOf =
  (what: string) =>
  ({ checks }: Assessment): Derived<'lb'> | undefined =>
    checks.find((check) => check.what === what)?.reserve;
const at = (base: unknown, path: string, text: string): Assessment => rightOf(assess(changed(base, { [path]: text })));

describe('the value at which a reserve is used up', () => {
  it('is exact where the working is linear', () => {
    expect(rightOf(solveFor(tiltDeck, 'cargo.0.weight', reserveOf('gross against GVWR')))).toMatchObject({
      how: 'exact',
    });
    expect(show(rightOf(solveFor(tiltDeck, 'cargo.0.weight', reserveOf('gross against GVWR'))).value)).toBe(
      '10,350 lb',
    );
    expect(show(rightOf(solveFor(tiltDeck, 'trailer.gvwr', reserveOf('gross against GVWR'))).value)).toBe('12,650 lb');
  });
  it('leaves nothing when put back, in any unit of the spec', () => {
    const metric = changed(tiltDeck, { 'cargo.0.weight': '4,000 kg', 'trailer.curb.weight': '1,650 kg' });
    const { value, how } = rightOf(solveFor(metric, 'cargo.0.weight', reserveOf('gross against GVWR')));
    expect({ how, unit: value.unit }).toEqual({ how: 'exact', unit: 'kg' });
    const back = reserveOf('gross against GVWR')(at(metric, 'cargo.0.weight', `${value.value.toFixed()} kg`));
    expect(Math.abs(back?.value.value.toNumber() ?? 1)).toBeLessThan(1e-20);
  });
  it('is bracketed where it is not linear, within what it says', () => {
    const { value, how } = rightOf(
      solveFor(tiltDeck, 'trailer.axles.0.at', reserveOf('tongue against coupler tongue')),
    );
    expect(how).toBe('bracketed');
    const [below, above] = [-1, 1].map((side) =>
      reserveOf('tongue against coupler tongue')(
        at(tiltDeck, 'trailer.axles.0.at', `${value.value.plus(Number(bracketWidth) * side).toFixed()} in`),
      )?.value.value.isNegative(),
    );
    expect(below).not.toBe(above);
  });
  it('is refused where there is none, and for a path that holds no figure', () => {
    expect(solveFor(tiltDeck, 'cargo.0.front', reserveOf('gross against GVWR'))).toMatchObject({
      left: { tag: 'NoSolution', path: 'cargo.0.front', what: 'reserve, gross against GVWR' },
    });
    expect(solveFor(tiltDeck, 'cargo.0.weight', () => undefined)).toMatchObject({ left: { tag: 'NoSolution' } });
    expect(solveFor(tiltDeck, 'cargo.0.wieght', reserveOf('gross against GVWR'))).toMatchObject({
      left: { tag: 'UnknownPath', nearest: expect.arrayContaining(['cargo.0.weight']) as unknown },
    });
    expect(isLeft(solveFor({}, 'cargo.0.weight', reserveOf('gross against GVWR')))).toBe(true);
  });
});

/** Holds at the end, holds just inside, does not hold just outside (unless the end is the most the input may be). */
function expectEnds(base: unknown, path: string): void {
  const found = holdingInterval(base, path);
  if (isLeft(found)) return;
  const { from, to, setBy, included, how } = found.right;
  const inside = how === 'exact' ? 1e-9 : 3 * Number(bracketWidth);
  const holds = (x: { toFixed(): string }): boolean => {
    const a = assess(changed(base, { [path]: `${x.toFixed()} ${from.unit}` }));
    return !isLeft(a) && a.right.holds;
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
        isLeft(assess(changed(base, { [path]: `${end.value.toFixed()} ${from.unit}` }))) || names.length > 0,
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

describe('an input whose working has a pole', () => {
  it('is solved beside it: the jack stands ever nearer to the axles until it bears what it is rated for (statics)', () => {
    const spec = changed(tiltDeck, { 'trailer.jack': { rating: '5,000 lb', at: '20 in', margin: '100 %' } });
    const { value } = rightOf(
      solveFor(spec, 'trailer.jack.at', ({ checks }) => checks.find(({ kind }) => kind === 'jack')?.reserve),
    );
    // T a / (a - j) = 5,000 lb with 1,490.588 lb on the tongue and the axles 204 in behind the ball.
    const tongue = 12650 - 2276520 / 204;
    expect(value.value.toNumber()).toBeCloseTo(204 - (tongue * 204) / 5000, 4);
    expect(rightOf(holdingInterval(spec, 'trailer.jack.at')).to.value.toNumber()).toBeCloseTo(
      204 - (tongue * 204) / 5000,
      4,
    );
  });
});
