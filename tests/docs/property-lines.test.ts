/** Every property of an exported interface of these chapters has a comment, because an editor shows only that. */
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const chapters = ['spec', 'assessment', 'choose', 'study'] as const;
const entryOf = (chapter: string): string => `${root}src/${chapter}/index.ts`;

const program = ts.createProgram(chapters.map(entryOf), {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  strict: true,
  noEmit: true,
  skipLibCheck: true,
});
const checker = program.getTypeChecker();

interface Property {
  readonly name: string;
  readonly line: string;
}

/** What stands in the doc comment before a property, without its stars. */
const lineOf = (member: ts.TypeElement): string =>
  ts
    .getJSDocCommentsAndTags(member)
    .map((each) => ts.getTextOfJSDocComment(each.comment) ?? '')
    .join(' ')
    .trim();

function propertiesOf(chapter: string): readonly Property[] {
  const file = program.getSourceFile(entryOf(chapter));
  const module = file && checker.getSymbolAtLocation(file);
  if (module === undefined) return [];
  return checker.getExportsOfModule(module).flatMap((named) => {
    const symbol = named.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(named) : named;
    return (symbol.declarations ?? [])
      .filter(ts.isInterfaceDeclaration)
      .flatMap(({ members }) =>
        members
          .filter((member) => ts.isPropertySignature(member) || ts.isMethodSignature(member))
          .map((member) => ({ name: `${symbol.name}.${member.name.getText()}`, line: lineOf(member) })),
      );
  });
}

describe.each(chapters)('the properties of the exported interfaces of %s', (chapter) => {
  const properties = propertiesOf(chapter);
  it('have their doc line, every one', () => {
    expect(properties.length).toBeGreaterThan(30);
    expect(properties.filter(({ line }) => line === '').map(({ name }) => name)).toEqual([]);
  });
  it('say it in words: a sentence, and not the name again', () => {
    const plain = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, '');
    const empty = properties.filter(
      ({ name, line }) => line.length < 8 || plain(line) === plain(name.replace(/^.*\./, '')),
    );
    expect(empty.map(({ name, line }) => [name, line])).toEqual([]);
  });
});
