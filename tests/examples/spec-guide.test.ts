/** The guide to the spec against the codecs: every key, no other, which of them must be there, and examples that decode. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isRight } from 'fp-ts/lib/Either.js';
import type * as t from 'io-ts';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { readMember, readSurface } from '../../src/members/index.js';
import { cutListCodec, deckCodec } from '../../src/spec/frame.js';
import { specCodec } from '../../src/spec/index.js';
import type { MadeOf } from '../../src/spec/record.js';
import { leftOf, rightOf } from '../helpers/either.js';

interface Row {
  readonly key: string;
  readonly must: boolean;
  readonly codec: t.Mixed;
}

const isRecord = (codec: object): codec is MadeOf => 'required' in codec && 'optional' in codec;
const eachOf = (codec: object): t.Mixed | undefined => ('each' in codec ? (codec.each as t.Mixed) : undefined);

/** Every record of the spec under its path, `[]` for the places of a list. */
function recordsOf(
  path: string,
  codec: object,
  found = new Map<string, readonly Row[]>(),
): ReadonlyMap<string, readonly Row[]> {
  const each = eachOf(codec);
  if (each !== undefined) return recordsOf(`${path}[]`, each, found);
  if (!isRecord(codec)) return found;
  const rows = [codec.required, codec.optional].flatMap((shape, i) =>
    Object.entries(shape).map(([key, own]): Row => ({ key, must: i === 0, codec: own })),
  );
  found.set(path, rows);
  for (const { key, codec: own } of rows) recordsOf(path === 'spec' ? key : `${path}.${key}`, own, found);
  return found;
}

const guide = readFileSync(fileURLToPath(new URL('../../docs/guide/spec.md', import.meta.url)), 'utf8');
const written = new Map(
  guide
    .split('\n## ')
    .slice(1)
    .filter((section) => section.startsWith('`'))
    .map((section) => {
      const cells = section
        .split('\n')
        .filter((line) => /^\| `/.test(line))
        .map((line) =>
          line
            .slice(1, -1)
            .split('|')
            .map((cell) => cell.trim()),
        );
      return [/^`([^`]+)`/.exec(section)?.[1] ?? section, cells] as const;
    }),
);
const listsOfMembers: readonly t.Mixed[] = [cutListCodec, deckCodec];
const records = recordsOf('spec', specCodec);

describe('the guide to the spec', () => {
  it('has one table for each record, and no other', () => {
    expect([...written.keys()].sort()).toEqual([...records.keys()].sort());
    expect(records.size).toBeGreaterThan(20);
  });

  it.each([...records.keys()])('%s: every key, no other, and those that must be there', (path) => {
    const rows = (written.get(path) ?? []).map(([key, must]) => `${key} ${must}`.trim());
    expect(rows).toEqual((records.get(path) ?? []).map(({ key, must }) => `\`${key}\` ${must ? 'yes' : ''}`.trim()));
  });

  it.each([...records.keys()])('%s: six cells a row, and an example that decodes', (path) => {
    for (const { key, codec } of records.get(path) ?? []) {
      const cells = written.get(path)?.find(([first]) => first === `\`${key}\``) ?? [];
      expect(
        cells.map((cell) => cell !== '').filter((_, i) => i !== 1),
        key,
      ).toEqual([true, true, true, true, true]);
      const example = cells[4] ?? '';
      const kind =
        eachOf(codec) !== undefined || listsOfMembers.includes(codec)
          ? 'a list'
          : isRecord(codec) || (path === 'rules' && key === 'local')
            ? 'a record'
            : 'a figure';
      if (kind !== 'a figure') expect(example, key).toBe(kind);
      else expect(isRight(codec.decode(JSON.parse(example.replaceAll('`', '')))), `${key}: ${example}`).toBe(true);
    }
  });

  it('says of a key that must be there that the spec is refused without it', () => {
    for (const [path, rows] of records) {
      if (path === 'spec') continue;
      for (const { key, must } of rows) {
        const without = written.get(path)?.find(([first]) => first === `\`${key}\``)?.[5] ?? '';
        expect(without.startsWith('the spec is refused'), `${path}.${key}`).toBe(must);
      }
    }
  });

  it('shows a cut list and a deck that the spec reads, whole', () => {
    const [, block] = /```json\n([\s\S]*?)```/.exec(guide) ?? [];
    const spec = JSON.parse(
      readFileSync(fileURLToPath(new URL('../../examples/tilt-deck.json', import.meta.url)), 'utf8'),
    ) as { trailer: object };
    const { spec: read } = rightOf(
      assess({ ...spec, trailer: { ...spec.trailer, curb: JSON.parse(block ?? '') as unknown } }),
    );
    expect([read.trailer.curb?.frame?.length, read.trailer.curb?.deck?.length, read.trailer.curb?.grows]).toEqual([
      4,
      2,
      ['rails', 'crossmembers', 'planking'],
    ]);
  });

  it.each([
    ['member', readMember, 6],
    ['surface', readSurface, 6],
  ] as const)('shows every form of a %s, and each is read', (what, readForm, forms) => {
    const [, rows = ''] =
      new RegExp(`\\| ${what} \\| what it is \\|\\n\\|---\\|---\\|\\n((?:\\|.*\\n)+)`).exec(guide) ?? [];
    const shown = [...rows.matchAll(/^\| `([^`]+)`/gm)].map(([, form]) => JSON.parse(form ?? '') as unknown);
    expect(shown).toHaveLength(forms);
    for (const form of shown) rightOf<unknown, unknown>(readForm(form, what));
    const kinds = shown.flatMap((form) => (typeof form === 'object' && form !== null ? Object.keys(form) : []));
    // The refusal of a form nobody knows lists the kinds there are.
    const listed = JSON.stringify(leftOf<unknown, unknown>(readForm({ nothing: 1 }, what)));
    expect(
      kinds.filter((kind) => !listed.includes(kind)),
      listed,
    ).toEqual([]);
  });
});
