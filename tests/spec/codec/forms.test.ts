/** A figure that may also be a word: its key and its one error. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { type DecodedSpec, decodeSpec } from '../../../src/spec/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const read = (name: string): unknown =>
  JSON.parse(readFileSync(fileURLToPath(new URL(`../../../examples/${name}`, import.meta.url)), 'utf8'));
const base = read('tilt-deck.json') as { readonly tow: object; readonly rules: object };
const withTow = (tow: object): unknown => ({ ...base, tow: { ...base.tow, ...tow } });

describe('a figure that may also be a word', () => {
  const pathIn = (spec: DecodedSpec): unknown =>
    [spec.tow?.overhang, spec.rules?.labelGcwr].map((one) =>
      typeof one === 'object' && one.why.kind === 'given' ? one.why.path : one,
    );
  it('stands under its own key', () => {
    expect(pathIn(rightOf(decodeSpec({ ...base, rules: { ...base.rules, labelGcwr: '30,000 lb' } })))).toEqual([
      'tow.overhang',
      'rules.labelGcwr',
    ]);
    expect(pathIn(rightOf(decodeSpec(withTow({ overhang: 'unknown' }))))).toEqual(['unknown', 'not shown']);
  });
  it('is one problem, under its own key, when it is neither', () => {
    expect(leftOf(decodeSpec(withTow({ overhang: 'long' }))).problems).toMatchObject([
      { path: 'tow.overhang', got: '"long"' },
    ]);
    expect(leftOf(decodeSpec(withTow({ overhang: 54 }))).problems.map(({ path }) => path)).toEqual(['tow.overhang']);
  });
});
