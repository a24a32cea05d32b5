/** What the recorded runs of mutation left alive: every survivor, and why where that is known. */
import { aliveBecause, noDifferenceBecause } from '../mutate/reasons.js';
import { keyOf, readSurvivors, type Survivor } from '../mutate/survivors.js';
import { row, table } from './table.js';

const code = (text: string): string => (text.includes('`') ? `\`\` ${text} \`\`` : `\`${text}\``);
const cells = ({ file, source, what }: Survivor): readonly string[] => [
  file.replace(/^src\//, ''),
  code(source),
  code(what),
];

/** One chapter: what its tests did not see in the recorded run, without the changes that make no difference. */
function alive([chapter, survivors]: readonly [string, readonly Survivor[]]): string {
  const rows = survivors
    .filter((each) => noDifferenceBecause[keyOf(each)] === undefined)
    .map((each) => row(...cells(each), aliveBecause[keyOf(each)] ?? 'not looked into'));
  return rows.length === 0
    ? `#### ${chapter}\n\nNone.`
    : `#### ${chapter}\n\n${table(['file', 'line', 'change', 'why it may matter'], rows)}`;
}

const noDifference = (): readonly string[] =>
  Object.entries(noDifferenceBecause).map(([key, reason]) => {
    const [file = '', ...rest] = key.split(' | ');
    return row(...cells({ file, source: rest.slice(0, -1).join(' | '), what: rest.at(-1) ?? '' }), reason);
  });

export function mutation(): string {
  return `## Mutation

One expression of a chapter is changed at a time (comparisons, branches, sums, decisions left out of a list) and the tests of that chapter
must fail. A sample is drawn by a seed; its figures stand above, with how many mutants there are in all. \`npm run mutate -- CHAPTER FILEPART\`
asks every mutant of some files. A change that stands twice on the same line as written is numbered.

### Alive, and why it may matter

What lived in the recorded run of each chapter, but for the changes that make no difference.

${Object.entries(readSurvivors()).map(alive).join('\n\n')}

### Changes that make no difference

${table(['file', 'line', 'change', 'why no test can see it'], noDifference())}
`;
}
