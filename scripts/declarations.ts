/**
 * The types of the package, one file a source file, written twice: `dist/types` for importers, `dist/types-cjs` for those that
 * require. Each subpath has a file that points there. A bundler of declarations takes minutes and gigabytes for the same.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { chapters } from './chapters.js';
import { indexFor } from './code.js';

const folders = ['types', 'types-cjs'] as const;

function program(): ts.Program {
  const { config } = ts.readConfigFile('tsconfig.json', (file) => readFileSync(file, 'utf8')) as { config: unknown };
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, '.');
  return ts.createProgram(
    chapters.map(({ file }) => file),
    { ...options, noEmit: false, declaration: true, emitDeclarationOnly: true, rootDir: 'src', outDir: 'types' },
  );
}

/** Writes the declarations into a folder that holds the built code. */
export function writeDeclarations(outDir: string): void {
  const { emitSkipped, diagnostics } = program().emit(undefined, (file, text) => {
    const inside = relative('types', file);
    for (const folder of folders) {
      const to = join(outDir, folder, inside);
      mkdirSync(dirname(to), { recursive: true });
      writeFileSync(to, text);
    }
  });
  const [first] = diagnostics;
  if (emitSkipped || first !== undefined)
    throw new Error(`declarations: ${ts.flattenDiagnosticMessageText(first?.messageText ?? 'none were written', ' ')}`);
  writeFileSync(join(outDir, 'types-cjs/package.json'), '{ "type": "commonjs" }\n');
  for (const { name, file } of chapters) {
    const inside = file.replace(/^src\//, '').replace(/\.ts$/, '.js');
    writeFileSync(join(outDir, `${name}.d.ts`), `export * from './types/${inside}';\n`);
    writeFileSync(join(outDir, `${name}.d.cts`), `export * from './types-cjs/${inside}';\n`);
  }
  writeFileSync(join(outDir, 'index.d.ts'), indexFor('js'));
  writeFileSync(join(outDir, 'index.d.cts'), indexFor('cjs'));
}
