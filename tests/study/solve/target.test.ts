/** Targets: the figures are those of the balance worked by hand. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { changed, solveForTarget } from '../../../src/study/index.js';
import { show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../compared.js';

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
