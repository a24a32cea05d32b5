/** Rows run on one tape, and their figures and verdicts put in their places. */
import type { Decimal } from '../../units/index.js';
import { enoughColumns } from '../tape/tape.js';
import type { Alternative } from './alternative.js';
import type { Buffers } from './buffers.js';
import { evaluateBlock } from './evaluate-block.js';
import type { Names } from './name-index.js';
import { figureColumns, gather, sortMarked } from './row-groups.js';
import { missingFigure } from './rows-by-assess.js';
import { nameOfTie } from './shares.js';

/** Inputs of a tape run: the buffers, the recorded alternative, the figures asked for, the names of governing checks. */
export interface TapeRun {
  readonly buffers: Buffers;
  readonly alternative: Alternative;
  readonly names: readonly string[];
  readonly governing: Names;
}

/** Result of a tape run: figures in columns, rows to be assessed from their specs, rows that take another branch. */
export interface OnTape {
  readonly figures: readonly Float64Array[];
  readonly exactRows: number;
  readonly whole: readonly number[];
  readonly otherWay: readonly number[];
}

/** Runs the rows at `places`, or the first `rows` of the chunk. `figuresAt` gives the exact figures of a place. */
export function rowsOnTape(
  { buffers, alternative, names, governing }: TapeRun,
  rows: number,
  places: readonly number[] | undefined,
  figuresAt: (place: number) => ReadonlyMap<string, Decimal>,
): OnTape {
  const { verdicts, unanswered } = buffers;
  const count = places?.length ?? rows;
  const placeOf = (j: number): number => (places === undefined ? j : (places[j] as number));
  const columns = enoughColumns(buffers.columns, alternative.tape, verdicts.holds.length);
  for (const [k, input] of buffers.inputs.entries()) gather(input, columns[k] as Float64Array, places);
  evaluateBlock(alternative, columns, count, verdicts, (j) => figuresAt(placeOf(j)));
  const handOut = places === undefined && !verdicts.marked;
  const figures = figureColumns(alternative, columns, buffers.figures, names, count, handOut, places);
  putVerdicts(buffers, alternative, governing, count, placeOf);
  const missing = names.find((name) => !alternative.figures.some((figure) => figure.name === name));
  if (missing !== undefined) for (let j = 0; j < count; j += 1) unanswered.set(placeOf(j), missingFigure(missing));
  if (!verdicts.marked) return { figures, exactRows: 0, whole: [], otherWay: [] };
  const sorted = sortMarked(verdicts.marks, count, placeOf);
  for (const i of sorted.otherWay) unanswered.delete(i);
  return { figures, ...sorted };
}

/** Whether the rows hold, and their governing checks, to their places. */
function putVerdicts(
  { holds, governs, verdicts }: Buffers,
  { shares }: Alternative,
  governing: Names,
  count: number,
  placeOf: (j: number) => number,
): void {
  const own =
    shares.length === 0
      ? [governing.indexOf('nothing checked')]
      : shares.map((share) => governing.indexOf(nameOfTie([share])));
  for (let j = 0; j < count; j += 1) {
    const i = placeOf(j);
    holds[i] = verdicts.holds[j] as number;
    governs[i] = own[verdicts.governs[j] as number] as number;
  }
  for (const [j, tied] of verdicts.ties)
    governs[placeOf(j)] = governing.indexOf(nameOfTie(tied.flatMap((k) => shares[k] ?? [])));
}
