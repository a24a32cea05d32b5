/** The spec as written is kept with what was read from it: as plain JSON, independent of later changes by the caller. */
import { describe, expect, it } from 'vitest';
import { decodeSpec, writtenSpec } from '../../src/spec/index.js';
import { type Json, plainCopy } from '../../src/spec/written.js';
import { lb, ratio } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const written = (spec: unknown): Json | undefined => writtenSpec(rightOf(decodeSpec(spec)));

describe('the spec as it was written', () => {
  it('is a copy of its own', () => {
    const spec = tiltDeck();
    const read = rightOf(decodeSpec(spec));
    (spec as unknown as { trailer: { gvwr: string } }).trailer.gvwr = '1 lb';
    expect(writtenSpec(read)).toEqual(tiltDeck());
  });
  it('holds a figure that a program made as its wire record', () => {
    const plain = tiltDeck();
    const made = { ...plain, trailer: { ...plain.trailer, gvwr: lb(14000) }, tongueShare: ratio('0.125') };
    expect(written(made)).toEqual(
      changed(changed(tiltDeck(), 'trailer.gvwr', { unit: 'lb', value: '14000' }), 'tongueShare', {
        unit: 'ratio',
        value: '0.125',
      }),
    );
  });
  it('holds a wire record as it stands', () => {
    const wire = { value: '14000', unit: 'lb' };
    expect(written(changed(tiltDeck(), 'trailer.gvwr', wire))).toEqual(changed(tiltDeck(), 'trailer.gvwr', wire));
  });
  it('leaves out what is undefined, and is absent for a spec that nobody wrote', () => {
    expect(written({ ...tiltDeck(), tow: undefined })).not.toHaveProperty('tow');
    expect(writtenSpec({ trailer: {} })).toBeUndefined();
  });
});

describe('a plain copy', () => {
  it.each([
    [Number.NaN, null],
    [Number.POSITIVE_INFINITY, null],
    [1.5, 1.5],
    [true, true],
    [null, null],
    [undefined, null],
    [
      { unit: 'lb', value: null },
      { unit: 'lb', value: null },
    ],
    [
      { unit: 'lb', value: {} },
      { unit: 'lb', value: {} },
    ],
    [{ unit: 1, value: lb(1).value }, undefined],
    [
      [1, [2]],
      [1, [2]],
    ],
  ])('of %j', (value, copy) => {
    if (copy === undefined) expect(plainCopy(value)).toMatchObject({ unit: 1 });
    else expect(plainCopy(value)).toEqual(copy);
  });
  it('keeps a key of any name, and ends where no spec goes on', () => {
    const copy = plainCopy(JSON.parse('{"__proto__":{"a":1},"b":2}')) as object;
    expect(Object.keys(copy)).toEqual(['__proto__', 'b']);
    expect(JSON.stringify(copy)).toBe('{"__proto__":{"a":1},"b":2}');
    const nested = (depth: number): unknown => (depth === 0 ? 'end' : [nested(depth - 1)]);
    expect(JSON.stringify(plainCopy(nested(100)))).toBe(`${'['.repeat(100)}"end"${']'.repeat(100)}`);
    expect(JSON.stringify(plainCopy(nested(101)))).toContain('end');
    expect(JSON.stringify(plainCopy(nested(102)))).toBe(`${'['.repeat(101)}null${']'.repeat(101)}`);
  });
});
