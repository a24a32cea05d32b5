/** Files of a folder. */
import { readdirSync } from 'node:fs';

/** Every file under a folder whose name ends so, seen from the folder. */
export const filesUnder = (folder: string, ending: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith(ending))
    .sort();
