/** Runs an example: one expression, with everything the chapters export and the samples in scope. */

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import * as either from 'fp-ts/lib/Either.js';
import { chapters } from '../../scripts/chapters.js';
import { samples } from './samples.js';

const src = join(import.meta.dirname, '../../src');

/** What each chapter exports. */
export const modules: Record<string, Record<string, unknown>> = {};
for (const { name } of chapters)
  modules[name] = (await import(
    pathToFileURL(join(src, name === 'errors' ? 'errors.ts' : `${name}/index.ts`)).href
  )) as Record<string, unknown>;

export interface Example {
  readonly program: string;
  /** What stands behind the `//`. */
  readonly result: string | undefined;
}

export function exampleOf(line: string): Example {
  const [program, result] = line.split(/ +\/\/ (.*)/s);
  return { program: program as string, result };
}

/** The chapter's own names come before those of the others, a lower chapter's before a higher one's, its samples before all. */
export function run(program: string, chapter: string): unknown {
  const scope = {
    ...(Object.assign({}, either, ...Object.values(modules).reverse()) as object),
    ...modules[chapter],
    ...samples.shared,
    ...samples[chapter as keyof typeof samples],
  };
  return (new Function(...Object.keys(scope), `return (${program});`) as (...values: unknown[]) => unknown)(
    ...Object.values(scope),
  );
}
