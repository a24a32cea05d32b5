/** The checksum against its published check value and against Python's zlib; the text it is taken over. */
import { describe, expect, it } from 'vitest';
import { crc32, textOf } from '../../../src/assessment/answer/checksum.js';

describe('CRC-32', () => {
  it('has the published check value', () => {
    // The check value of CRC-32/ISO-HDLC over "123456789", as catalogues of checksums print it.
    expect(crc32('123456789')).toBe('cbf43926');
    expect(crc32('')).toBe('00000000');
  });
  it('reads text as UTF-8', () => {
    // python3 -c "import zlib; print('%08x' % zlib.crc32('6½ × 3 → € 🛻'.encode()))"
    expect(crc32('6½ × 3 → € 🛻')).toBe('960e5938');
  });
});

describe('the text of a value', () => {
  it('has its keys in order, whatever order they came in', () => {
    expect(textOf({ b: [{ z: 1, a: null }], a: 'x' })).toBe('{"a":"x","b":[{"a":null,"z":1}]}');
    expect(textOf({ a: 'x', b: [{ a: null, z: 1 }] })).toBe('{"a":"x","b":[{"a":null,"z":1}]}');
  });
});
