/** A rules file is read when it changes; what is handed out again is what reading it again would give. */
import { readFileSync } from 'node:fs';
import { isLeft } from 'fp-ts/lib/Either.js';
import { expect, it } from 'vitest';
import { orThrow } from '../../../src/errors.js';
import { decodeLocalRules } from '../../../src/spec/index.js';

const file = (): Record<string, unknown> => {
  const spec = JSON.parse(readFileSync(new URL('../../../examples/tilt-deck.json', import.meta.url), 'utf8'));
  return spec.rules.local;
};

it('hands out the same, frozen, for a file that says the same', () => {
  const first = orThrow(decodeLocalRules(file()));
  expect(orThrow(decodeLocalRules(file()))).toBe(first);
  expect(Object.isFrozen(first) && Object.isFrozen(first.rules[0])).toBe(true);
});

it('reads a file anew that was changed in place', () => {
  const mine = file() as { rules: { topic: string }[] };
  expect(orThrow(decodeLocalRules(mine)).rules[0]?.topic).toBe(mine.rules[0]?.topic);
  (mine.rules[0] as { topic: string }).topic = 'another topic';
  expect(orThrow(decodeLocalRules(mine)).rules[0]?.topic).toBe('another topic');
});

it('reads a file anew that was changed in place at the end of a list, longer or shorter', () => {
  const mine = file() as { rules: { id: string }[] };
  const before = orThrow(decodeLocalRules(mine)).rules.length;
  mine.rules.push({ ...(mine.rules[0] as { id: string }), id: 'one-more' });
  expect(orThrow(decodeLocalRules(mine)).rules.map(({ id }) => id)).toContain('one-more');
  mine.rules.pop();
  expect(orThrow(decodeLocalRules(mine)).rules).toHaveLength(before);
});

it('takes no record for a list, though it has the same places', () => {
  const mine = file() as { rules: unknown[] };
  orThrow(decodeLocalRules(mine));
  const posing = { ...mine, rules: { ...mine.rules, length: mine.rules.length } };
  expect(isLeft(decodeLocalRules(posing))).toBe(true);
});

it('tells the fault of a key that was added, taken away, or inherited', () => {
  orThrow(decodeLocalRules(file()));
  expect(isLeft(decodeLocalRules({ ...file(), another: 1 }))).toBe(true);
  const { rules: _, ...without } = file();
  expect(isLeft(decodeLocalRules(without))).toBe(true);
  expect(isLeft(decodeLocalRules(Object.create(file())))).toBe(true);
});
