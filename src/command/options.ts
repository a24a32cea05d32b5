/** What was asked for on the command line. */
import { parseArgs } from 'node:util';
import type { RulesInFull } from '../print/index.js';
import type { ReaderUnits } from '../units/index.js';

/** What the command is to do. */
export type Asked =
  | { readonly do: 'assess'; readonly file: string | undefined; readonly how: How }
  | { readonly do: 'compare'; readonly files: readonly string[] }
  | { readonly do: 'verify'; readonly file: string | undefined }
  | { readonly do: 'schema' | 'help' | 'version' };

/** How an assessment is printed. */
export interface How {
  readonly json: boolean;
  readonly units: ReaderUnits;
  readonly rules: RulesInFull;
}

export const help = `Usage: trailer-ratings [options] [spec.json]     first page and report of one spec
       trailer-ratings compare a.json b.json ...  builds side by side
       trailer-ratings verify [answer.json]       does an answer of --json follow from itself?

Without a file, standard input is read.

  --json            the plain answer with its working, as JSON
  --units metric    metres, millimetres and kilograms (us: feet, inches and pounds)
  --rules all       every published rule in full (near: those that apply or are near their line)
  --schema          the JSON Schema of a spec
  --version         the version of the library
  --help            this text

Exit code: 0 everything asked is within its rating; 1 something is over, asks attention, could not be checked, or does not
follow; 2 the input cannot be read. Errors go to standard error, one line a fault.
A static reckoning: labels, makers, State and local law govern.
`;

const options = {
  json: { type: 'boolean' },
  schema: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
  units: { type: 'string', default: 'us' },
  rules: { type: 'string', default: 'near' },
} as const;

/** One of the words, or a complaint that names them. */
function wordOf<W extends string>(option: string, given: string, words: readonly W[]): W {
  const found = words.find((word) => word === given);
  if (found === undefined) throw new TypeError(`--${option} is "${given}"; it must be ${words.join(' or ')}`);
  return found;
}

/** Reads the arguments behind the name of the command. @throws TypeError in words for the user, as `parseArgs` does */
export function askedOf(args: readonly string[]): Asked {
  const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
  if (values.help === true) return { do: 'help' };
  if (values.version === true) return { do: 'version' };
  if (values.schema === true) return { do: 'schema' };
  const units = wordOf('units', values.units, ['us', 'metric']);
  const rules = wordOf('rules', values.rules, ['near', 'all']);
  const [first, ...others] = positionals;
  if (first === 'compare') {
    if (others.length < 2) throw new TypeError(`compare needs two files or more; found ${others.length}`);
    return { do: 'compare', files: others };
  }
  const [file, extra] = first === 'verify' ? others : positionals;
  if (extra !== undefined) throw new TypeError(`one file is read; found "${extra}" beside it`);
  return first === 'verify'
    ? { do: 'verify', file }
    : { do: 'assess', file, how: { json: values.json === true, units, rules } };
}
