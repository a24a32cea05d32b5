/**
 * What the answers to the example rigs turn on, as they hand it on: one line a comparison, an x under each rig
 * that asks it. A comparison that is lost leaves a study, and the question how sure an answer is, without it.
 *
 * `UPDATE=1 npx vitest run tests/assessment/decisions.test.ts` writes the list anew; read the difference.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isLeft } from 'fp-ts/lib/Either.js';
import { expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import type { Decision } from '../../src/trace/index.js';
import { rigs } from '../helpers/rigs.js';
import { heavier, tiltDeck } from '../helpers/specs.js';

const kept = join(import.meta.dirname, 'expected/decisions.txt');

/** A comparison by the names of its figures, without their digits. */
const named = ({ left, comparison, right }: Decision): string =>
  [left, right]
    .map(({ symbol, value }) => symbol ?? value.value.toFixed())
    .join(` ${comparison} `)
    .replace(/\d[\d.]*/g, 'N');

function listed(specs: readonly unknown[]): string {
  const asked = new Map<string, Set<number>>();
  for (const [rig, spec] of specs.entries()) {
    const answer = assessJson(spec);
    for (const decision of isLeft(answer) ? [] : answer.right.decisions) {
      const name = named(decision);
      asked.set(name, (asked.get(name) ?? new Set()).add(rig));
    }
  }
  const lines = [...asked].map(([name, by]) => `${specs.map((_, rig) => (by.has(rig) ? 'x' : '.')).join('')} ${name}`);
  return `${lines.sort((a, b) => (a.slice(specs.length) < b.slice(specs.length) ? -1 : 1)).join('\n')}\n`;
}

it('every rig hands on what its answer turns on', () => {
  const found = listed([tiltDeck(), heavier(), ...rigs.map(({ spec }) => spec)]);
  if (process.env['UPDATE'] === '1') writeFileSync(kept, found);
  expect(found).toBe(readFileSync(kept, 'utf8'));
});
