/** From the faults of the codecs to the problems that are reported. */
import type * as t from 'io-ts';
import { inShort } from '../units/internal.js';
import { type Fault, pathOf } from './codec/fault.js';
import { neededFor } from './codec/needed.js';
import type { FaultTag, Problem } from './errors.js';
import { homesOf } from './records.js';

/** What an io-ts codec without words of its own refused. */
const unworded: FaultTag = 'wrong kind';

/** How far two paths are from each other: the steps up from one and down to the other. */
function stepsBetween(a: readonly string[], b: readonly string[]): number {
  let shared = 0;
  while (shared < a.length && a[shared] === b[shared]) shared += 1;
  return a.length + b.length - 2 * shared;
}

const keysOf = (path: string): readonly string[] => path.replaceAll('[]', '').split('.');

/** The records that have a key, the nearest first: other records, or another form of this one; empty when it is misspelt. */
function homes(path: string): string | undefined {
  const keys = path.split('.').filter((key) => !/^\d+$/.test(key));
  const here = keys.slice(0, -1);
  const found = homesOf(keys.at(-1) ?? '');
  const forms = found
    .filter((home) => keysOf(home.path).join() === here.join())
    .map(({ form }) => form)
    .filter((form) => form !== undefined);
  if (forms.length > 0) return forms.join(' or ');
  const paths = [...new Set(found.map((home) => home.path))]
    .sort((a, b) => stepsBetween(here, keysOf(a)) - stepsBetween(here, keysOf(b)))
    .slice(0, 3)
    .map((home) => (home === '' ? 'the spec itself' : home));
  return paths.length === 0 ? undefined : paths.join(', ');
}

function problemOf(error: t.ValidationError & Partial<Fault>): Problem {
  const path = error.path ?? (pathOf(error.context) || 'the spec');
  const type = error.context.at(-1)?.type;
  const needed = error.message ?? (type === undefined ? 'something else' : neededFor(type as t.Mixed));
  const got = error.got ?? inShort(error.value);
  const fault = error.fault ?? unworded;
  const belongs = fault === 'unknown key' && typeof error.value === 'string' ? homes(path) : undefined;
  return belongs === undefined ? { path, fault, got, needed } : { path, fault: 'misplaced key', got, needed: belongs };
}

/** Every fault as a problem. */
export const problemsOf = (errors: t.Errors): readonly Problem[] => errors.map(problemOf);
