/** Writes the tables of units into docs/verify.html and docs/verify_answer.py, which verify answers without the library. */
import { readFileSync, writeFileSync } from 'node:fs';
import { answerFormat, answerVersion } from '../src/assessment/index.js';
import { bases } from '../src/trace/index.js';
import { products } from '../src/units/products.js';
import { unitList } from '../src/units/unit-list.js';

/** JSON that is a literal of both languages. */
const table = (value: unknown): string =>
  JSON.stringify(value).replaceAll('],"', '],\n  "').replaceAll('],[', '],\n  [');

const tables: readonly (readonly [name: string, text: string])[] = [
  ['FORMAT', JSON.stringify(answerFormat)],
  ['VERSION', String(answerVersion)],
  ['BASES', JSON.stringify(bases)],
  ['UNITS', table(unitList)],
  ['PRODUCTS', table(products)],
];

const between = (text: string, begin: string, end: string, lines: string): string =>
  `${text.slice(0, text.indexOf(begin) + begin.length)}\n${lines}\n${text.slice(text.indexOf(end))}`;

/** Both files as they must be, by their path. */
export function verifiers(): ReadonlyMap<string, string> {
  const [page, script] = ['docs/verify.html', 'docs/verify_answer.py'] as const;
  const mark = 'tables: written by `npm run verifiers`';
  return new Map([
    [
      page,
      between(
        readFileSync(page, 'utf8'),
        `/* ${mark} */`,
        '/* end of tables */',
        tables.map(([name, text]) => `const ${name} = ${text};`).join('\n'),
      ),
    ],
    [
      script,
      between(
        readFileSync(script, 'utf8'),
        `# ${mark}`,
        '# end of tables',
        tables.map(([name, text]) => `${name} = ${text}`).join('\n'),
      ),
    ],
  ]);
}

if (process.argv[1]?.endsWith('verifiers.ts') === true)
  for (const [file, text] of verifiers()) writeFileSync(file, text);
