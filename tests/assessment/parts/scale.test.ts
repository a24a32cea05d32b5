/** Scale tickets in a whole assessment: compared with the calculation, with the weights they cannot give named. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { report } from '../../../src/print/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

/** Constructed: a trailer of 12,400 lb with 1,400 lb on the ball, axles 190 in behind it, and tickets that read 20 lb more on the truck. */
const spec = (tickets: object): unknown => ({
  trailer: {
    hitch: 'ball',
    gvwr: '14,000 lb',
    sharing: 'equalised',
    curb: { weight: '3,200 lb', tongue: '480 lb' },
    axles: [
      { at: '173 in', beam: '7,000 lb' },
      { at: '207 in', beam: '7,000 lb' },
    ],
  },
  cargo: [{ name: 'machine', weight: '9,200 lb', at: '171 in' }],
  tickets: { division: '20 lb', ...tickets },
});
const barsOff = { steer: '3,840 lb', drive: '4,980 lb', trailer: '11,000 lb' };
const barsOn = { steer: '4,080 lb', drive: '4,580 lb', trailer: '11,160 lb' };
const truckAlone = { steer: '4,300 lb', drive: '3,100 lb' };

describe('three passes', () => {
  const answer = rightOf(assessJson(spec({ barsOn, barsOff, truckAlone })));
  const { reading, gaps } = answer.scale;
  it('give tongue and gross by differences: 3,840 + 4,980 - 4,300 - 3,100 lb on the ball (statics)', () => {
    expect([plain(reading!.tongue!), plain(reading!.gross!)]).toEqual([1420, 12420]);
    expect(plain(reading!.restored!)).toBeCloseTo(240 / 460, 12);
    expect(reading!.tongue!.why.basis).toBe('scale');
    expectReplays(reading!.tongue!, reading!.gross!, reading!.restored!);
  });
  it('stand beside the reckoning, which they do not change', () => {
    expect(gaps.map(({ what, gap }) => [what, plain(gap)])).toEqual([
      ['gross weight', 20],
      ['tongue load', 20],
    ]);
    expect(plain(answer.weights.balance!.tongue)).toBe(1400);
    expect(answer.notes.some(({ tag }) => tag === 'ScaleBesideReckoning')).toBe(true);
    expectReplays(...gaps.map(({ gap }) => gap));
  });
  it('are printed with what they say', () => {
    const text = report(answer).replace(/\s+/g, ' ');
    for (const line of [
      /SCALE TICKETS/,
      /trailer gross, weighed \.+ 12,420 lb/,
      /tongue load, weighed \.+ 1,420 lb/,
      /front axle load restored by the bars \.+ 52\.2 %/,
      /tongue load, weighed minus calculated \.+ 20 lb/,
      /the sums agree within/,
    ])
      expect(text).toMatch(line);
    expect(
      report(answer)
        .split('\n')
        .filter((line) => line.length > 80),
    ).toEqual([]);
  });
});

describe('fewer passes', () => {
  it('leave open what they cannot tell: one coupled pass does not contain the tongue load', () => {
    const { scale, notChecked } = rightOf(assessJson(spec({ barsOff })));
    expect([scale.reading?.tongue, scale.gaps]).toEqual([undefined, []]);
    expect(notChecked.map(({ what }) => what)).toContain('tongue load from the scale tickets');
  });
  it('leave a question open where there is none', () =>
    expect(rightOf(assessJson(spec({}))).notChecked).toContainEqual(
      expect.objectContaining({ what: 'scale tickets', missing: 'at least one pass' }),
    ));
});
