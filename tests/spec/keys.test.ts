/** The table of keys: every key has its words, every example is read, and types, guide and schema are made of it. */
import { readFileSync } from 'node:fs';
import { isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { specFiles } from '../../scripts/spec-files.js';
import type { AnyCoded } from '../../src/spec/codec/kind.js';
import { decodeMember, decodeSpec, decodeSurface, specKeys } from '../../src/spec/index.js';
import { keyRows } from '../../src/spec/keys.js';
import { specRecords } from '../../src/spec/records.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const records = specRecords();
const keysOf = (record: (typeof records)[number]): readonly (readonly [string, AnyCoded, boolean])[] =>
  [record.says.required, record.says.optional].flatMap((shape, i) =>
    Object.entries(shape).map(([key, codec]) => [key, codec, i === 0] as const),
  );
const types = [...new Map(records.map((record) => [record.says.type, record])).values()];

describe('the table of keys', () => {
  it('has the words of each record once, and of no other', () => {
    expect(keyRows.map(({ type }) => type).sort()).toEqual(types.map(({ says }) => says.type).sort());
    expect(types.length).toBeGreaterThan(50);
  });
  it.each(types.map((record) => [record.says.type, record] as const))(
    '%s: every key, in order, and no other',
    (type, record) => {
      const rows = keyRows.find((each) => each.type === type)?.rows ?? [];
      const [must, may] = [true, false].map((side) =>
        keysOf(record)
          .filter(([, , needed]) => needed === side)
          .map(([key]) => key),
      );
      const written = rows.map(([key]) => key);
      expect(written.filter((key) => must?.includes(key))).toEqual(must);
      expect([...written].sort()).toEqual([...(must ?? []), ...(may ?? [])].sort());
    },
  );
  it('says what each key is, where it is read, and what stays unasked without it', () => {
    for (const { path, what, where, example, without, must, kind } of specKeys) {
      expect(what, path).not.toBe('');
      if (kind !== 'record' && kind !== 'forms' && kind !== 'list') expect(where, path).not.toBe('');
      expect(where === '', path).toBe(example === undefined);
      if (path !== 'trailer') expect(without === '', path).toBe(must);
    }
  });
  it.each(types.map((record) => [record.says.type, record] as const))('%s: its examples are read', (type, record) => {
    for (const [key, codec] of keysOf(record)) {
      const example = specKeys.find(
        (each) => each.key === key && each.record === record.path && each.form === record.form,
      )?.example;
      if (example !== undefined)
        expect(isRight(codec.decode(example)), `${type}.${key}: ${JSON.stringify(example)}`).toBe(true);
    }
  });
  it('is plain data with a path for each key of each form', () => {
    expect(JSON.parse(JSON.stringify(specKeys))).toEqual(specKeys);
    const places = specKeys.map(({ path, form }) => `${path} ${form ?? ''}`);
    expect(new Set(places).size).toBe(places.length);
    expect(specKeys.find(({ path }) => path === 'trailer.axles[].gawr')).toMatchObject({
      record: 'trailer.axles[]',
      kind: 'figure',
      dimension: 'mass',
      unit: 'lb',
      least: '1 lb',
      most: '200,000 lb',
      basis: 'label',
      where: 'certification label',
      must: false,
    });
    expect(specKeys.find(({ path }) => path === 'trailer.axles')).toMatchObject({ least: '1', most: '12' });
    expect(specKeys.find(({ path }) => path === 'tow.overhang')?.words).toEqual(['unknown']);
  });
});

describe('what is made of the table', () => {
  /** The formatter breaks lines; nothing else is different. */
  const squashed = (text: string): string => text.replaceAll(/[\s|]+/g, '').replaceAll(',}', '}');
  it('types, guide and schema stand in their files as `npm run keys` makes them', async () => {
    const files = await specFiles();
    expect(files.size).toBe(13);
    const stale = [...files].filter(([file, text]) => squashed(readFileSync(file, 'utf8')) !== squashed(text));
    expect(stale.map(([file]) => file)).toEqual([]);
  });
});

describe('the guide to the spec', () => {
  const guide = readFileSync('docs/guide/spec.md', 'utf8');
  it('shows a cut list and a deck that the spec reads, whole', () => {
    const [, block] = /```json\n([\s\S]*?)```/.exec(guide) ?? [];
    const { trailer } = rightOf(decodeSpec(changed(tiltDeck(), 'trailer.curb', JSON.parse(block ?? ''))));
    expect([trailer.curb?.frame?.length, trailer.curb?.deck?.length, trailer.curb?.grows]).toEqual([
      4,
      2,
      ['rails', 'crossmembers', 'planking'],
    ]);
  });
  it.each([
    ['member', decodeMember, 6],
    ['surface', decodeSurface, 6],
  ] as const)('shows every form of a %s, and each is read', (what, decode, forms) => {
    const [, rows = ''] =
      new RegExp(`\\| ${what} \\| what it is \\|\\n\\|---\\|---\\|\\n((?:\\|.*\\n)+)`).exec(guide) ?? [];
    const shown = [...rows.matchAll(/^\| `([^`]+)`/gm)].map(([, form]) => JSON.parse(form ?? '') as unknown);
    expect(shown).toHaveLength(forms);
    for (const form of shown) rightOf<unknown, unknown>(decode(form, what));
    const kinds = shown.flatMap((form) => (typeof form === 'object' && form !== null ? Object.keys(form) : []));
    const listed = JSON.stringify(leftOf<unknown, unknown>(decode({ nothing: 1 }, what)));
    expect(
      kinds.filter((kind) => !listed.includes(kind)),
      listed,
    ).toEqual([]);
  });
});
