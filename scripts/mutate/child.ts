/** Runs the tests asked for with one mutant on, and says which test saw it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Script } from 'node:vm';
import type { Question, Ran, Reading, Said } from './said.js';

/** What bundle and runner share: the mutant that is on, the places reached, the file whose tests are gathered. */
interface Switch {
  on: number;
  readonly reached: Uint8Array;
  file: string;
  /** How long tests take, for the runner itself. */
  readonly clock: () => number;
  /** A test has asked for the time. */
  asksTime: boolean;
}

const [bundle = '', mutants = '0'] = process.argv.slice(2);
const script = new Script(`(function (require, module, exports) {${readFileSync(bundle, 'utf8')}\n})`, {
  filename: bundle,
});
const fileOf = (test: string): string => test.slice(0, test.indexOf(' > '));
const read = script.runInThisContext() as (require: unknown, module: unknown, exports: unknown) => void;
/** The time this process was given, in ms: on a busy machine that of the wall tells nothing. */
const clock = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
const now = performance.now.bind(performance);
/** The places reached while the tests of each file are read: some files work something out before their first test. */
const loads = new Map<string, readonly number[]>();
let loading = '';
const state: Switch = {
  on: 0,
  reached: new Uint8Array(Number(mutants) + 1),
  get file() {
    return loading;
  },
  set file(next) {
    loads.set(loading, [...(loads.get(loading) ?? []), ...places()]);
    loading = next;
  },
  clock,
  asksTime: false,
};
performance.now = () => {
  state.asksTime = true;
  return now();
};
(globalThis as unknown as { __switch: Switch }).__switch = state;

/** The places reached since last asked. */
function places(): readonly number[] {
  const found: number[] = [];
  state.reached.forEach((hit, id) => {
    if (hit === 1) found.push(id);
  });
  state.reached.fill(0);
  return found;
}

let toldAt = 0;

/** Tells that the tests go on, twice a second at most: a mutant that loops is known by its silence. */
function goesOn(): void {
  if (clock() - toldAt < 500) return;
  toldAt = clock();
  process.send?.('goes on');
}

/** The comparisons that the matchers know: those of one reading only. */
function testers(): unknown[] {
  const matchers = Symbol.for('$$jest-matchers-object') as unknown as keyof typeof globalThis;
  return (
    (globalThis[matchers] as { readonly customEqualityTesters: unknown[] } | undefined)?.customEqualityTesters ?? []
  );
}

function readAnew(): Reading {
  testers().length = 0;
  const module = { exports: {} };
  read(createRequire(bundle), module, module.exports);
  return { ...(module.exports as Omit<Reading, 'loaded' | 'testers'>), loaded: new Set(), testers: [...testers()] };
}

/** The reading that questions share: its files are read without a mutant. */
let kept: Reading | undefined;

/** Reads a file of tests, if it was not yet; in a fresh reading with the mutant on. */
async function readFile(reading: Reading, file: string, mutant: number): Promise<void> {
  if (reading.loaded.has(file)) return;
  state.on = mutant;
  reading.load[file]?.();
  reading.loaded.add(file);
  state.file = '';
  await reading.prepareTests();
  goesOn();
}

/** One run of the tests with the mutant on: all of them, or one by one until one fails, so that no file is read in vain. */
async function run({ mutant, tests, slow, anew }: Question): Promise<Said> {
  places();
  loads.clear();
  try {
    state.on = anew ? mutant : 0;
    const reading = anew ? readAnew() : (kept ?? readAnew());
    if (!anew) kept = reading;
    testers().splice(0, testers().length, ...reading.testers);
    if (tests === undefined) {
      for (const file of Object.keys(reading.load)) await readFile(reading, file, anew ? mutant : 0);
      state.on = mutant;
      return { ...(await reading.runTests(tests, places, goesOn, slow)), atLoad: [...loads] };
    }
    const ran: Ran[] = [];
    for (const test of tests) {
      await readFile(reading, fileOf(test), anew ? mutant : 0);
      state.on = mutant;
      const said = await reading.runTests([test], places, goesOn);
      if (said.failed !== undefined) return { failed: said.failed, ran, atLoad: [] };
      ran.push(...said.ran);
    }
    return { ran, atLoad: [] };
  } catch (problem) {
    kept = undefined;
    return { failed: `loading: ${problem instanceof Error ? problem.message : 'a throw'}`, ran: [], atLoad: [] };
  }
}

/** The tests that are known to pass by themselves in a fresh reading without any mutant. */
const alone = new Set<string>();

/** As `run`, but only a failure that the mutant is to blame for counts. */
async function answer(question: Question): Promise<Said> {
  const said = await run(question);
  const { tests, anew } = question;
  if (said.failed === undefined || tests === undefined || !tests.includes(said.failed)) return said;
  if (anew && alone.has(said.failed)) return said;
  const without = await run({ mutant: 0, tests: [said.failed], anew });
  if (without.failed === undefined) {
    if (anew) alone.add(said.failed);
    return said;
  }
  // An earlier mutant left something behind, or the test rests on one before it.
  kept = undefined;
  if (!anew) return answer({ ...question, anew: true });
  return answer({ ...question, tests: tests.filter((name) => name !== said.failed) });
}

process.on('message', (question: Question) => {
  void answer(question).then((said) => process.send?.(said));
});
process.send?.('ready');
