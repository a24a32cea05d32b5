/**
 * Marks what a module works out at its top level as pure, so that a bundler may leave out what nobody uses.
 *
 * Every `const x = ...` of ours is pure: tables, maps, figures, codecs. Bundlers cannot know that of a call, nor of a property that
 * is read, and keep them all. Written as `const x = (() => ...)()` behind the mark they understand, each goes when its name is
 * unused. The sources stay as they are.
 */
import { readFile } from 'node:fs/promises';
import ts from 'typescript';

/** Expressions that a bundler takes for an effect when they are outside a function. */
const hasEffect = (node: ts.Node): boolean => {
  if (ts.isFunctionLike(node) || ts.isTypeNode(node)) return false;
  if (
    ts.isCallExpression(node) ||
    ts.isNewExpression(node) ||
    ts.isSpreadElement(node) ||
    ts.isSpreadAssignment(node) ||
    ts.isPropertyAccessExpression(node) ||
    ts.isElementAccessExpression(node) ||
    ts.isTemplateExpression(node)
  )
    return true;
  return ts.forEachChild(node, (child) => hasEffect(child) || undefined) ?? false;
};

/** The text of a module with its top-level values marked. */
export function withPureMarks(text: string, file: string): string {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ESNext, true);
  const places = source.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => declarationList.declarations)
    .flatMap(({ name, initializer }) =>
      initializer !== undefined && ts.isIdentifier(name) && hasEffect(initializer) ? [initializer] : [],
    );
  let marked = text;
  for (const { end, ...initializer } of places.map((node) => ({ start: node.getStart(), end: node.end })).reverse()) {
    const value = text.slice(initializer.start, end);
    marked = `${marked.slice(0, initializer.start)}/* @__PURE__ */ (() => (${value}))()${marked.slice(end)}`;
  }
  return marked;
}

interface Build {
  onLoad(
    options: { readonly filter: RegExp },
    load: (file: { readonly path: string }) => Promise<{ contents: string; loader: 'ts' | 'js' }>,
  ): void;
}

/** For the build: our modules, and those of fp-ts and io-ts that are built in. */
export const pureMarks = {
  name: 'pure marks',
  setup(build: Build): void {
    build.onLoad({ filter: /[\\/](src[\\/].*\.ts|(fp-ts|io-ts)[\\/]es6[\\/].*\.js)$/ }, async ({ path }) => ({
      contents: withPureMarks(await readFile(path, 'utf8'), path),
      loader: path.endsWith('.ts') ? 'ts' : 'js',
    }));
  },
};
