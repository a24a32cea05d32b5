/** The tests as text: what each file is about, what it checks, and the sources of the checks. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

export interface TestFile {
  readonly file: string;
  /** The first sentence of its head. */
  readonly about: string;
  /** Titles of its groups and of its tests, as written; rows of a table are counted. */
  readonly groups: readonly string[];
  readonly tests: readonly string[];
  readonly checks: number;
}

const firstComment = (text: string): string =>
  (/^\/\*\*?([\s\S]*?)\*\//.exec(text)?.[1] ?? '')
    .replace(/\n?\s*\*\s?/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** `it`, `it.each(rows)`, `describe`: its name, its title, and how many rows it is asked of. */
function callOf(
  node: ts.CallExpression,
): { readonly name: string; readonly title: string; readonly rows: number } | undefined {
  const [title] = node.arguments;
  if (title === undefined || !ts.isStringLiteralLike(title)) return undefined;
  const callee = node.expression;
  const isEach = ts.isCallExpression(callee) && callee.expression.getText().endsWith('.each');
  const [rows] = isEach ? callee.arguments : [];
  const name = (isEach ? callee.expression.getText() : callee.getText()).split('.')[0] ?? '';
  return {
    name,
    title: title.text,
    rows: rows !== undefined && ts.isArrayLiteralExpression(rows) ? rows.elements.length : 1,
  };
}

function read(file: string): TestFile {
  const text = readFileSync(file, 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found = { groups: [] as string[], tests: [] as string[], checks: 0 };
  const visit = (node: ts.Node): void => {
    const call = ts.isCallExpression(node) ? callOf(node) : undefined;
    if (call?.name === 'describe') found.groups.push(call.title);
    if (call?.name === 'it') {
      found.tests.push(call.title);
      found.checks += call.rows;
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return { file, about: firstComment(text), ...found };
}

/** Every test file of a folder. */
export const testsIn = (folder: string): readonly TestFile[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.test.ts'))
    .sort()
    .map((file) => read(join(folder, file).replaceAll('\\', '/')));
