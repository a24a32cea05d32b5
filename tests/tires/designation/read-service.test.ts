/** The service description at its edges: the speed symbols of slow tires are two characters, and no third belongs to them. */
import { describe, expect, it } from 'vitest';
import { readTireDesignation } from '../../../src/tires/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

describe('a speed symbol A1 to A8', () => {
  it('is read at the index and behind a space, with what follows it', () => {
    expect(rightOf(readTireDesignation('12-16.5 144A3')).service?.symbol).toBe('A3');
    expect(rightOf(readTireDesignation('12-16.5 144A8 12PR'))).toMatchObject({
      service: { symbol: 'A8' },
      range: { plyRating: 12 },
    });
    expect(rightOf(readTireDesignation('12-16.5 144 A3 12 PR')).service?.symbol).toBe('A3');
  });
  it.each(['12-16.5 144A9', '12-16.5 144A0', '12-16.5 144A35', '12-16.5 144A'])('is not what stands in %s', (text) => {
    expect(leftOf(readTireDesignation(text))).toMatchObject({ fault: 'UnknownSpeedSymbol', at: 11 });
  });
});
