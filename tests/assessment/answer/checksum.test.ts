/** The checksum against its published check value and against Python's zlib; the text it is taken over. */
import * as zlib from 'node:zlib';
import fc from 'fast-check';
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
  it('is that of zlib for any text, at the ends of each length of UTF-8 too', () => {
    const ofZlib = (text: string): string => zlib.crc32(text).toString(16).padStart(8, '0');
    const ends = [0, 0x7f, 0x80, 0x7ff, 0x800, 0xd7ff, 0xe000, 0xffff, 0x10000, 0x10ffff];
    for (const code of ends) {
      const text = `a${String.fromCodePoint(code)}b`;
      expect(crc32(text), code.toString(16)).toBe(ofZlib(text));
    }
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => crc32(text) === ofZlib(text)));
  });
});

describe('the text of a value', () => {
  it('has its keys in order, whatever order they came in', () => {
    expect(textOf({ b: [{ z: 1, a: null }], a: 'x' })).toBe('{"a":"x","b":[{"a":null,"z":1}]}');
    expect(textOf({ a: 'x', b: [{ a: null, z: 1 }] })).toBe('{"a":"x","b":[{"a":null,"z":1}]}');
  });
});
