/** The guide to the spec against the codecs: every key, no other, which of them must be there, and examples that decode. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { isRight } from 'fp-ts/lib/Either.js';
import type * as t from 'io-ts';
import { describe, expect, it } from 'vitest';
import { specCodec } from '../../src/assessment/index.js';
import { rulesCodec } from '../../src/assessment/tow-codec.js';
import type { MadeOf } from '../../src/assessment/record-codec.js';

interface Row { readonly key: string; readonly must: boolean; readonly codec: t.Mixed }

const isRecord = (codec: object): codec is MadeOf => 'required' in codec && 'optional' in codec;
const eachOf = (codec: object): t.Mixed | undefined => ('each' in codec ? codec.each as t.Mixed : undefined);

/** Every record of the spec under its path, `[]` for the places of a list. */
function recordsOf(path: string, codec: object, found = new Map<string, readonly Row[]>()): ReadonlyMap<string, readonly Row[]> {
  const each = eachOf(codec);
  if (each !== undefined) return recordsOf(`${path}[]`, each, found);
  if (!isRecord(codec)) return found;
  const rows = [codec.required, codec.optional].flatMap((shape, i) => Object.entries(shape).map(([key, own]): Row => ({ key, must: i === 0, codec: own })));
  found.set(path, rows);
  for (const { key, codec: own } of rows) recordsOf(path === 'spec' ? key : `${path}.${key}`, own, found);
  return found;
}

const guide = readFileSync(fileURLToPath(new URL('../../docs/guide/spec.md', import.meta.url)), 'utf8');
const written = new Map(guide.split('\n## ').slice(1).map((section) => {
  const cells = section.split('\n').filter((line) => /^\| `/.test(line)).map((line) => line.slice(1, -1).split('|').map((cell) => cell.trim()));
  return [/^`([^`]+)`/.exec(section)?.[1] ?? section, cells] as const;
}));
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
      expect(cells.map((cell) => cell !== '').filter((_, i) => i !== 1), key).toEqual([true, true, true, true, true]);
      const example = cells[4] ?? '';
      const kind = eachOf(codec) !== undefined ? 'a list' : isRecord(codec) || (path === 'rules' && key === 'local') ? 'a record' : 'a figure';
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

  it('reads nothing that the walk cannot see', () => {
    expect(isRecord(rulesCodec) && records.has('rules')).toBe(true);
  });
});
