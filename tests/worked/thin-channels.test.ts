/** Width to thickness of formed channels: limits of the text from memory, and flats by hand. */
import { describe, expect, it } from 'vitest';
import { channelSlenderness } from '../../src/members/index.js';
import { inch, ksi } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const channel = (thickness: string, flangeWidth = '3', depth = '8') =>
  ({
    kind: 'formed channel',
    depth: inch(depth),
    flangeWidth: inch(flangeWidth),
    thickness: inch(thickness),
    insideRadius: inch(thickness),
  }) as const;

describe('AISI S100, from memory (verify)', () => {
  it('flats by hand: flange 3 - 2 t, web 8 - 4 t', () => {
    const { parts } = rightOf(channelSlenderness(channel('0.125'), ksi(30)));
    const [flange, web] = parts;
    expect(plain(flange!.ratio)).toBeCloseTo((3 - 0.25) / 0.125, 12);
    expect(plain(web!.ratio)).toBeCloseTo((8 - 0.5) / 0.125, 12);
    expectReplays(flange!.full);
  });
  // lambda = 1.052 / sqrt(k) x w/t x sqrt(f / E) = 0.673 is where reduction begins; at 50 ksi a free edge counts in full up to about 10.
  it('a free edge at 50 ksi counts in full up to about w/t = 10.2', () => {
    const { parts } = rightOf(channelSlenderness(channel('0.25'), ksi(50)));
    const full = plain(parts[0]!.full);
    expect((1.052 / Math.sqrt(0.43)) * full * Math.sqrt(50 / 29500)).toBeCloseTo(0.673, 12);
    expect(full).toBeCloseTo(10.19, 2);
    expect(parts.map(({ verdict }) => verdict)).toEqual(['counts in full', 'counts in full']);
  });
  it('names what counts in part and what is outside the text, a tie on the good side', () => {
    const verdicts = (...args: Parameters<typeof channel>) =>
      rightOf(channelSlenderness(channel(...args), ksi(30))).parts.map(({ verdict }) => verdict);
    expect(verdicts('0.125')).toEqual(['counts in part', 'counts in full']);
    // By hand: flat 60 t and web 200 t exactly, with bends of 2 t.
    expect(verdicts('0.1', '6.2', '20.4')).toEqual(['counts in part', 'counts in part']);
    expect(verdicts('0.1', '6.21', '20.41')).toEqual(['outside the text', 'outside the text']);
  });
  it('refuses flats that the bends use up, and no stress', () => {
    expect(leftOf(channelSlenderness(channel('0.5', '0.9'), ksi(30))).tag).toBe('OutsideItsRange');
    expect(leftOf(channelSlenderness(channel('0.25'), ksi(0))).tag).toBe('OutsideItsRange');
  });
});
