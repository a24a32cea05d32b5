/**
 * The long form of tests/oracle: `npm run oracle`, or in parts by seed, `npm run oracle -- FROM COUNT`.
 *
 * Each spec is answered on two paths, as the library is and with every bound without end: all lines of both answers, of the
 * report and of the errors are compared. Of every tenth spec all bounds are checked against workings in 60 digits. Three of four specs
 * are random, the fourth is the plain or the demo trailer, in pounds or kilograms, with figures changed and moved onto ties.
 */
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { isLeft } from 'fp-ts/lib/Either.js';
import { assessJson } from '../src/assessment/index.js';
import { metric } from '../tests/helpers/metric.js';
import { type JsonSpec, randomSpec } from '../tests/helpers/random-specs.js';
import { heavier, tiltDeck } from '../tests/helpers/specs.js';
import { checkBounds, type FoundBounds } from '../tests/oracle/bounds-of.js';
import { edited } from '../tests/oracle/edited.js';
import type { Library } from '../tests/oracle/two-paths.js';
import { firstDifference, writtenOut } from '../tests/oracle/written-out.js';
import { tiltDeck as plainDeck } from '../tests/study/compared.js';
import { readResults, record } from './proof/record.js';

type Copy = Pick<Library, 'assessJson' | 'report' | 'boundOf'> & Pick<Library['units'], 'lb'>;

/** The doubles with bounds that have no end, so that no double is ever believed. */
const endless: Plugin = {
  name: 'endless bounds',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\?real$/ }, ({ path, resolveDir }) => ({
      path: join(resolveDir, path.replace('?real', '')),
      suffix: '?real',
    }));
    onLoad({ filter: /units\/doubles\.ts$/ }, async ({ path, suffix }) => {
      if (suffix === '?real') return undefined;
      const names = Object.keys((await import(pathToFileURL(path).href)) as object);
      const bounds = names.filter((each) => /^(bound|rounded)/.test(each));
      const others = names.filter((each) => !bounds.includes(each));
      const lines = bounds.map((each) => `export const ${each} = () => Infinity;`);
      return {
        contents: [...lines, `export { ${others.join(', ')} } from './doubles.ts?real';`].join('\n'),
        loader: 'ts',
        resolveDir: dirname(path),
      };
    });
  },
};

async function copyOf(name: string, plugins: Plugin[]): Promise<Copy> {
  const outfile = `out/oracle/${name}.mjs`;
  mkdirSync('out/oracle', { recursive: true });
  await build({
    entryPoints: ['tests/oracle/oracle-library.ts'],
    outfile,
    plugins,
    bundle: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'warning',
  });
  return (await import(pathToFileURL(outfile).href)) as Copy;
}

/** What an answer says, and how it prints. */
function told({ assessJson, report }: Copy, spec: unknown): { readonly lines: readonly string[]; decisions: number } {
  const assessed = assessJson(spec);
  if (isLeft(assessed)) return { lines: writtenOut(assessed.left), decisions: 0 };
  const text = report(assessed.right);
  return {
    lines: [...writtenOut(assessed.right), ...text.split('\n')],
    decisions: assessed.right.decisions.length,
  };
}

const [from = 0, count = 20_000] = process.argv.slice(2).map(Number);
const [exact, lazy] = [await copyOf('exact', [endless]), await copyOf('lazy', [])];
if (exact.boundOf(exact.lb(5)) !== Infinity || lazy.boundOf(lazy.lb(5)) !== 0) throw new Error('both go one way');
const bases: readonly unknown[] = [plainDeck, tiltDeck(), heavier(), metric(tiltDeck())];

function specOf(seed: number): JsonSpec {
  if (seed % 4 !== 3) return randomSpec(seed);
  const which = (seed - 3) / 4;
  return edited(bases[which % bases.length] as JsonSpec, which, lazy);
}

const found = { specs: 0, answered: 0, decisions: 0, lines: 0 };
const bounds: FoundBounds = { nodes: 0, exact: 0, wrong: [] };
const different: string[] = [];
for (let seed = from; seed < from + count && different.length < 20; seed += 1) {
  const spec = specOf(seed);
  const [mine, theirs] = [told(lazy, spec), told(exact, spec)];
  found.specs += 1;
  if (mine.lines.length > 100) found.answered += 1;
  found.decisions += mine.decisions;
  found.lines += mine.lines.length;
  const difference = firstDifference(mine.lines, theirs.lines);
  if (difference !== undefined) different.push(`seed ${seed}: ${difference}`);
  if (seed % 10 !== 0) continue;
  const answer = assessJson(spec);
  if (!isLeft(answer)) checkBounds(answer.right, bounds);
}
const wrong = [...different, ...bounds.wrong];
for (const each of wrong) console.log(each);
const { specs, answered, decisions, lines } = found;
console.log(
  `seeds ${from} to ${from + specs - 1}: ${answered} answered, ${decisions} decisions, ${lines} lines, ${different.length} differences; ${bounds.nodes} bounds, ${bounds.wrong.length} unsound`,
);

/** A part that begins where the last one ended is added to it. */
const before = from === 0 ? {} : (readResults()['oracle']?.figures ?? {});
const sum = (name: string, more: number): number => Number(before[name] ?? 0) + more;
if (from !== 0 && before['specs on both paths'] !== from) console.log('not recorded: the parts before are missing');
else
  record('oracle', `npm run oracle -- 0 ${from + specs}`, {
    'specs on both paths': from + specs,
    answered: sum('answered', answered),
    decisions: sum('decisions', decisions),
    'lines compared': sum('lines compared', lines),
    differences: sum('differences', different.length),
    'bounds checked in 60 digits': sum('bounds checked in 60 digits', bounds.nodes),
    'unsound bounds': sum('unsound bounds', bounds.wrong.length),
  });
process.exitCode = wrong.length === 0 ? 0 : 1;
