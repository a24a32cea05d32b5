/** The errors of a spec, next to the field at fault. */
import { type TrailerError, wordsFor } from '../../src/errors.js';

export interface Fault {
  readonly path: string;
  readonly says: string;
}

/** One fault a place: all that cannot be read, or the one thing that cannot be answered. */
export function faultsOf(error: TrailerError): readonly Fault[] {
  if (error.tag === 'UndecodableSpec')
    return error.problems.map(({ path, got, needed }) => ({ path, says: `${got}: needs ${needed}` }));
  return [{ path: error.path ?? '', says: wordsFor(error) }];
}

/** The faults of a field: its own, and those of a part of it. */
export const at = (faults: readonly Fault[], field: string): readonly Fault[] =>
  faults.filter(({ path }) => path === field || path.startsWith(`${field}.`));
