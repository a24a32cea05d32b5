/** The jack of the example against the tongue load at the label. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/assessment/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const anchored = (each: string, count: number) =>
  rightOf(assess(changed(tiltDeck(), 'trailer.anchors', { each, count })));
const tags = ({ attention }: ReturnType<typeof anchored>) => attention.map(({ tag }) => tag);

describe('the jack at the label', () => {
  // By hand: 14,000 x 15 % x 204 / 184 x 1.25 = 2,910.3 lb.
  it('is asked at the GVWR and the top of the band, not only at today’s tongue', () => {
    const rated = (rating: string) => rightOf(assess(changed(tiltDeck(), 'trailer.jack.rating', rating)));
    expect(tags(rated('2,911 lb'))).not.toContain('JackBelowLabel');
    const weak = rated('2,910 lb');
    const found = weak.attention.find(({ tag }) => tag === 'JackBelowLabel');
    expect(plain(found!.figures![1] as never)).toBeCloseTo((14000 * 0.15 * 204 * 1.25) / 184, 8);
    expect(weak.checks.find(({ kind }) => kind === 'jack')?.verdict).toBe('within');
  });
});
