/** What the tests of a bundle import in place of the test runner: it gathers tests, and runs them one by one until one fails. */
import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';
import * as chai from 'chai';
import fc from 'fast-check';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
fc.configureGlobal({ seed: 20261128, numRuns: 25 });

type Body = (...args: readonly unknown[]) => unknown;
interface Test {
  readonly name: string;
  readonly body: () => unknown;
}

const tests: Test[] = [];
const before: (() => unknown)[] = [];
const where: string[] = [];

const named = (title: string, args: readonly unknown[]): string =>
  `${title} ${args.map(String).join(' ').slice(0, 60)}`;
const asArgs = (row: unknown): readonly unknown[] => (Array.isArray(row) ? row : [row]);

const add = (title: string, body: () => unknown): void => {
  tests.push({ name: [...where, title].join(' > '), body });
};
const group = (title: string, body: () => void): void => {
  where.push(title);
  body();
  where.pop();
};
const eachOf =
  (make: (title: string, body: () => void) => void) =>
  (rows: readonly unknown[]) =>
  (title: string, body: Body): void => {
    for (const row of rows) make(named(title, asArgs(row)), () => body(...asArgs(row)) as undefined);
  };
const skipped = (): void => undefined;

export const it = Object.assign(add, { each: eachOf(add), skip: skipped, fails: skipped });
export const test = it;
export const describe = Object.assign(group, { each: eachOf(group), skip: skipped });
export const expect = Object.assign(chai.expect, {
  arrayContaining: (chai.expect as unknown as Record<string, unknown>)['arrayContaining'],
});
export const beforeAll = (body: () => unknown): void => {
  before.push(body);
};
export const afterAll = skipped;
export const expectTypeOf = (): unknown =>
  new Proxy(() => undefined, { get: () => expectTypeOf(), apply: () => expectTypeOf() });
export const assertType = skipped;

/** Runs the tests in the order given, and names the first that fails; without an order all, with how long each took. */
export async function runTests(
  order: readonly string[] | undefined,
): Promise<{ failed?: string; took: Readonly<Record<string, number>> }> {
  const took: Record<string, number> = {};
  for (const each of before) await each();
  const rank = new Map((order ?? []).map((name, i) => [name, i]));
  const sorted = [...tests].sort((a, b) => (rank.get(a.name) ?? 0) - (rank.get(b.name) ?? 0));
  for (const { name, body } of sorted) {
    if (order !== undefined && !rank.has(name)) continue;
    const began = performance.now();
    try {
      await body();
    } catch (problem) {
      if (order !== undefined) return { failed: name, took };
      console.log(`left out: ${name}: ${problem instanceof Error ? problem.message.slice(0, 120) : 'a throw'}`);
      continue;
    }
    took[name] = performance.now() - began;
  }
  return { took };
}
