import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { solveForTarget } from '../../../src/study/index.js';
import { changed } from '../../../src/study/plan/spec-paths.js';
import { bracketWidth } from '../../../src/study/solve/zeros-of-a-working.js';
import type { Derived } from '../../../src/trace/index.js';
import { show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { holdingInterval, solveFor } from '../../helpers/untyped.js';
import { tiltDeck } from '../compared.js';

const reserveOf =
  (what: string) =>
  ({ checks }: Assessment): Derived<'lb'> | undefined =>
    checks.find((check) => check.what === what)?.reserve;
const at = (base: unknown, path: string, text: string): Assessment =>
  rightOf(assessJson(changed(base, { [path]: text })));

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

describe('the value that meets a target', () => {
  it('is the place of the machine for a tongue share of 12 %', () => {
    // Axles at 204 in: tongue = 520 + 9000 (1 - at / 204) = 0.12 x 12,650 = 1,518, so at = 204 (1 - 998 / 9000) = 181.378...; the front face 60 in before it.
    const found = rightOf(
      solveForTarget(tiltDeck as never, 'cargo.0.front', ({ weights }) => weights.balance?.tongueShare, '12 %'),
    );
    expect(found.how).toBe('exact');
    expect(found.value.value.toNumber()).toBeCloseTo(204 * (1 - 998 / 9000) - 60, 12);
    const back = rightOf(assessJson(changed(tiltDeck, { 'cargo.0.front': show(found.value) })));
    expect(back.weights.balance?.tongueShare.value.value.toNumber()).toBeCloseTo(0.12, 12);
  });
  it('is a weight, where the share is no straight line of it', () => {
    // (520 + W (1 - 182 / 204)) / (3650 + W) = 0.11: 520 + 22 W / 204 = 401.5 + 0.11 W, so W = 118.5 / (0.11 - 22 / 204)
    const found = rightOf(
      solveForTarget(tiltDeck as never, 'cargo.0.weight', ({ weights }) => weights.balance?.tongueShare, '11 %'),
    );
    expect(found.how).toBe('bracketed');
    expect(found.value.value.toNumber()).toBeCloseTo(118.5 / (0.11 - 22 / 204), 4);
  });
  it('is not there for a share nobody reaches, a target of another kind, a figure that is not asked', () => {
    const share = (target: string) =>
      solveForTarget(tiltDeck as never, 'trailer.gvwr', ({ weights }) => weights.balance?.tongueShare, target);
    expect(leftOf(share('12 %'))).toMatchObject({ tag: 'NoSolution', found: 'the target is met nowhere' });
    expect(leftOf(share('12 lb'))).toMatchObject({ tag: 'UnusableVariation', path: 'target' });
    expect(leftOf(share('much'))).toMatchObject({ tag: 'UnusableVariation', path: 'target' });
    expect(leftOf(solveForTarget(tiltDeck as never, 'trailer.gvwr', () => undefined, '1 lb'))).toMatchObject({
      tag: 'NoSolution',
    });
  });
});
