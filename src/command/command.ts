/** `npx trailer-ratings`: the one place that knows of files, streams and exit codes. */
import { readFile } from 'node:fs/promises';
import process from 'node:process';
import { text } from 'node:stream/consumers';
import { run } from './run.js';

/** A terminal would wait for somebody to type a spec. */
const standardInput = (): Promise<string> =>
  process.stdin.isTTY
    ? Promise.reject(new Error('a terminal: name a file, or pipe a spec in; --help says how'))
    : text(process.stdin);

const { out, err, code } = await run(process.argv.slice(2), (file) =>
  file === undefined ? standardInput() : readFile(file, 'utf8'),
);
process.exitCode = code;
// Whoever reads the first lines only, as `head` does, closes the stream: that is no fault.
process.stdout.on('error', () => undefined);
process.stderr.write(err);
process.stdout.write(out);
