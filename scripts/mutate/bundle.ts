/** The tests of a chapter and the library in one file, every mutant of the chapter behind a switch. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { build, type Plugin } from 'esbuild';
import { placed } from '../placed.js';
import { instrument, type Mutant } from './instrument.js';

const project = join(import.meta.dirname, '../..');

/** Not mutated: rows, lists of exports, sentences for people. */
const leftOut = /(\/data\/|\/index\.ts$|\/(errors|words|tables|rows|cautions)\.ts$|-words\.ts$|-errors\.ts$)/;
/** Not run: what packs, installs, starts other programs, reads documents or asks for soundness alone. */
const notRun =
  /tests\/(package|docs|hosts|fuzz|examples|types)\/|same-figures|large-input|random-specs\.test|oracle\/(random|same)|figures\/page/;

const filesUnder = (folder: string, ending: string): readonly string[] =>
  readdirSync(join(project, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending))
    .map((file) => join(folder, file))
    .sort();

/** Code above an assessment, which no law over assessments reaches. */
const above: ReadonlySet<string> = new Set(['study', 'choose', 'figures', 'print', 'command']);

/** The tests of the chapter, and what asks across chapters and imports it: laws, published examples and tables. */
export function testsOf(chapter: string): readonly string[] {
  const imports = new RegExp(`from '[./]*src/(${above.has(chapter) ? chapter : `${chapter}|assessment`})[/.]`);
  const crosses = (file: string): boolean =>
    /^tests\/(laws|worked|tables|oracle)\//.test(file) && imports.test(readFileSync(join(project, file), 'utf8'));
  const all = filesUnder('tests', '.test.ts').filter((file) => !notRun.test(file));
  const mine = all.filter((file) => file.startsWith(`tests/${chapter}/`));
  return [...mine, ...all.filter((file) => !mine.includes(file) && crosses(file))];
}

/** Which mutant lives, and which places were reached; both live outside the bundle, so that it can be read again. */
const banner = `const __switch = globalThis.__switch;
function __mutant(id) { __switch.reached[id] = 1; return __switch.on === id; }`;

/** Builds the bundle; its text, when evaluated, exports what runs tests, and what reads each file of them. */
export async function bundleOf(
  chapter: string,
): Promise<{ readonly code: string; readonly mutants: readonly Mutant[] }> {
  const mutants: Mutant[] = [];
  // In the order of their paths, so that a mutant has the same number in every build of the same files.
  const instrumented = new Map(
    filesUnder('src', '.ts').flatMap((file) => {
      const isMutated = (file.startsWith(`src/${chapter}/`) || file === `src/${chapter}.ts`) && !leftOut.test(file);
      if (!isMutated) return [];
      const done = instrument(file, readFileSync(join(project, file), 'utf8'), mutants.length + 1);
      mutants.push(...done.mutants);
      return [[join(project, file), done.text] as const];
    }),
  );
  const shim = join(project, 'scripts/mutate/shim.ts');
  const plugin: Plugin = {
    name: 'mutants',
    setup: ({ onLoad, onResolve }) => {
      onResolve({ filter: /^vitest$/ }, () => ({ path: shim }));
      onResolve({ filter: /^trailer-ratings/ }, ({ path }) => {
        const [, name = 'index'] = path.split('/');
        return {
          path: join(project, 'src', name === 'index' || name === 'errors' ? `${name}.ts` : `${name}/index.ts`),
        };
      });
      onLoad({ filter: /\/(src|tests|examples|scripts)\/.*\.ts$/ }, ({ path }) => {
        const text = instrumented.get(path) ?? readFileSync(path, 'utf8');
        const file = path.endsWith('.test.ts') ? relative(project, path) : '';
        return { contents: `__switch.file = ${JSON.stringify(file)};\n${placed(text, path)}`, loader: 'ts' };
      });
    },
  };
  const entry = [
    `import ${JSON.stringify(join(project, 'tests/helpers/figures-in-tests.ts'))};`,
    `import { prepareTests, runTests } from ${JSON.stringify(shim)};`,
    `const load = {${testsOf(chapter).map(
      (file) => `${JSON.stringify(file)}: () => require(${JSON.stringify(resolve(project, file))})`,
    )}};`,
    'module.exports = { prepareTests, runTests, load };',
  ].join('\n');
  const built = await build({
    stdin: { contents: entry, resolveDir: project, loader: 'ts' },
    bundle: true,
    write: false,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    banner: { js: banner },
    logLevel: 'error',
    ignoreAnnotations: true, // the package calls itself free of side effects, and tests are nothing else
    plugins: [plugin],
    external: ['esbuild', 'typescript', 'playwright-core', 'typedoc'],
  });
  return { code: built.outputFiles[0]?.text ?? '', mutants };
}
