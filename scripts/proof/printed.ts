/** What the sources themselves get wrong or leave open, from the comments and notes of the rows. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Remark {
  readonly file: string;
  readonly says: string;
}

const sentencesOf = (comment: string): readonly string[] =>
  comment
    .replace(/\n?\s*\*\s?/g, ' ')
    .replace(/\s+/g, ' ')
    .split(/(?<=[.;:]) (?=[A-Z])/)
    .map((sentence) => sentence.trim());

/** Sentences of comments and notes in the files of a folder that a pattern fits. */
export function remarksIn(folder: string, pattern: RegExp): readonly Remark[] {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => /\.ts$/.test(file));
  return files.sort().flatMap((file) => {
    const path = join(folder, file).replaceAll('\\', '/');
    const text = readFileSync(path, 'utf8');
    const comments = [...text.matchAll(/\/\*\*?([\s\S]*?)\*\/|\/\/(.*)|note: '((?:[^'\\]|\\.)*)'/g)];
    return comments
      .flatMap(([, block, line, note]) => sentencesOf(block ?? line ?? note ?? ''))
      .filter((sentence) => pattern.test(sentence))
      .map((says) => ({ file: path, says }));
  });
}
