/** What the command prints, and how it ends. */
import { basename } from 'node:path';
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AssessmentVerdict, answerOf, assessJson, libraryVersion, verifyAnswer } from '../assessment/index.js';
import { compare } from '../choose/index.js';
import { describeError, type TrailerError } from '../errors.js';
import { comparisonText, report } from '../print/index.js';
import { readJson, type SpecInput } from '../spec/index.js';
import { type Asked, askedOf, type How, help } from './options.js';
import { schemaText } from './schema.js';

/** What goes to standard output, to standard error, and the exit code. */
export interface Ended {
  readonly out: string;
  readonly err: string;
  readonly code: 0 | 1 | 2;
}

/** Reads a file, or standard input where no file is named; a file that cannot be read is a rejection. */
export type ReadText = (file: string | undefined) => Promise<string>;

const said = (out: string, code: Ended['code'] = 0): Ended => ({
  out: out.endsWith('\n') ? out : `${out}\n`,
  err: '',
  code,
});
const unreadable = (lines: readonly string[]): Ended => ({ out: '', err: `${lines.join('\n')}\n`, code: 2 });

/** One line for each fault: the reader reports all faults of a spec at once. */
const linesFor = (error: TrailerError): readonly string[] =>
  error.tag === 'UndecodableSpec'
    ? error.problems.map((problem) => describeError({ ...error, problems: [problem], path: problem.path }))
    : [describeError(error)];

const codeOf = (verdicts: readonly AssessmentVerdict[]): 0 | 1 => (verdicts.every((each) => each === 'within') ? 0 : 1);

const nameOf = (file: string | undefined): string => file ?? 'standard input';

/** The JSON value of a file; every line of a fault begins with the file. */
async function jsonIn(file: string | undefined, read: ReadText): Promise<Either<readonly string[], unknown>> {
  let text: string;
  try {
    text = await read(file);
  } catch (reason) {
    return left([`${nameOf(file)}: ${reason instanceof Error ? reason.message : String(reason)}`]);
  }
  const json = readJson(text);
  return isLeft(json) ? left(linesFor(json.left).map((line) => `${nameOf(file)}: ${line}`)) : right(json.right);
}

async function assessed(file: string | undefined, { json, units, rules }: How, read: ReadText): Promise<Ended> {
  const spec = await jsonIn(file, read);
  if (isLeft(spec)) return unreadable(spec.left);
  const assessment = assessJson(spec.right);
  if (isLeft(assessment)) return unreadable(linesFor(assessment.left).map((line) => `${nameOf(file)}: ${line}`));
  const { verdict } = assessment.right;
  const text = json ? JSON.stringify(answerOf(assessment.right)) : report(assessment.right, { units, rules });
  return said(text, codeOf([verdict]));
}

/** `tilt-deck` for `examples/tilt-deck.json`, as long as no two files are called alike. */
function namesOf(files: readonly string[]): readonly string[] {
  const short = files.map((file) => basename(file).replace(/\.json$/, ''));
  return new Set(short).size === files.length ? short : files;
}

async function compared(files: readonly string[], read: ReadText): Promise<Ended> {
  // Read as untyped JSON by the same reader: a file that is no spec is reported by its name.
  const specs: Record<string, SpecInput> = {};
  const names = namesOf(files);
  for (const [i, file] of files.entries()) {
    const spec = await jsonIn(file, read);
    if (isLeft(spec)) return unreadable(spec.left);
    specs[names[i] as string] = spec.right as SpecInput;
  }
  const comparison = compare(specs);
  if (isLeft(comparison)) return unreadable(linesFor(comparison.left));
  return said(comparisonText(comparison.right), codeOf(comparison.right.assessments.map(({ verdict }) => verdict)));
}

async function verified(file: string | undefined, read: ReadText): Promise<Ended> {
  const json = await jsonIn(file, read);
  if (isLeft(json)) return unreadable(json.left);
  const found = verifyAnswer(json.right);
  if (isLeft(found)) return unreadable(linesFor(found.left).map((line) => `${nameOf(file)}: ${line}`));
  if (!found.right.follows) {
    const { at, what, found: stands, needed } = found.right;
    return said(`does not follow\n${at}: ${what} is ${stands}; it must be ${needed}`, 1);
  }
  const { nodes, checks, fromSpec, fromTables, cannotKnow } = found.right;
  return said(
    [
      `follows: ${nodes} figures worked out again, ${checks} checks judged again`,
      `${fromSpec} figures found in the spec, ${fromTables} in the published tables`,
      ...cannotKnow,
    ].join('\n'),
  );
}

async function done(asked: Asked, read: ReadText): Promise<Ended> {
  switch (asked.do) {
    case 'assess':
      return assessed(asked.file, asked.how, read);
    case 'compare':
      return compared(asked.files, read);
    case 'verify':
      return verified(asked.file, read);
    case 'schema':
      return said(schemaText());
    case 'version':
      return said(libraryVersion);
    case 'help':
      return said(help);
  }
}

/** What the command does for these arguments. */
export async function run(args: readonly string[], read: ReadText): Promise<Ended> {
  let asked: Asked;
  try {
    asked = askedOf(args);
  } catch (reason) {
    return unreadable([
      reason instanceof Error ? reason.message : String(reason),
      'trailer-ratings --help says what there is',
    ]);
  }
  return done(asked, read);
}
