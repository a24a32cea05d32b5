/** How one piece leans on the wheels of each side while the others stay; statics by hand. */
import { describe, expect, it } from 'vitest';
import { sidesOfPiece } from '../../../src/assessment/parts/lean-of-cargo.js';
import { decodeSpec } from '../../../src/spec/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

const piece = (name: string, weight: string, rightOfMiddle?: string) => ({
  name,
  weight,
  at: '150 in',
  ...(rightOfMiddle !== undefined && { rightOfMiddle }),
});
const sidesWith = (cargo: readonly object[], index: number, track: { readonly is?: string } = { is: '80 in' }) => {
  const spec = changed(changed(tiltDeck(), 'cargo', cargo), 'trailer.track', track.is);
  return sidesOfPiece(rightOf(decodeSpec(spec)), index);
};
const figures = (sides: ReturnType<typeof sidesWith>) =>
  sides.map(({ name, lean, added }) => {
    expectReplays(lean);
    if (added !== undefined) expectReplays(added);
    return [name, plain(lean), added && plain(added)];
  });

describe('one piece of several', () => {
  it('leans by twice its offset over the track, and what stays adds twice its own', () => {
    const cargo = [piece('a', '1,000 lb', '4 in'), piece('b', '2,000 lb', '-6 in'), piece('c', '500 lb', '2 in')];
    // 2 (-6) / 80; what stays: 2 (1,000 x 4 + 500 x 2) / 80.
    expect(figures(sidesWith(cargo, 1))).toEqual([
      ['right side', -0.15, 125],
      ['left side', 0.15, -125],
    ]);
    // 2 (4) / 80; what stays: 2 (2,000 (-6) + 500 x 2) / 80.
    expect(figures(sidesWith(cargo, 0))).toEqual([
      ['right side', 0.1, -275],
      ['left side', -0.1, 275],
    ]);
  });
  it('alone has nothing added', () => {
    expect(figures(sidesWith([piece('a', '1,000 lb', '4 in')], 0))).toEqual([
      ['right side', 0.1, undefined],
      ['left side', -0.1, undefined],
    ]);
  });
  it('leans nowhere that is known where the track or an offset is not', () => {
    const cargo = [piece('a', '1,000 lb', '4 in'), piece('b', '2,000 lb')];
    expect(sidesWith(cargo, 0)).toEqual([]);
    expect(sidesWith(cargo, 1)).toEqual([]);
    expect(sidesWith([piece('a', '1,000 lb', '4 in')], 0, {})).toEqual([]);
    expect(sidesWith([piece('a', '1,000 lb', '4 in')], 1)).toEqual([]);
  });
});
