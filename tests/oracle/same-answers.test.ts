/**
 * Random specs through both paths: every figure to its last digit, every verdict, decision, order, text and error the same.
 *
 * `npm run oracle` asks 20,000 specs and more; the suite asks a few hundred of them.
 */
import { isLeft } from 'fp-ts/lib/Either.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { metric } from '../helpers/metric.js';
import { type JsonSpec, randomSpec } from '../helpers/random-specs.js';
import { heavier, tiltDeck } from '../helpers/specs.js';
import { tiltDeck as plainDeck } from '../study/compared.js';
import { edited } from './edited.js';
import { bothPaths, type Library } from './two-paths.js';
import { firstDifference, writtenOut } from './written-out.js';

const long = process.env['ORACLE'] === 'long';
const [randomCount, editedCount] = long ? [16_000, 1_500] : [60, 8];
const patience = long ? 7_200_000 : 120_000;

let exact: Library;
let lazy: Library;
beforeAll(async () => {
  ({ exact, lazy } = await bothPaths());
}, 120_000);

/** What an answer says, and how it prints. */
function told({ assessJson, report }: Library, spec: unknown): readonly string[] {
  const assessed = assessJson(spec);
  if (isLeft(assessed)) return writtenOut(assessed.left);
  const text = report(assessed.right);
  return [...writtenOut(assessed.right), ...text.split('\n')];
}

function compareAll(specs: Iterable<JsonSpec>): { readonly answered: number; readonly different: readonly string[] } {
  const different: string[] = [];
  let answered = 0;
  for (const spec of specs) {
    const mine = told(lazy, spec);
    if (mine.length > 100) answered += 1;
    const difference = firstDifference(mine, told(exact, spec));
    if (difference !== undefined) different.push(`${JSON.stringify(spec).slice(0, 80)}: ${difference}`);
  }
  return { answered, different };
}

function* from(make: (seed: number) => JsonSpec, count: number): Generator<JsonSpec> {
  for (let seed = 0; seed < count; seed += 1) yield make(seed);
}

it('goes two ways', () => {
  const { lb } = exact.units;
  expect([exact.boundOf(lb(5)), lazy.boundOf(lazy.units.lb(5))]).toEqual([Infinity, 0]);
});

describe('lazy figures answer as exact ones', () => {
  it('for random trailers of every kind', { timeout: patience }, () => {
    const { answered, different } = compareAll(from(randomSpec, randomCount));
    expect(different).toEqual([]);
    expect(answered).toBeGreaterThan(randomCount / 2);
  });
  it.each([
    ['the plain trailer', plainDeck],
    ['the demo trailer', tiltDeck()],
    ['the demo trailer one class up', heavier()],
    ['the demo trailer in metric figures', metric(tiltDeck())],
  ])('for %s with figures changed, moved onto each other and onto ties', { timeout: patience }, (_, spec) => {
    const { answered, different } = compareAll(from((seed) => edited(spec as JsonSpec, seed, lazy), editedCount));
    expect(different).toEqual([]);
    expect(answered).toBeGreaterThan(editedCount / 3);
  });
});
