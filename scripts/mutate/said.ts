/** What passes between the run and the process that runs the tests. */

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
