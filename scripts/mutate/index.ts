/**
 * Are the tests of a chapter able to tell it from a slightly wrong one?
 *
 *   npm run mutate -- tires              all mutants of a chapter
 *   npm run mutate -- tires 60 7         a sample of 60, by the seed 7
 *   npm run mutate -- tires load-at      those of the files whose path holds these letters; not recorded
 *
 * Every mutant is one changed expression. It is asked of the tests that reach its place, those that killed most so far
 * first, for ten seconds of tests at most, and is killed when a test fails, when loading fails, or when it takes too long.
 *
 * What lives is listed in out/mutate, and of a recorded run in docs/proof/survivors and docs/proof.md, with what reasons.json
 * (makes no difference) or alive.json (why it may matter) say of it.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chanceOf } from '../../tests/helpers/random/chance.js';
import { record } from '../proof/record.js';
import { asker } from './ask.js';
import { bundleOf, testsOf } from './bundle.js';
import type { Mutant } from './instrument.js';
import { orderOf } from './order.js';
import { reachOf } from './reach.js';
import { noDifferenceBecause } from './reasons.js';
import type { Question, Ran, Said } from './said.js';
import { keepSurvivors, keyOf } from './survivors.js';

const [chapter = '', count, seed = '1'] = process.argv.slice(2);
const files = count !== undefined && Number.isNaN(Number(count)) ? count : undefined;
const folder = join(import.meta.dirname, '../../out/mutate');
mkdirSync(folder, { recursive: true });
const bundle = join(folder, `${chapter}.cjs`);

function sampled(mutants: readonly Mutant[]): readonly Mutant[] {
  if (count === undefined) return mutants;
  if (files !== undefined) return mutants.filter(({ file }) => file.includes(files));
  const chance = chanceOf(Number(seed));
  const keyed = mutants.map((mutant) => ({ mutant, key: chance.whole(0, 1_000_000) }));
  return keyed
    .sort((a, b) => a.key - b.key)
    .slice(0, Number(count))
    .map(({ mutant }) => mutant);
}

const { code, mutants } = await bundleOf(chapter);
writeFileSync(bundle, code);
const { ask, end } = asker(bundle, mutants.length);

/** Found too slow by an earlier run here; delete the file to have them measured again. */
const slowFile = join(folder, `${chapter}-slow.json`);
const slow = existsSync(slowFile) ? (JSON.parse(readFileSync(slowFile, 'utf8')) as readonly string[]) : [];
const began = performance.now();
const plain = await ask({ mutant: 0, slow, anew: true }, 900_000);
if (plain === 'too long' || plain.failed !== undefined)
  throw new Error(`the tests fail without any mutant: ${plain === 'too long' ? plain : plain.failed}`);
const baseline = performance.now() - began;
console.log(
  `${chapter}: ${testsOf(chapter).length} files, ${plain.ran.length} tests, ${mutants.length} mutants, ${Math.round(baseline)} ms`,
);

/** One mutant is asked of tests that take so long together, in ms of a processor and without a mutant. What is left out can only make it live. */
const most = 10_000;
/** A test that takes more than a third of that, one of other chapters a tenth, is left out. */
const isQuick = ({ name, took }: Ran): boolean => took < (name.startsWith(`tests/${chapter}/`) ? most / 3 : most / 10);
const asking = plain.ran.filter(isQuick);
const notAsked = [...slow, ...plain.ran.filter((ran) => !isQuick(ran)).map(({ name }) => name)];
for (const name of notAsked) console.log(`slow, not asked: ${name}`);
writeFileSync(slowFile, JSON.stringify(notAsked, null, 1));

const took = new Map(asking.map(({ name, took }) => [name, took]));
const { reachedBy, early } = reachOf(plain, asking);
/** Longer than any test takes; a test without an answer for so long is in a loop. */
const limit = 15_000 + 6 * Math.max(...took.values());
const order = orderOf(took);

/** Silence alone is no proof on a machine that is busy: the mutant is asked once more, in a new process with more time. */
async function askTwice(question: Question): Promise<Said | 'too long'> {
  const said = await ask(question, limit);
  return said === 'too long' ? ask({ ...question, anew: true }, 4 * limit) : said;
}

/** Mutants that lived, and that more tests reach than were asked. */
let cut = 0;

/**
 * Whether every test passes with the mutant on. First those that are most likely to see it; then those of the chapter itself
 * in a fresh reading, as what was worked out before the mutant was on would hide it; then the others and the slow ones.
 */
async function lives({ id, file, line, what }: Mutant): Promise<boolean> {
  const reaching = order.byWorth(reachedBy.get(id) ?? [], file);
  const tests = order.within(most, reaching);
  const own = tests.filter((name) => name.startsWith(`tests/${chapter}/`));
  const first = order.within(most / 5, tests);
  const ownQuick = order.within(most / 2, own);
  const rest = tests.filter((name) => !first.includes(name) && !ownQuick.includes(name));
  const rounds = early.has(id)
    ? [{ mutant: id, tests, anew: true }]
    : [
        { mutant: id, tests: first, anew: false },
        { mutant: id, tests: ownQuick, anew: true },
        { mutant: id, tests: rest, anew: false },
      ];
  if (tests.length === 0) console.log('no test reaches:');
  for (const round of rounds.filter((each) => each.tests.length > 0)) {
    const said = await askTwice(round);
    if (said === 'too long') {
      console.log(`killed by its silence: ${file}:${line} ${what}`);
      return false;
    }
    if (said.failed === undefined && said.ran.length === 0)
      throw new Error(`no test ran: ${round.tests[0]} and others`);
    if (said.failed === undefined) continue;
    order.killed(said.failed);
    return false;
  }
  if (tests.length < reaching.length) {
    cut += 1;
    console.log(`asked of ${tests.length} of the ${reaching.length} tests that reach it:`);
  }
  return true;
}

/** A sample is in random order: one that is stopped by an interrupt is a smaller sample, and is recorded as such. */
let stopped = false;
process.once('SIGINT', () => {
  stopped = true;
});

const lived: Mutant[] = [];
const wanted = sampled(mutants);
let asked = 0;
for (const mutant of wanted) {
  if (stopped) break;
  if (await lives(mutant)) {
    lived.push(mutant);
    const known = noDifferenceBecause[keyOf(mutant)] === undefined ? 'lives' : 'makes no difference';
    console.log(`${known}: ${mutant.file}:${mutant.line} ${mutant.what} | ${mutant.source}`);
  }
  asked += 1;
  if (asked % 10 === 0) console.log(`${asked} of ${wanted.length}, ${lived.length} live`);
}
end();
const equivalent = lived.filter((mutant) => noDifferenceBecause[keyOf(mutant)] !== undefined);
const killed = asked - lived.length;
writeFileSync(join(folder, `${chapter}.json`), JSON.stringify(lived.map(keyOf), null, 1));
console.log(
  `${killed} of ${asked} killed, ${equivalent.length} of the others make no difference, ${Math.round((performance.now() - began) / 1000)} s`,
);
if (files === undefined) {
  keepSurvivors(chapter, lived);
  record(
    `mutation ${chapter}`,
    `npm run mutate -- ${[chapter, ...(count === undefined ? [] : [asked, seed])].join(' ')}`,
    {
      mutants: mutants.length,
      asked,
      killed,
      'make no difference': equivalent.length,
      live: lived.length - equivalent.length,
      'seconds of tests a mutant': most / 1000,
      'lived that more tests reach': cut,
      'killed of those that make one': `${Math.floor((100 * killed) / Math.max(1, asked - equivalent.length))} %`,
    },
  );
}
