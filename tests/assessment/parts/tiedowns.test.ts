/** Anchor points of the trailer: the marking limits every tiedown on them, and one that holds two ends is remarked. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/assessment/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const anchored = (each: string, count: number) =>
  rightOf(assess(changed(tiltDeck(), 'trailer.anchors', { each, count })));
const tags = ({ attention }: ReturnType<typeof anchored>) => attention.map(({ tag }) => tag);

describe('anchor points', () => {
  // Four direct chains 3/8 grade 70 of 6,600 lb count half each: 13,200 lb, 4,500 lb needed for 9,000 lb.
  it('counts a tiedown by its weakest part, the anchor too (49 CFR 393.108(a))', () => {
    const counted = (each: string): number => plain(anchored(each, 8).tiedowns.pieces[0]!.answer.counted);
    expect(plain(rightOf(assess(tiltDeck())).tiedowns.pieces[0]!.answer.counted)).toBe(13200);
    expect([counted('7,000 lb'), counted('4,000 lb')]).toEqual([13200, 8000]);
  });
  it('is short when the anchors are: 4 x 2,200 / 2 is 4,400 lb of 4,500 lb', () => {
    const answer = anchored('2,200 lb', 8);
    expect(answer.tiedowns.pieces[0]!.answer.strength).toBe('short');
    expect(tags(answer)).toContain('Tiedowns');
    expect(anchored('2,250 lb', 8).tiedowns.pieces[0]!.answer.strength).toBe('enough');
  });
  it('limits a marked tiedown as well', () => {
    const spec = changed(tiltDeck(), 'cargo.0.tiedowns.0', { marked: '6,000 lb', runs: 'direct' });
    const answer = rightOf(assess(changed(spec, 'trailer.anchors', { each: '1,000 lb', count: 8 })));
    expect(plain(answer.tiedowns.pieces[0]!.answer.counted)).toBe(2000);
  });
  it('remarks more ends than points; one end for a direct tiedown, two for others', () => {
    expect(tags(anchored('7,000 lb', 4))).not.toContain('FewAnchors');
    expect(anchored('7,000 lb', 3).attention.find(({ tag }) => tag === 'FewAnchors')?.says).toBe(
      '4 tiedown ends hang on 3 anchor points: one that holds two must bear both',
    );
    const over = changed(tiltDeck(), 'cargo.0.tiedowns.0.runs', 'other side');
    const answer = rightOf(assess(changed(over, 'trailer.anchors', { each: '7,000 lb', count: 4 })));
    expect(tags(answer)).toContain('FewAnchors');
  });
});
