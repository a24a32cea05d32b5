/** What must not be below zero for a rig to be within, as functions of some of its figures (statics of the example). */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { demandsIn } from '../../../src/choose/remedies/demands.js';
import { changed as changedAll } from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../../helpers/specs.js';

const inputs = [
  { path: 'cargo.0.weight', unit: 'lb' },
  { path: 'cargo.0.front', unit: 'in' },
] as const;
function asked(changes: Readonly<Record<string, unknown>> = {}) {
  const assessment = rightOf(assessJson(changedAll(tiltDeck(), changes)));
  const demands = demandsIn(assessment, inputs);
  const ids = Array.from({ length: demands.count }, (_, demand) => demands.idOf(demand));
  return {
    assessment,
    demands,
    ids,
    at: (id: string, ...figures: readonly number[]) => demands.at(ids.indexOf(id), figures),
  };
}

describe('the demands of a rig', () => {
  const { assessment, demands, ids, at } = asked();
  it('are every check, every load that must press, both ends of the band, and every limit of a window', () => {
    const { checks, partChecks, uplift, placement } = assessment;
    const limits = placement.pieces[0]?.window.limits ?? [];
    expect(limits.length).toBeGreaterThan(4);
    expect(ids).toEqual([
      ...[...checks, ...partChecks].map(({ id }) => id),
      ...uplift.mustPress.map(({ what }) => `presses/${what}`),
      'band/low',
      'band/high',
      ...limits.map((_, i) => `window/0/${i}`),
    ]);
    expect(demands.short).toEqual([]);
  });
  it('are formulas: the gross weight against the GVWR, the tongue against ball mount and band', () => {
    const tongue = (weight: number, front: number): number => 520 + (weight * (204 - 60 - front)) / 204;
    expect(at('gvwr', 9000, 122)).toBeCloseTo(14000 - 12650, 9);
    expect(at('gvwr', 11000, 100)).toBeCloseTo(14000 - 14650, 9);
    expect(at('tow/ball-mount/tongue', 8000, 100)).toBeCloseTo(1600 - tongue(8000, 100), 9);
    expect(at('band/low', 8000, 130)).toBeCloseTo(tongue(8000, 130) - 0.1 * 11650, 9);
    expect(at('band/high', 8000, 100)).toBeCloseTo(0.15 * 11650 - tongue(8000, 100), 9);
    expect(demands.slopes(ids.indexOf('gvwr'))).toEqual([-1, 0]);
    expect(demands.slopes(ids.indexOf('band/low'))[1]).toBeCloseTo(-9000 / 204, 9);
  });
  it('keep a piece on the deck: the front limits grow rearward, the rear limits shrink', () => {
    const limits = assessment.placement.pieces[0]?.window.limits ?? [];
    limits.forEach(({ end }, i) => {
      const [, byInch = 0] = demands.slopes(ids.indexOf(`window/0/${i}`));
      expect(Math.sign(byInch)).toBe(end === 'front' ? 1 : -1);
    });
    expect(at('window/0/0', 9000, 62)).toBeCloseTo(0, 9); // at the front of the deck, 62 in
    expect(at('window/0/1', 9000, 134)).toBeCloseTo(0, 9); // 134 in + 168 in is its rear end, 302 in
  });
});

it('says which are short, and parts against the label', () => {
  const { demands, ids, at } = asked({ 'cargo.0.front': '100 in', 'tow.ball.gross': '12,000 lb' });
  const short = demands.short.map((demand) => ids[demand]);
  expect(short).toEqual(
    expect.arrayContaining(['tow/ball/gross', 'tow/ball-mount/tongue', 'band/high', 'label/BallBelowLabel']),
  );
  expect(short).not.toContain('gvwr');
  expect(at('label/BallBelowLabel', 9000, 100)).toBeCloseTo(12000 - 14000, 9);
});

it('takes figures in the units asked for, whatever the spec is written in', () => {
  const { at, demands, ids } = asked({ 'cargo.0.weight': '4,000 kg', 'cargo.0.front': '3,000 mm' });
  expect(at('gvwr', 9000, 122)).toBeCloseTo(14000 - 12650, 9);
  expect(demands.slopes(ids.indexOf('gvwr'))[0]).toBeCloseTo(-1, 12);
  expect(at('window/0/0', 9000, 63)).toBeCloseTo(1, 9);
});
