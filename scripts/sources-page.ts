/** The page of sources, from the tables themselves: what was read, what is second hand, what is from memory. */
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { Grade, Source, Table } from '../src/trace/index.js';
import { chapters } from './chapters.js';

const grades: readonly (readonly [Grade, title: string, explanation: string])[] = [
  ['A', 'Read at the source', 'Regulations, standards, government and research texts that were read.'],
  ['B', 'Read in print', 'Textbooks, trade press, manuals and reproduced regulations.'],
  ['C', 'Second hand', 'Web lists and secondary copies: look the text up before leaning on a figure.'],
  ['derived', 'Derived', 'Arithmetic and statics of our own, from what the working names.'],
  [
    'memory',
    'From memory',
    'No text was found. These figures were written down from memory or are common practice in the trade; verify them before anyone leans on them.',
  ],
];

interface Entry {
  readonly chapter: string;
  readonly table: Table<unknown>;
}

async function tablesOf(chapter: string): Promise<readonly Entry[]> {
  const file = `src/${chapter}/tables.ts`;
  if (!existsSync(file)) return [];
  const exported = (await import(pathToFileURL(file).href)) as Record<string, readonly Table<unknown>[] | undefined>;
  return (exported[`${chapter}Tables`] ?? []).map((table) => ({ chapter, table }));
}

/** Rows of a table may carry a grade of their own; those from memory are counted on the table's line. */
function fromMemory(rows: readonly unknown[]): string {
  const count = rows.filter(
    (row) => typeof row === 'object' && row !== null && 'grade' in row && row.grade === 'memory',
  ).length;
  return count === 0 ? '' : `, ${count} of them from memory`;
}

const heading = ({ title, edition, clause }: Source): string =>
  [title, edition, clause].filter((part) => part !== undefined).join(', ');

function sourceLines(source: Source, entries: readonly Entry[]): string {
  const tables = entries.map(
    ({ chapter, table }) =>
      `  - ${chapter}: ${table.name}, ${table.rows.length} ${table.rows.length === 1 ? 'row' : 'rows'}${fromMemory(table.rows)}; governs: ${table.authoritative}`,
  );
  const about = [source.note, source.address].filter((part) => part !== undefined).map((part) => `  ${part}`);
  return [`- **${heading(source)}**`, ...about, ...tables].join('\n');
}

/** The whole page; the same tables give the same text. */
export async function sourcesPage(): Promise<string> {
  const entries = (await Promise.all(chapters.map(({ name }) => tablesOf(name)))).flat();
  const sections = grades.flatMap(([grade, title, explanation]) => {
    const ofGrade = entries.filter(({ table }) => table.source.grade === grade);
    if (ofGrade.length === 0) return [];
    const sources = [...new Map(ofGrade.map(({ table }) => [heading(table.source), table.source])).entries()];
    const lines = sources.map(([name, source]) =>
      sourceLines(
        source,
        ofGrade.filter(({ table }) => heading(table.source) === name),
      ),
    );
    return [`## ${title} (${grade})\n\n${explanation}\n\n${lines.join('\n')}\n`];
  });
  return `# Sources of the tables\n\nWritten by \`npm run sources\` from the tables in \`src\`; do not edit. "Governs" names the column that counts where two columns\nsay the same thing in two units. A figure that only a formula uses names its source in the working and in its doc comment.\n\n${sections.join('\n')}`;
}
