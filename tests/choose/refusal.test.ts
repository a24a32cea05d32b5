/** Questions over whole answers that come without types: what is no question is a typed Left at its key, never an exception. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import * as choose from '../../src/choose/index.js';
import { describeError } from '../../src/errors.js';
import { rightOf } from '../helpers/either.js';
import { tiltDeck } from '../helpers/specs.js';

/** The questions as a program without types sees them. */
const untyped = choose as unknown as Readonly<Record<string, (...given: readonly unknown[]) => never>>;
const ask = (name: string, ...given: readonly unknown[]) =>
  (untyped[name] as (...all: readonly unknown[]) => never)(...given);
const spec = tiltDeck();
const { tow, cargo } = spec;
const yard = { stock: { a: spec }, tow, cargo };
const trips = [{ name: 'excavator', cargo, count: 4 }];
const answer = rightOf(assessJson(spec));

/** Question, what is given, where the error points. */
const refused: readonly (readonly [name: string, given: readonly unknown[], path: string])[] = [
  ...[undefined, null, 3, 'a text', [], () => 1].flatMap(
    (nothing) =>
      [
        ['compare', [nothing], 'specs'],
        ['fitStock', [nothing], 'stock'],
        ['dutyOf', [nothing], 'duty'],
        ['axlePlace', [nothing], 'axlePlace'],
        ['frameChecks', [nothing], 'frame'],
        ['auditSheet', [nothing], 'sheet'],
        ['sureness', [nothing], 'assessment'],
      ] as const,
  ),
  ['compare', [{ a: null }], 'a: the spec'],
  ['oneClassUp', [null, spec], 'now: the spec'],
  ['remedies', [spec, null], 'levers'],
  ['remedies', [spec, [3]], 'levers.0'],
  ['sureness', [{}], 'spec'],
  ['sureness', [answer, null], 'tolerances'],
  ['sureness', [answer, { byBasis: 'all' }], 'byBasis'],
  ['sureness', [answer, { byBasis: [null] }], 'byBasis.0'],
  ['sureness', [answer, { byPath: { 'cargo.0.weight': 5 } }], 'byPath.cargo.0.weight'],
  ['fitStock', [{ ...yard, stock: [] }], 'stock'],
  ['fitStock', [{ ...yard, cargo: null }], 'cargo'],
  ['fitStock', [{ ...yard, want: 3 }], 'want'],
  ['fitStock', [{ ...yard, want: { payload: '9,000 lb' } }], 'want.payload'],
  ['fitStock', [{ ...yard, want: { lines: 'cdl' } }], 'want.lines'],
  ['dutyOf', [{ trailer: spec, trips: null }], 'trips'],
  ['dutyOf', [{ trailer: spec, trips: [null] }], 'trips.0'],
  ['dutyOf', [{ trailer: spec, trips: [{ ...trips[0], cargo: 1 }] }], 'trips.0.cargo'],
  ['dutyOf', [{ trailer: spec, trips, most: 'all' }], 'most'],
  ['axlePlace', [{ spec, moving: null }], 'moving'],
  ['axlePlace', [{ spec, moving: [], decks: 20 }], 'decks'],
  ['axlePlace', [{ spec, moving: [], machines: [{ name: 'loader', weight: 9000 }] }], 'machines.0.weight'],
  ['frameChecks', [{ spec }], 'rail'],
  ['frameChecks', [{ spec, rail: { section: 8 } }], 'rail.section'],
  ['auditSheet', [{ gvwr: 3 }], 'gvwr'],
  ['auditSheet', [{ axles: '7,000 lb' }], 'axles'],
  ['auditSheet', [{ axles: [null] }], 'axles.0'],
  ['auditSheet', [{ tires: 4 }], 'tires'],
  ['boundsFrom', [null], 'the spec'],
];

describe('is refused at its key', () => {
  it.each(refused.map((row, i) => [i, ...row] as const))('%i: %s', (_, name, given, path) => {
    const said = ask(name, ...given) as Parameters<typeof isLeft>[0];
    expect(isLeft(said), 'a Left').toBe(true);
    if (!isLeft(said)) return;
    expect((said.left as { readonly path?: string }).path ?? 'the spec').toContain(path);
    expect(describeError(said.left as never)).not.toMatch(/undefined|\[object|NaN/);
  });
});

it('names a bad trailer and answers the others', () => {
  const { failed } = rightOf(choose.fitStock({ ...yard, stock: { a: null } } as never));
  expect(failed.map(({ name, error }) => [name, error.tag])).toEqual([['a', 'UndecodableSpec']]);
});
