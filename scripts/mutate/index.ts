/**
 * Are the tests of a chapter able to tell it from a slightly wrong one?
 *
 *   npm run mutate -- tires              all mutants of a chapter
 *   npm run mutate -- tires 60 7         a sample of 60, by the seed 7
 *
 * Every mutant is one changed expression; it is killed when a test fails, when loading fails, or when it takes too long.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chanceOf } from '../../tests/helpers/random/chance.js';
import { record } from '../proof/record.js';
import { bundleOf, testsOf } from './bundle.js';
import type { Mutant } from './instrument.js';

interface Said {
  readonly failed?: string;
  readonly took: Readonly<Record<string, number>>;
}

const [chapter = '', count, seed = '1'] = process.argv.slice(2);
const folder = join(import.meta.dirname, '../../out/mutate');
mkdirSync(folder, { recursive: true });
const bundle = join(folder, `${chapter}.cjs`);

let child: ChildProcess | undefined;

function started(): Promise<ChildProcess> {
  return new Promise((resolve) => {
    const made = fork(join(import.meta.dirname, 'child.ts'), [bundle], {
      execArgv: ['--import', 'tsx'],
      stdio: ['ignore', 'inherit', 'ignore', 'ipc'],
    });
    made.once('message', () => resolve(made));
  });
}

/** The answer to one mutant; a child that says nothing in time is ended and started anew. */
async function ask(mutant: number, order: readonly string[] | undefined, limit: number): Promise<Said | 'too long'> {
  child ??= await started();
  const asked = child;
  return new Promise((resolve) => {
    const end = (said: Said | 'too long'): void => {
      clearTimeout(timer);
      asked.removeAllListeners();
      if (said === 'too long') {
        asked.kill('SIGKILL');
        child = undefined;
      }
      resolve(said);
    };
    const timer = setTimeout(() => end('too long'), limit);
    asked.once('message', (said) => end(said as Said));
    asked.once('exit', () => end('too long'));
    asked.send({ mutant, order });
  });
}

function sampled(mutants: readonly Mutant[]): readonly Mutant[] {
  if (count === undefined) return mutants;
  const chance = chanceOf(Number(seed));
  const keyed = mutants.map((mutant) => ({ mutant, key: chance.whole(0, 1_000_000) }));
  return keyed
    .sort((a, b) => a.key - b.key)
    .slice(0, Number(count))
    .map(({ mutant }) => mutant);
}

/** What a survivor is known by when lines move: its file, its line as written, its change. */
const keyOf = ({ file, source, what }: Mutant): string => `${file} | ${source} | ${what}`;

const { code, mutants } = await bundleOf(chapter);
writeFileSync(bundle, code);
const began = performance.now();
const plain = await ask(0, undefined, 600_000);
if (plain === 'too long' || plain.failed !== undefined)
  throw new Error(`the tests fail without any mutant: ${plain === 'too long' ? plain : plain.failed}`);
const order = Object.entries(plain.took)
  .sort(([, a], [, b]) => a - b)
  .map(([name]) => name);
const baseline = performance.now() - began;
console.log(
  `${chapter}: ${testsOf(chapter).length} files, ${order.length} tests, ${mutants.length} mutants, ${Math.round(baseline)} ms`,
);

const lived: Mutant[] = [];
const asked = sampled(mutants);
for (const [i, mutant] of asked.entries()) {
  const said = await ask(mutant.id, order, Math.max(20_000, baseline * 6));
  if (said !== 'too long' && said.failed === undefined) {
    lived.push(mutant);
    console.log(`lives: ${mutant.file}:${mutant.line} ${mutant.what} | ${mutant.source}`);
  }
  if (i % 100 === 99) console.log(`${i + 1} of ${asked.length}, ${lived.length} live`);
}
child?.kill();
const reasons = JSON.parse(readFileSync(new URL('reasons.json', import.meta.url), 'utf8')) as Record<string, string>;
const equivalent = lived.filter((mutant) => reasons[keyOf(mutant)] !== undefined);
const killed = asked.length - lived.length;
writeFileSync(join(folder, `${chapter}.json`), JSON.stringify(lived.map(keyOf), null, 1));
console.log(`${killed} of ${asked.length} killed, ${equivalent.length} of the others make no difference`);
record(`mutation ${chapter}`, `npm run mutate -- ${process.argv.slice(2).join(' ')}`, {
  mutants: mutants.length,
  asked: asked.length,
  killed,
  'make no difference': equivalent.length,
  live: lived.length - equivalent.length,
});
