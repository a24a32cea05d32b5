/** Keeps what lived in the recorded run of a chapter, for docs/proof.md. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** A survivor by what stays when lines move: its file, its line as written, its change. */
export interface Survivor {
  readonly file: string;
  readonly source: string;
  readonly what: string;
}

export const keyOf = ({ file, source, what }: Survivor): string => `${file} | ${source} | ${what}`;

const folder = fileURLToPath(new URL('../../docs/proof/survivors/', import.meta.url));

/** Stores the survivors of a chapter in place of the last ones. */
export function keepSurvivors(chapter: string, survivors: readonly Survivor[]): void {
  const sorted = survivors
    .map(({ file, source, what }): Survivor => ({ file, source, what }))
    .sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}${chapter}.json`, `${JSON.stringify(sorted, null, 2)}\n`);
}

/** The survivors of every chapter that has a recorded run. */
export function readSurvivors(): Readonly<Record<string, readonly Survivor[]>> {
  const files = existsSync(folder) ? readdirSync(folder).sort() : [];
  return Object.fromEntries(
    files.map((file) => [
      file.replace('.json', ''),
      JSON.parse(readFileSync(`${folder}${file}`, 'utf8')) as readonly Survivor[],
    ]),
  );
}
