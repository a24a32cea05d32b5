/**
 * Do the supported versions of Node give the same answers? `npm run nodes`, or `npm run nodes -- BLOCKS`, so many blocks of a hundred
 * random specs each; ten without a count.
 *
 * Each version is taken from the npm registry (package `node`). It answers the random specs, whose digests are stored with the tests,
 * and the examples through the built package, as a module and by `require`, in a locale and a time zone of its own.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { placing } from './placed.js';
import { record } from './proof/record.js';

const blocks = Number(process.argv[2] ?? 10);
const project = join(import.meta.dirname, '..');
const folder = join(project, 'out/nodes');
mkdirSync(folder, { recursive: true });

const versions = [
  { version: '20', LC_ALL: 'C', TZ: 'UTC' },
  { version: '22', LC_ALL: 'tr_TR.UTF-8', TZ: 'Asia/Kolkata' },
  { version: '24', LC_ALL: 'de_DE.UTF-8', TZ: 'America/St_Johns' },
];

/** Prints what a Node answers: a digest a block, and one of the reports that the built package writes, in both module formats. */
const answers = `
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { digestOfBlock } from ${JSON.stringify(join(project, 'tests/helpers/outline-digests.ts'))};
const [blocks, dist, ...examples] = process.argv.slice(2);
const reportsBy = ({ assessment, errors, print, orThrow }) => {
  const hash = createHash('sha256');
  for (const file of examples) hash.update(print.report(orThrow(assessment.assess(JSON.parse(readFileSync(file, 'utf8'))))));
  return hash.digest('hex');
};
console.log(JSON.stringify({
  node: process.version,
  blocks: Array.from({ length: Number(blocks) }, (_, block) => digestOfBlock(block)),
  esm: reportsBy(await import(dist + '/index.js')),
  cjs: reportsBy(createRequire(import.meta.url)(dist + '/index.cjs')),
}));`;

const bundle = join(folder, 'answers.mjs');
await build({
  stdin: { contents: answers, resolveDir: project, loader: 'ts' },
  bundle: true,
  plugins: [placing],
  platform: 'node',
  format: 'esm',
  outfile: bundle,
  // A bundle of CommonJS parts asks for require.
  banner: { js: "import { createRequire as __r } from 'node:module'; const require = __r(import.meta.url);" },
  logLevel: 'error',
});

interface Answers {
  readonly node: string;
  readonly blocks: readonly unknown[];
  readonly esm: string;
  readonly cjs: string;
}

function answersOf({ version, LC_ALL, TZ }: (typeof versions)[number]): Answers {
  const home = join(folder, version);
  mkdirSync(home, { recursive: true });
  const program = join(home, 'node_modules/node/bin/node');
  if (!existsSync(program)) {
    writeFileSync(join(home, 'package.json'), '{ "private": true }\n');
    execFileSync('npm', ['install', '--no-audit', '--no-fund', `node@${version}`], { cwd: home, stdio: 'inherit' });
  }
  const examples = readdirSync(join(project, 'examples'))
    .filter((file) => /^tilt-deck.*\.json$/.test(file))
    .map((file) => join(project, 'examples', file));
  const said = execFileSync(program, [bundle, String(blocks), join(project, 'dist'), ...examples], {
    env: { ...process.env, LC_ALL, TZ },
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  return JSON.parse(said.trim().split('\n').at(-1) as string) as Answers;
}

const stored = JSON.parse(readFileSync(join(project, 'tests/same-figures.json'), 'utf8')) as readonly unknown[];
const all = versions.map(answersOf);
const [first] = all as [Answers];
const different = all.flatMap(({ node, blocks: found, esm, cjs }) => [
  ...found.flatMap((digest, block) =>
    JSON.stringify(digest) === JSON.stringify(stored[block]) ? [] : [`${node}: block ${block} is not as stored`],
  ),
  ...(esm === first.esm && cjs === first.esm ? [] : [`${node}: the reports are not those of ${first.node}`]),
]);
console.log(
  `${all.map(({ node }) => node).join(', ')}: ${different.length === 0 ? 'the same answers' : different.join('\n')}`,
);
if (different.length > 0) process.exitCode = 1;
else
  record('same answers in every supported Node', `npm run nodes -- ${blocks}`, {
    versions: all.map(({ node }) => node).join(', '),
    'random specs a version': blocks * 100,
    'module formats of the package': 2,
    differences: 0,
  });
