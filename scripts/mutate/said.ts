/** What passes between the run, the process that runs the tests, and their bundle. */

export interface Question {
  readonly mutant: number;
  /** The tests to ask, in this order; all of them where it is absent. */
  readonly tests?: readonly string[];
  /** Tests known to be too slow to be asked: left out where all are run. */
  readonly slow?: readonly string[];
  /** Read the bundle anew: for what is worked out once, while it is read. */
  readonly anew: boolean;
}

export interface Ran {
  readonly name: string;
  readonly took: number;
  /** The mutants whose places it reached; asked of a run of all tests only. */
  readonly reached?: readonly number[];
}

export interface Said {
  /** The first test that failed. */
  readonly failed?: string;
  readonly ran: readonly Ran[];
  /** The mutants whose places are reached while the bundle is read, by the file of tests that reaches them; by none for the library itself. */
  readonly atLoad: readonly (readonly [file: string, reached: readonly number[]])[];
}

/** The bundle as it was read once: its tests file by file, each read when it is first asked. */
export interface Reading {
  readonly load: Readonly<Record<string, () => void>>;
  readonly prepareTests: () => Promise<void>;
  readonly runTests: (
    tests: readonly string[] | undefined,
    places: () => readonly number[],
    goesOn: () => void,
    slow?: readonly string[],
  ) => Promise<Omit<Said, 'atLoad'>>;
  readonly loaded: Set<string>;
  /** The comparisons that it adds to the matchers. */
  readonly testers: readonly unknown[];
}
