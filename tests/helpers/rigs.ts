/** Ten unlike rigs, all invented: single axle to triple, gooseneck, duals, metric, overloaded, half known. */
import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../print/rigs/', import.meta.url);

/** Each rig with the name of its file. */
export const rigs: readonly { readonly file: string; readonly spec: unknown }[] = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .sort()
  .map((file) => ({ file, spec: JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as unknown }));
