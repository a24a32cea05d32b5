/** How many random specs a law is asked of: few in the suite, more with `LAW_RUNS=5000 npx vitest run tests/laws/specs` or `npm run laws`. */

const asked = process.env['LAW_RUNS'];

/** The seeds of a run; `LAW_FROM` starts elsewhere. */
export function lawSeeds(inSuite: number): readonly number[] {
  const from = Number(process.env['LAW_FROM'] ?? 0);
  return Array.from({ length: asked === undefined ? inSuite : Number(asked) }, (_, i) => from + i);
}

/** At most so many counterexamples are told. */
export const fewOf = <T>(all: readonly T[]): readonly T[] => all.slice(0, 12);
