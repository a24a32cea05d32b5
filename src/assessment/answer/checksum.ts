/** A checksum over an answer: a slip of the wire or of a hand shows, even in what no arithmetic can see. It is no signature. */

/** Whether the keys of every record in it are sorted. */
function isOrdered(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return true;
  if (Array.isArray(value)) return value.every(isOrdered);
  let before = '';
  // A list of pairs for every record would be half of the time.
  for (const key of Object.keys(value)) {
    if (key < before) return false;
    const part = (value as Readonly<Record<string, unknown>>)[key];
    if (typeof part === 'object' && !isOrdered(part)) return false;
    before = key;
  }
  return true;
}

/** The same value with the keys of every record in order; a part that is in order already is not copied. */
export function ordered(value: unknown): unknown {
  if (isOrdered(value)) return value;
  if (Array.isArray(value)) return value.map(ordered);
  const parts = Object.entries(value as object).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(parts.map(([key, part]) => [key, ordered(part)]));
}

/** The one text of a JSON value: keys in order, no blanks. */
export const textOf = (value: unknown): string => JSON.stringify(ordered(value));

const polynomial = 0xedb88320;
const remainders = Int32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = (rest & 1) === 1 ? (rest >>> 1) ^ polynomial : rest >>> 1;
  return rest;
});

const next = (rest: number, byte: number): number => (rest >>> 8) ^ (remainders[(rest ^ byte) & 255] as number);

/** The bytes of a character beyond the first 128, as UTF-8 has them. */
function nextOfWide(rest: number, code: number): number {
  if (code < 0x800) return next(next(rest, 0xc0 | (code >> 6)), 0x80 | (code & 63));
  const tail = (from: number): number => next(next(from, 0x80 | ((code >> 6) & 63)), 0x80 | (code & 63));
  if (code < 0x10000) return tail(next(rest, 0xe0 | (code >> 12)));
  return tail(next(next(rest, 0xf0 | (code >> 18)), 0x80 | ((code >> 12) & 63)));
}

/**
 * CRC-32 of a text as UTF-8, in eight hexadecimal digits.
 *
 * @source ISO/IEC 8802-3, the frame check sequence, as zlib computes it
 */
export function crc32(text: string): string {
  let rest = -1;
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    if (unit < 128) rest = (rest >>> 8) ^ (remainders[(rest ^ unit) & 255] as number);
    else {
      const code = text.codePointAt(i) as number;
      if (code > 0xffff) i += 1;
      rest = nextOfWide(rest, code);
    }
  }
  return (~rest >>> 0).toString(16).padStart(8, '0');
}
