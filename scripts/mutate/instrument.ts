/** A source file with every change of its expressions behind a switch: one build holds all mutants. */
import ts from 'typescript';
import { type Change, changesOf } from './sites.js';

export interface Mutant {
  readonly id: number;
  readonly file: string;
  readonly line: number;
  readonly what: string;
  /** The line of the source. */
  readonly source: string;
}

/** The switch: whether the mutant of this number lives. It also notes that the place was reached. */
const chosen = '__mutant';

/** Parts of a type, an import or a name are not expressions. */
const isOutside = (node: ts.Node): boolean =>
  ts.isTypeNode(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node);

function namesIn(file: ts.SourceFile): ReadonlySet<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isImportSpecifier(node) || ts.isFunctionDeclaration(node)) if (node.name) names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return names;
}

/** Instruments one file; ids go on from `first`. */
export function instrument(
  file: string,
  text: string,
  first: number,
): { readonly text: string; readonly mutants: readonly Mutant[] } {
  const parsed = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const names = namesIn(parsed);
  const lines = text.split('\n');
  const mutants: Mutant[] = [];
  const written = new Map<ts.Node, string>();

  /** The same change again of a line as written gets a number, so that a reason belongs to one change only. */
  const times = new Map<string, number>();
  function numbered(source: string, what: string): string {
    const time = (times.get(`${source} | ${what}`) ?? 0) + 1;
    times.set(`${source} | ${what}`, time);
    return time === 1 ? what : `${what} (${time})`;
  }

  /** A node unchanged, with its parts instrumented. */
  function asItStands(node: ts.Node): string {
    let [so, at] = ['', node.getStart()];
    const visit = (child: ts.Node): void => {
      so += text.slice(at, child.getStart()) + part(child);
      at = child.getEnd();
    };
    if (!isOutside(node)) ts.forEachChild(node, visit);
    return so + text.slice(at, node.getEnd());
  }

  function behindSwitch(node: ts.Node, plain: string, changes: readonly Change[]): string {
    const { line } = parsed.getLineAndCharacterOfPosition(node.getStart());
    const choices = changes.map(({ what, write }) => {
      const id = first + mutants.length;
      const source = (lines[line] ?? '').trim();
      mutants.push({ id, file, line: line + 1, what: numbered(source, what), source });
      return `${chosen}(${id}) ? (${write(part)}) : `;
    });
    return `(${choices.join('')}(${plain}))`;
  }

  function part(node: ts.Node): string {
    const known = written.get(node);
    if (known !== undefined) return known;
    const plain = asItStands(node);
    const changes = isOutside(node) ? [] : changesOf(node, names);
    const whole = changes.length === 0 || isName(node) ? plain : behindSwitch(node, plain, changes);
    written.set(node, whole);
    return whole;
  }

  const body = text.slice(0, parsed.getStart()) + asItStands(parsed);
  return { text: body, mutants };
}

/** A literal that is a key, or before `as const`-like syntax, keeps its form. */
const isName = (node: ts.Node): boolean =>
  (ts.isPropertyAssignment(node.parent) && node.parent.name === node) ||
  ts.isLiteralTypeNode(node.parent) ||
  ts.isEnumMember(node.parent);
