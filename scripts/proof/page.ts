/** The page of proof, put together from the tests, the tables and the recorded results of long runs. */
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { Table } from '../../src/trace/index.js';
import { chapters } from '../chapters.js';
import { mutation } from './mutation.js';
import { remarksIn } from './printed.js';
import { type Result, readResults } from './record.js';
import { row, table } from './table.js';
import { type TestFile, testsIn } from './tests.js';

const checksOf = (files: readonly TestFile[]): number => files.reduce((sum, { checks }) => sum + checks, 0);

/** The groups of a file name the source of each check. */
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

Other measurements: \`npm run coverage\` (floors: lines 98 %, branches 94 %), \`npm run same-figures\` (5,200 random specs against stored digests), \`npm run bench\`
(speed, side by side).
`;
}

/** The whole page; the same tests, tables and results give the same text. */
export async function proofPage(): Promise<string> {
  const head = `# Proof

Written by \`npm run proof\`; do not edit. What was checked against the outside, what was found wrong there, what rests on memory, which laws
hold, and what the long runs found.
`;
  return [head, publishedValues(), misprints(), await memory(), laws(), longRuns(), mutation()].join('\n');
}
