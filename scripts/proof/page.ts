/** The page of proof, put together from the tests, the tables and the recorded results of long runs. */
import { existsSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { Table } from '../../src/trace/index.js';
import { chapters } from '../chapters.js';
import { remarksIn } from './printed.js';
import { type Result, readResults } from './record.js';
import { type TestFile, testsIn } from './tests.js';

const cell = (text: string): string => text.replace(/\|/g, '\\|').replace(/\s+/g, ' ').trim();
const row = (...cells: readonly (string | number)[]): string =>
  `| ${cells.map((each) => cell(String(each))).join(' | ')} |`;
const table = (head: readonly string[], rows: readonly string[]): string =>
  [row(...head), `|${head.map(() => '---').join('|')}|`, ...rows].join('\n');

const checksOf = (files: readonly TestFile[]): number => files.reduce((sum, { checks }) => sum + checks, 0);

/** The groups of a file name the source beside the check. */
function publishedValues(): string {
  const [worked, tables] = [testsIn('tests/worked'), testsIn('tests/tables')];
  const rows = (files: readonly TestFile[]): readonly string[] =>
    files.map(({ file, about, groups, checks }) =>
      row(`[${file.replace(/^tests\//, '')}](../${file})`, about, groups.slice(0, 4).join('; '), checks),
    );
  return `## Published values

Worked examples and printed figures of others (${checksOf(worked)} checks and tables of checks), and every shipped table typed a second time from its source and
compared whole (${checksOf(tables)}). A row of a table test stands for many figures.

**Tolerance.** A figure that a source prints as a definition or a table row is compared exactly. A figure that a source has worked
out and rounded is compared at the digits it prints, because it carried more than it shows; where a test allows more (a
handbook section with its corners left square, an iteration cut short), it names the gap and why beside the check. Where two columns
of one row say the same thing in two units, the column that the source calls its own governs and the other is not compared.

### Worked examples

${table(['tests', 'about', 'of what, and from where', 'checks'], rows(worked))}

### Tables, typed twice

${table(['tests', 'about', 'of what, and from where', 'checks'], rows(tables))}
`;
}

function misprints(): string {
  const rows = remarksIn('src', /misprint|disputed|second copy prints|stands below|disagree/i);
  const found = [
    ...rows.filter(({ file }) => /\/data\/|wheel-hardware|stock\/board/.test(file) && !file.includes('shape.ts')),
    ...remarksIn('tests/worked', /misprint|prints a wrong|wrong one in print/i),
    ...remarksIn('tests/tables', /misprint|misread/i),
  ];
  return `## Misprints and disputes found in the sources

${found.map(({ file, says }) => `- ${says.split(' @')[0]} (\`${file}\`)`).join('\n')}
`;
}

const isFromMemory = (each: unknown): boolean =>
  typeof each === 'object' && each !== null && 'grade' in each && each.grade === 'memory';

async function memory(): Promise<string> {
  const lines: string[] = [];
  for (const { name } of chapters) {
    const file = `src/${name}/tables.ts`;
    if (!existsSync(file)) continue;
    const exported = (await import(pathToFileURL(file).href)) as Record<string, readonly Table<unknown>[] | undefined>;
    for (const each of exported[`${name}Tables`] ?? []) {
      const rows = isFromMemory(each.source) ? each.rows.length : each.rows.filter(isFromMemory).length;
      if (rows > 0) lines.push(`- ${name}: ${each.name}, ${rows} of ${each.rows.length} rows`);
    }
  }
  const constants = remarksIn('src', /from memory|common practice, no source/i).filter(
    ({ file }) => !file.includes('/data/'),
  );
  return `## What rests on memory or on practice alone

Rows and figures that nobody has read in print for this library; an answer that uses one says so. [sources.md](sources.md) has all sources.

${lines.join('\n')}

In the code: ${constants.length} figures and functions call themselves common practice or from memory:

${[...new Set(constants.map(({ file }) => `\`${file}\``))].sort().join(', ')}.
`;
}

function laws(): string {
  const files = testsIn('tests/laws');
  const lines = files.map(
    ({ file, about, tests }) =>
      `- [${file.replace(/^tests\//, '')}](../${file}): ${about} ${tests.map((each) => `*${each}*`).join('; ')}`,
  );
  const count = files.reduce((sum, { tests }) => sum + tests.length, 0);
  return `## Laws

${count} laws, each asked of random figures, of every row of a table, or of random specs (\`tests/helpers/random-specs.ts\`: ball and gooseneck, one to
three axles, tow vehicle, bars, off level, metric, cut lists, several pieces, ratings on ties). The suite asks a few; the runs
below ask many.

${lines.join('\n')}
`;
}

const figuresOf = ({ figures }: Result): string =>
  Object.entries(figures)
    .map(([name, figure]) => `${name} ${typeof figure === 'number' ? figure.toLocaleString('en-US') : figure}`)
    .join(', ');

function longRuns(): string {
  const rows = Object.entries(readResults()).map(([name, result]) =>
    row(name, figuresOf(result), `\`${result.command}\``, result.date),
  );
  return `## Long runs

Each figure with the command that repeats it and the day it was run. A command records its result in \`docs/proof/results.json\`; this page is written from
there by \`npm run proof\`.

${table(['what', 'found', 'command', 'run on'], rows)}

Mutation: one expression of a chapter is changed at a time (comparisons, branches, sums, decisions left out of a list) and the tests of
that chapter must fail. A sample is drawn by a seed and says how many mutants there are in all. What lives is printed with its
file and line; those that make no difference stand below with the reason.

Other measurements: \`npm run coverage\` (floors: lines 97 %, branches 91 %), \`npm run same-figures\` (5,200 random specs against stored digests), \`npm run bench\`
(speed, side by side).
`;
}

/** The changes that no test can see, by file and line as written. */
function noDifference(): string {
  const file = new URL('../mutate/reasons.json', import.meta.url);
  const reasons = JSON.parse(readFileSync(file, 'utf8')) as Record<string, string>;
  const rows = Object.entries(reasons).map(([key, reason]) => {
    const [where = '', line = '', what = ''] = key.split(' | ');
    return row(where.replace(/^src\//, ''), `\`${line}\``, `\`${what}\``, reason);
  });
  return `### Changes that make no difference

${table(['file', 'line', 'change', 'why no test can see it'], rows)}
`;
}

/** The whole page; the same tests, tables and results give the same text. */
export async function proofPage(): Promise<string> {
  const head = `# Proof

Written by \`npm run proof\`; do not edit. What was checked against the outside, what was found wrong there, what rests on memory, which laws
hold, and what the long runs found.
`;
  return [head, publishedValues(), misprints(), await memory(), laws(), longRuns(), noDifference()].join('\n');
}
