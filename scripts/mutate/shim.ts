/** What the tests of a bundle import in place of the test runner: it gathers tests, and runs them one by one until one fails. */
import { addCustomEqualityTesters, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';
import { format } from '@vitest/pretty-format';
import * as chai from 'chai';
import fc from 'fast-check';
import type { Ran, Said } from './said.js';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
/** A print kept in the test itself, compared but for the white space it was indented with. */
const squeezed = (text: string): string => text.replace(/\s+/g, ' ').trim();
chai.use(({ Assertion }, utils) => {
  utils.addMethod(Assertion.prototype, 'toMatchInlineSnapshot', function (this: object, kept: string) {
    const found: unknown = utils.flag(this, 'object');
    chai.assert.equal(squeezed(format(found, { printBasicPrototype: false, escapeString: false })), squeezed(kept));
  });
});
fc.configureGlobal({ seed: 20261128, numRuns: 25 });

type Body = (...args: readonly unknown[]) => unknown;
interface Test {
  readonly name: string;
  readonly body: () => unknown;
}

const tests: Test[] = [];
const byName = new Map<string, Test>();
const before: (() => unknown)[] = [];
const where: string[] = [];

const named = (title: string, args: readonly unknown[]): string =>
  `${title} ${args.map(String).join(' ').slice(0, 60)}`;
const asArgs = (row: unknown): readonly unknown[] => (Array.isArray(row) ? row : [row]);

/** A name is a test's own: its file, its groups, its title, and a number where that is taken. */
const taken = new Map<string, number>();
interface Shared {
  readonly file: string;
  readonly clock: () => number;
  asksTime: boolean;
}
const shared = (globalThis as unknown as { readonly __switch: Shared }).__switch;
const add = (title: string, ...more: readonly unknown[]): void => {
  const body = more.find((each) => typeof each === 'function') as () => unknown; // options may stand before it
  const name = [shared.file, ...where, title].join(' > ');
  const before = taken.get(name) ?? 0;
  taken.set(name, before + 1);
  const test = { name: before === 0 ? name : `${name} #${before + 1}`, body };
  tests.push(test);
  byName.set(test.name, test);
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
const skipIf = (off: boolean): typeof group => (off ? skipped : group);

export const it = Object.assign(add, { each: eachOf(add), skip: skipped, fails: skipped });
export const test = it;
export const describe = Object.assign(group, { each: eachOf(group), skip: skipped, skipIf });
export const expect = Object.assign(chai.expect, {
  arrayContaining: (chai.expect as unknown as Record<string, unknown>)['arrayContaining'],
  addEqualityTesters: addCustomEqualityTesters,
});
export const beforeAll = (body: () => unknown): void => {
  before.push(body);
};
export const [afterAll, afterEach] = [skipped, skipped];
/** Tests that replace parts of the program need the real runner; here they fail without a mutant, and are left out. */
const needsTheRunner = (): never => {
  throw new Error('needs the test runner');
};
export const vi = new Proxy({}, { get: () => needsTheRunner });
export const expectTypeOf = (): unknown =>
  new Proxy(() => undefined, { get: () => expectTypeOf(), apply: () => expectTypeOf() });
export const assertType = skipped;

/** Does what stands before the tests that were read since. */
export async function prepareTests(): Promise<void> {
  for (const each of before.splice(0)) await each();
}

/** Runs the tests in the order given until one fails; without an order all, with what each took and reached. */
export async function runTests(
  order: readonly string[] | undefined,
  places: () => readonly number[],
  goesOn: () => void,
  slow: readonly string[] = [],
): Promise<Omit<Said, 'atLoad'>> {
  const ran: Ran[] = [];
  places();
  const chosen =
    order === undefined
      ? tests.filter(({ name }) => !slow.includes(name))
      : order.flatMap((name) => byName.get(name) ?? []);
  for (const { name, body } of chosen) {
    const began = shared.clock();
    shared.asksTime = false;
    try {
      await body();
    } catch (problem) {
      if (order !== undefined) return { failed: name, ran };
      console.log(`left out: ${name}: ${problem instanceof Error ? problem.message.slice(0, 120) : 'a throw'}`);
      continue;
    }
    const took = shared.clock() - began;
    goesOn();
    const reached = order === undefined ? places() : undefined;
    // On a busy machine a limit of time tells nothing about a mutant.
    if (shared.asksTime && order === undefined) console.log(`left out: ${name}: it measures time`);
    else ran.push({ name, took, ...(reached && { reached }) });
  }
  return { ran };
}
