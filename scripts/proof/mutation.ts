/** What the recorded runs of mutation left alive: every survivor, and why where that is known. */
import { aliveBecause, noDifferenceBecause } from '../mutate/reasons.js';
import { keyOf, readSurvivors, type Survivor } from '../mutate/survivors.js';
import { readResults } from './record.js';
import { row, table } from './table.js';

const code = (text: string): string => (text.includes('`') ? `\`\` ${text} \`\`` : `\`${text}\``);
const cells = ({ file, source, what }: Survivor): readonly string[] => [
  file.replace(/^src\//, ''),
  code(source),
  code(what),
];

const differs = (each: Survivor): boolean => noDifferenceBecause[keyOf(each)] === undefined;

/** One chapter: what its tests did not see in the recorded run, without the changes that make no difference. */
function alive([chapter, survivors]: readonly [string, readonly Survivor[]]): string {
  const rows = survivors
    .filter(differs)
    .map((each) => row(...cells(each), aliveBecause[keyOf(each)] ?? 'not looked into'));
  return rows.length === 0
    ? `#### ${chapter}\n\nNone.`
    : `#### ${chapter}\n\n${table(['file', 'line', 'change', 'why it may matter'], rows)}`;
}

/** Each chapter with what its recorded run found, and what is known today of the changes that lived. */
function summary(): string {
  const survivors = readSurvivors();
  const rows = Object.entries(readResults()).flatMap(([name, { command, date, figures }]) => {
    const chapter = /^mutation (\w+)$/.exec(name)?.[1];
    if (chapter === undefined) return [];
    const { mutants = 0, asked = 0, killed = 0 } = figures;
    const lived = survivors[chapter];
    if (lived === undefined)
      return [row(chapter, mutants, asked, killed, 'no list was kept', '', `\`${command}\``, date)];
    const alike = lived.filter((each) => !differs(each)).length;
    const share = `${Math.floor((100 * Number(killed)) / Math.max(1, Number(asked) - alike))} %`;
    return [row(chapter, mutants, asked, killed, alike, share, `\`${command}\``, date)];
  });
  return table(
    ['chapter', 'mutants', 'asked', 'killed', 'make no difference', 'killed of the others', 'command', 'run on'],
    rows,
  );
}

const noDifference = (): readonly string[] =>
  Object.entries(noDifferenceBecause).map(([key, reason]) => {
    const [file = '', ...rest] = key.split(' | ');
    return row(...cells({ file, source: rest.slice(0, -1).join(' | '), what: rest.at(-1) ?? '' }), reason);
  });

export function mutation(): string {
  return `## Mutation

One expression of a chapter is changed at a time (comparisons, branches, sums, decisions left out of a list) and the tests of that chapter
must fail. A sample is drawn by a seed. What makes no difference is counted by what is known today. \`npm run mutate -- CHAPTER FILEPART\`
asks every mutant of some files. A change that stands twice on the same line as written is numbered. Where a run says so, a mutant was asked of
so many seconds of the tests that reach it at most: more tests could only have killed more.

${summary()}

### Alive, and why it may matter

What lived in the recorded run of each chapter, but for the changes that make no difference.

${Object.entries(readSurvivors()).map(alive).join('\n\n')}

### Changes that make no difference

${table(['file', 'line', 'change', 'why no test can see it'], noDifference())}
`;
}
