/** The JSON Schema against an independent validator, and the face of Standard Schema. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { decodeSpec, specCodec, specJsonSchema, specSchema } from '../../src/spec/index.js';
import { lb } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, heavier, tiltDeck } from '../helpers/specs.js';
import { spec as randomSpec } from '../study/random-specs.js';

// The validator is ajv, a general-purpose implementation of JSON Schema 2020-12; strict: unknown keywords are errors.
const ajv = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true });
const validate = ajv.compile(specJsonSchema());
const faults = (value: unknown): readonly string[] => {
  validate(value);
  return (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
};

describe('the JSON Schema', () => {
  it('is a schema of draft 2020-12, and the file says the same', () => {
    expect(ajv.validateSchema(specJsonSchema())).toBe(true);
    expect(JSON.parse(readFileSync('docs/spec.schema.json', 'utf8'))).toEqual(
      JSON.parse(JSON.stringify(specJsonSchema())),
    );
  });
  it.each([
    ['tilt-deck', tiltDeck()],
    ['tilt-deck-16', heavier()],
    ['plain-deck', JSON.parse(readFileSync('tests/study/plain-deck.json', 'utf8')) as unknown],
  ])('%s is valid by it', (_, spec) => expect(faults(spec)).toEqual([]));
  it.each([
    ['trailer.gvrw', '1 lb'],
    ['trailer.hitch', 'fifth wheel'],
    ['trailer.axles', []],
    ['trailer.axles', Array.from({ length: 13 }, () => ({ gawr: '7,000 lb' }))],
    ['trailer.axles.0.tires.count', 1.5],
    ['trailer.gvwr', 14000],
    ['trailer.gvwr', { value: '14000', unit: 'in' }],
    ['trailer.gvwr', { text: '14,000 lb', basis: 'hearsay' }],
    ['trailer.gvwr', { text: '14,000 lb', unit: 'lb' }],
    ['tow.overhang', 54],
    ['rules.commercial', 'yes'],
    ['trailer.curb.frame.0.member', { beam: 'W8x10' }],
    ['trailer.curb.deck.0.surface.boards.wood.by', 'weight'],
    ['rules.local.rules.0.kind', 'maybe'],
    ['rules.local.rules.0.all.0.unit', 'stone'],
  ])('%s = %j is not', (path, value) => {
    const spec = changed(tiltDeck(), path, value);
    expect(faults(spec)).not.toEqual([]);
    expect(isRight(decodeSpec(spec))).toBe(false);
  });
  it('takes whatever the reader takes, as it was written and as it is written again', () => {
    fc.assert(
      fc.property(randomSpec, (spec) => {
        const read = decodeSpec(spec);
        if (!isRight(read)) return;
        expect(faults(spec)).toEqual([]);
        expect(faults(specCodec.encode(read.right))).toEqual([]);
      }),
      { numRuns: 150 },
    );
    for (const spec of [tiltDeck(), heavier()]) expect(faults(specCodec.encode(rightOf(decodeSpec(spec))))).toEqual([]);
  });
});

describe('the face of Standard Schema', () => {
  const { validate: check, vendor, version } = specSchema['~standard'];
  it('hands a spec back as it is', () => {
    const spec = tiltDeck();
    expect(check(spec)).toEqual({ value: spec });
    expect([vendor, version]).toEqual(['trailer-ratings', 1]);
  });
  it('tells every fault at its field, places in lists as numbers', () => {
    const bad = changed(changed(tiltDeck(), 'trailer.axles.1.beam', '9990'), 'cargo.0.wieght', '1 lb');
    const found = check(bad);
    expect('issues' in found ? found.issues : []).toEqual([
      { message: '"9990" has no unit; write the unit, e.g. "9,990 lb"', path: ['trailer', 'axles', 1, 'beam'] },
      { message: expect.stringContaining('weight') as string, path: ['cargo', 0, 'wieght'] },
    ]);
    expect(check(7)).toMatchObject({ issues: [{ path: [] }] });
  });
  it('takes figures that a program made', () => {
    expect(check(changed(tiltDeck(), 'trailer.gvwr', undefined))).not.toHaveProperty('issues');
    const spec = { ...tiltDeck(), trailer: { ...(tiltDeck()['trailer'] as object), gvwr: lb(14000) } };
    expect(check(spec)).not.toHaveProperty('issues');
  });
});
