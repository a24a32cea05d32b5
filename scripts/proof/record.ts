/** Keeps the result of a long run, with its command and its day, for docs/proof.md. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

export interface Result {
  /** The command that repeats it. */
  readonly command: string;
  /** The day it was run. */
  readonly date: string;
  /** What it found: name and figure. */
  readonly figures: Readonly<Record<string, string | number>>;
}

const file = new URL('../../docs/proof/results.json', import.meta.url);

export const readResults = (): Readonly<Record<string, Result>> =>
  existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Record<string, Result>) : {};

/** Stores a result under its name, in place of the last one. */
export function record(name: string, command: string, figures: Result['figures']): void {
  const all = { ...readResults(), [name]: { command, date: new Date().toISOString().slice(0, 10), figures } };
  const sorted = Object.fromEntries(Object.entries(all).sort(([a], [b]) => a.localeCompare(b)));
  writeFileSync(file, `${JSON.stringify(sorted, null, 2)}\n`);
}
