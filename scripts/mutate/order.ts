/** In which order a mutant is asked of tests, so that most mutants need few. */

export interface Order {
  /** The nearer a test stands to the file, and the more it killed for its time, the earlier it is asked. */
  readonly byWorth: (tests: readonly string[], file: string) => readonly string[];
  /** Those of these tests, in their order, that take no longer than so many ms together. */
  readonly within: (ms: number, tests: readonly string[]) => readonly string[];
  /** Tells that a test killed a mutant. */
  readonly killed: (test: string) => void;
}

const folderOf = (path: string): string => path.slice(path.indexOf('/'), path.lastIndexOf('/'));

/** A test stands at the path of what it tests. */
function nearness(test: string, file: string): number {
  if (test.startsWith(file.replace('src/', 'tests/').replace(/ts$/, 'test.ts'))) return 20;
  return folderOf(test.split(' > ', 1)[0] ?? '') === folderOf(file) ? 3 : 1;
}

/** `took`: how long each test takes without a mutant, in ms. */
export function orderOf(took: ReadonlyMap<string, number>): Order {
  const kills = new Map<string, number>();
  const timeOf = (name: string): number => took.get(name) ?? 0;
  return {
    byWorth: (tests, file) =>
      tests
        .map((name) => ({
          name,
          worth: (nearness(name, file) * ((kills.get(name) ?? 0) + 0.2)) / (timeOf(name) + 0.5),
        }))
        .sort((a, b) => b.worth - a.worth)
        .map(({ name }) => name),
    within: (ms, tests) => {
      let time = 0;
      return tests.filter((name) => {
        if (time + timeOf(name) > ms) return false;
        time += timeOf(name);
        return true;
      });
    },
    killed: (test) => void kills.set(test, (kills.get(test) ?? 0) + 1),
  };
}
