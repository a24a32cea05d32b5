/** The chapters of src, in the order of the layers; the list for the build, the docs and the tests. */
import { existsSync } from 'node:fs';

/** Every chapter of the design; each is a subpath of the package. `errors` is a file, the others are folders. */
export const chapterNames = [
  'units',
  'trace',
  'ratings',
  'tires',
  'members',
  'axles',
  'load',
  'towing',
  'rules',
  'spec',
  'errors',
  'assessment',
  'study',
  'choose',
  'figures',
  'print',
] as const;

export interface Chapter {
  /** The subpath: `units` is imported as `trailer-ratings/units`. */
  readonly name: string;
  /** Its entry, seen from the root of the project. */
  readonly file: string;
}

const candidates: readonly Chapter[] = chapterNames.map((name) => ({
  name,
  file: name === 'errors' ? 'src/errors.ts' : `src/${name}/index.ts`,
}));

/** Those that are there, seen from the root of the project, where npm runs everything. */
export const chapters: readonly Chapter[] = candidates.filter(({ file }) => existsSync(file));
