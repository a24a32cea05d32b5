/** Imports between chapters point down only, no files import each other in a circle, tests have the path of what they test. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../src');
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.replaceAll('\\', '/'));

/** Lower number = lower layer; chapters of one number are siblings and do not import each other. */
const layer: Record<string, number> = {
  units: 0,
  trace: 1,
  ratings: 2,
  tires: 3,
  members: 3,
  axles: 3,
  load: 3,
  towing: 3,
  rules: 3,
  spec: 4,
  assessment: 5,
  study: 6,
  choose: 7,
  figures: 8,
  print: 8,
  'errors.ts': 9,
  command: 10,
  'index.ts': 10,
};
const chapterOf = (file: string): string => file.split('/')[0] as string;

interface Arrow {
  from: string;
  to: string;
  typeOnly: boolean;
}
const arrowsOf = (file: string): Arrow[] =>
  [
    ...readFileSync(join(root, file), 'utf8').matchAll(
      /(?:import|export)\s+(type\s+)?(?:[^'";]*?\s+from\s+)?'([^']+)'/g,
    ),
  ].map(([, type, to]) => ({ from: file, to: to as string, typeOnly: type !== undefined }));
const arrows = files.flatMap(arrowsOf);
const inside = arrows
  .filter(({ to }) => to.startsWith('.'))
  .map((arrow) => ({
    ...arrow,
    to: normalize(join(dirname(arrow.from), arrow.to))
      .replaceAll('\\', '/')
      .replace(/\.js$/, '.ts'),
  }));

// Errors and words are joined from the files of each chapter that hold nothing else: a page that reads one error loads no table.
const joined = /^[a-z]+\/(errors|words)\.ts$/;
describe('layers', () => {
  it('knows every chapter', () => {
    expect(files.map(chapterOf).filter((chapter) => layer[chapter] === undefined)).toEqual([]);
  });
  it('points down only', () => {
    const up = inside.filter(({ from, to }) => {
      const [a, b] = [chapterOf(from), chapterOf(to)];
      return a !== b && (layer[b] as number) >= (layer[a] as number);
    });
    expect(up).toEqual([]);
  });
  it('imports chapters by their index, or the units internals', () => {
    const deep = inside.filter(
      ({ from, to }) =>
        chapterOf(from) !== chapterOf(to) &&
        !/^[a-z]+\/index\.ts$|^errors\.ts$/.test(to) &&
        chapterOf(to) !== 'units' &&
        !to.includes('/codec') &&
        !(joined.test(to) && (joined.test(from) || from === 'errors.ts')),
    );
    expect(deep).toEqual([]);
  });
  it('imports decimal.js in one file and io-ts only in codecs and for the brand', () => {
    expect(arrows.filter(({ to }) => to === 'decimal.js').map(({ from }) => from)).toEqual(['units/decimal.ts']);
    const codecs = arrows.filter(({ to, typeOnly }) => to.startsWith('io-ts') && !typeOnly).map(({ from }) => from);
    expect(codecs.filter((file) => !/codec\.ts$/.test(file) && chapterOf(file) !== 'spec')).toEqual([]);
  });
  it('keeps data files to rows: they import types only', () => {
    expect(arrows.filter(({ from, typeOnly }) => from.includes('/data/') && !typeOnly)).toEqual([]);
  });
  it('imports fp-ts by the paths Node can load', () => {
    expect(arrows.filter(({ to }) => to.startsWith('fp-ts') && !/^fp-ts\/lib\/\w+\.js$/.test(to))).toEqual([]);
  });
  it('has no circle of files, type imports included', () => {
    const next = new Map<string, string[]>();
    for (const { from, to } of inside) next.set(from, [...(next.get(from) ?? []), to]);
    const done = new Set<string>();
    const visit = (file: string, path: readonly string[]): void => {
      expect(path.includes(file), [...path, file].join(' -> ')).toBe(false);
      if (done.has(file)) return;
      for (const to of next.get(file) ?? []) visit(to, [...path, file]);
      done.add(file);
    };
    for (const file of files) visit(file, []);
  });
});

/** Rows as printed, and types written from the table of spec keys, are as long as what they list. */
const listed = /\/data\/|^spec\/types\//;

describe('files', () => {
  it('hold one idea: at most 150 lines, but for tables and generated types', () => {
    const lines = (file: string): number => readFileSync(join(root, file), 'utf8').split('\n').length - 1;
    const long = files.filter((file) => !listed.test(file) && lines(file) > 150);
    expect(long.map((file) => `${file}: ${lines(file)}`)).toEqual([]);
  });
});

/** Tests of a whole chapter that no single file of src answers for: their name in any chapter, and the reason. */
const ofAChapter: Readonly<Record<string, string>> = {
  decisions: 'asks every function of the chapter for its decisions',
  ids: 'ids of checks are a promise of the whole answer',
  'missing-facts': 'takes each key of the spec away in turn',
  untyped: 'asks functions of the chapter as a caller without types may',
};

describe('tests', () => {
  it('stand at the path of the file or folder of src that they test', () => {
    const tests = readdirSync(join(root, '../tests'), { recursive: true, encoding: 'utf8' })
      .map((file) => file.replaceAll('\\', '/'))
      .filter((file) => file.endsWith('.test.ts') && layer[chapterOf(file)] !== undefined)
      .map((file) => file.replace(/\.test\.ts$/, ''));
    const names = (path: string): boolean => existsSync(join(root, path));
    const astray = tests.filter((test) => {
      const folder = dirname(test);
      const wholeFolder = basename(test) === basename(folder) && names(folder); // figures/figures: all of the folder
      const partOfFile = names(`${folder}.ts`); // units/read/forms: one of several tests of one file
      const wholeChapter = folder === chapterOf(test) && Object.hasOwn(ofAChapter, basename(test));
      return !(names(`${test}.ts`) || names(test) || wholeFolder || partOfFile || wholeChapter);
    });
    expect(astray).toEqual([]);
  });
});
