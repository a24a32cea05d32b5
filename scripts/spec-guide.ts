/** The tables of the guide to the spec, from the table of keys. */
import { keyRows, type SpecKey, specKeys } from '../src/spec/keys.js';
import { type PlacedRecord, specRecords } from '../src/spec/records.js';

const [from, to] = ['<!-- keys: made by `npm run keys` -->', '<!-- end of keys -->'];

const code = (text: string): string => (text.includes('`') ? text : `\`${text}\``);

/** The text of the example cell: JSON, or the words for a record or a list of records. */
function exampleOf({ example, kind }: SpecKey): string {
  if (example !== undefined) return code(JSON.stringify(example));
  return kind === 'list' ? 'a list' : 'a record';
}

function rowOf(key: SpecKey): string {
  const { must, what, where, without, example } = key;
  const cells = [
    `\`${key.key}\``,
    must ? 'yes' : '',
    what,
    example === undefined ? 'its own table below' : where,
    exampleOf(key),
    must ? 'the spec is refused' : without,
  ];
  return `| ${cells.join(' | ')} |`.replaceAll('|  |', '| |');
}

function sectionOf({ path, form, says }: PlacedRecord, others: readonly string[]): string {
  const about = keyRows.find(({ type }) => type === says.type)?.about;
  const title = path === '' ? 'spec' : path;
  const rows = specKeys.filter((key) => key.record === path && key.form === form);
  return [
    `## \`${title}\`${form === undefined ? '' : `: ${form}`}`,
    '',
    ...(others.length === 0 ? [] : [`The same at ${others.map((other) => `\`${other}\``).join(', ')}.`, '']),
    ...(about === undefined ? [] : [about, '']),
    '| key | must | what it is | where one reads it | example | without it |',
    '|---|---|---|---|---|---|',
    ...rows.map(rowOf),
    '',
  ].join('\n');
}

/** One section for each type of record, at its first path. */
function sections(): string {
  const byType = new Map<string, PlacedRecord[]>();
  for (const record of specRecords()) byType.set(record.says.type, [...(byType.get(record.says.type) ?? []), record]);
  return [...byType.values()]
    .map(([first, ...others]) =>
      first === undefined
        ? ''
        : sectionOf(
            first,
            others.map(({ path }) => path),
          ),
    )
    .join('\n');
}

/** The guide with its tables made anew. */
export function guideWith(guide: string): string {
  const [before = '', rest = ''] = guide.split(from);
  const [, after = ''] = rest.split(to);
  return `${before}${from}\n\n${sections()}\n${to}${after}`;
}
