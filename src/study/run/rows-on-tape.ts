/** Rows run on one tape, and their figures and verdicts put in their places. */
import type { Decimal } from '../../units/index.js';
import { enoughColumns } from '../tape/tape.js';
import type { Buffers } from './buffers.js';
import { evaluateBlock } from './evaluate-block.js';
import type { Names } from './name-index.js';
import { reasonOf } from './reason.js';
import { figureColumns, gather, type Leaving, sortMarked } from './row-groups.js';
import { missingFigure } from './rows-by-assess.js';
import { nameOfTie } from './shares.js';
import type { Way } from './tapes.js';
import { bitsOf, verdictCode } from './verdict-codes.js';

/** Inputs of a tape run: the buffers, the recording, the figures asked for, the names of governing checks and of reasons. */
export interface TapeRun {
  readonly buffers: Buffers;
  readonly way: Way;
  readonly names: readonly string[];
  readonly governing: Names;
  readonly reasons: Names;
  readonly tags: Names;
}

/** Result of a tape run: figures in columns, rows to be assessed from their specs, rows that take another branch. */
export interface OnTape {
  readonly figures: readonly Float64Array[];
  readonly exactRows: number;
  readonly whole: readonly number[];
  readonly otherWay: Leaving;
}

/** Runs the rows at `places`, or the first `rows` of the chunk. `figuresAt` gives the exact figures of a place. */
export function rowsOnTape(
  { buffers, way, names, governing, reasons, tags }: TapeRun,
  rows: number,
  places: readonly number[] | undefined,
  figuresAt: (place: number) => ReadonlyMap<string, Decimal>,
): OnTape {
  const { verdicts } = buffers;
  const count = places?.length ?? rows;
  const placeOf = (j: number): number => (places === undefined ? j : (places[j] as number));
  const columns = enoughColumns(buffers.columns, way.tape, verdicts.holds.length);
  for (const [k, input] of buffers.inputs.entries()) gather(input, columns[k] as Float64Array, places);
  evaluateBlock(way, columns, count, verdicts, (j) => figuresAt(placeOf(j)));
  const reason = reasonFor(way, names);
  putReason(buffers, reason === undefined ? 0 : reasons.indexOf(reason), count, places);
  const handOut = places === undefined && !verdicts.marked;
  const figures =
    way.kind === 'refused'
      ? buffers.figures
      : figureColumns(way, columns, buffers.figures, names, count, handOut, places);
  if (way.kind === 'answered') putVerdicts(buffers, way, governing, tags, count, placeOf);
  if (!verdicts.marked) return { figures, exactRows: 0, whole: [], otherWay: new Map() };
  return { figures, ...sortMarked(verdicts, count, placeOf) };
}

/** Why the rows of a recording have no answer: it is a refusal, or it lacks a figure. */
function reasonFor(way: Way, names: readonly string[]): string | undefined {
  if (way.kind === 'refused') return way.reason;
  const missing = names.find((name) => !way.figures.some((figure) => figure.name === name));
  return missing === undefined ? undefined : reasonOf(missingFigure(missing));
}

/** The reason of a recording to the places of its rows; rows that it does not answer get theirs later. */
function putReason({ reasons }: Buffers, index: number, count: number, places: readonly number[] | undefined): void {
  if (places === undefined) reasons.fill(index, 0, count);
  else for (const place of places) reasons[place] = index;
}

/** Verdicts, attention and governing checks to the places of their rows. */
function putVerdicts(
  { verdict, attention, governs, verdicts }: Buffers,
  { shares, names, otherwise, attention: asks }: Extract<Way, { kind: 'answered' }>,
  governing: Names,
  tags: Names,
  count: number,
  placeOf: (j: number) => number,
): void {
  const own = names.length === 0 ? [governing.indexOf('nothing checked')] : names.map(governing.indexOf);
  const [bits, over, held] = [bitsOf(asks, tags), verdictCode('over'), verdictCode(otherwise)];
  for (let j = 0; j < count; j += 1) {
    const i = placeOf(j);
    verdict[i] = verdicts.holds[j] === 0 ? over : held;
    attention[i] = bits;
    governs[i] = own[verdicts.governs[j] as number] as number;
  }
  for (const [j, tied] of verdicts.ties)
    governs[placeOf(j)] = governing.indexOf(nameOfTie(tied.flatMap((k) => shares[k] ?? [])));
}
