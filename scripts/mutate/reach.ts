/** Which tests may tell that a mutant is on. */
import type { Ran, Said } from './said.js';

export interface Reach {
  /** By mutant the names of the tests that reach it. */
  readonly reachedBy: ReadonlyMap<number, readonly string[]>;
  /** Those that are reached while the bundle is read: they are asked in a fresh reading only. */
  readonly early: ReadonlySet<number>;
}

/**
 * Of what is reached while a file of tests is read, each of its tests may tell; of what the library works out while it is read itself,
 * every test.
 */
export function reachOf({ atLoad }: Said, asking: readonly Ran[]): Reach {
  const found = new Map<number, Set<string>>();
  const add = (id: number, names: readonly string[]): void => {
    const known = found.get(id) ?? new Set();
    found.set(id, known);
    for (const name of names) known.add(name);
  };
  for (const { name, reached = [] } of asking) for (const id of reached) add(id, [name]);
  const names = asking.map(({ name }) => name);
  for (const [file, reached] of atLoad) {
    const mayTell = file === '' ? names : names.filter((name) => name.startsWith(`${file} > `));
    for (const id of reached) add(id, mayTell);
  }
  return {
    reachedBy: new Map([...found].map(([id, tests]) => [id, [...tests]])),
    early: new Set(atLoad.flatMap(([, reached]) => reached)),
  };
}
