/** Runs a planned design chunk by chunk. Rows of one alternative are worked on in place; others are gathered and put back. */

import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import type { StudyFailure } from '../errors.js';
import type { PlannedDesign } from '../plan/planned.js';
import type { ReadPlan } from '../plan/read-plan.js';
import { blockRows } from '../tape/tape.js';
import { type Buffers, buffersFor, type Chunk } from './buffers.js';
import type { Measure } from './measure.js';
import { type Names, namesOf } from './name-index.js';
import { onOtherWays } from './other-ways.js';
import type { Points } from './points.js';
import { reasonOf } from './reason.js';
import { allPlaces, type Group, groupsOf, leavingRows } from './row-groups.js';
import { type AsNumber, fromAssessment, type WholeRow } from './rows-by-assess.js';
import { type OnTape, rowsOnTape } from './rows-on-tape.js';
import { type Summary, Tally } from './summary.js';
import type { Tapes, Way } from './tapes.js';
import { bitsOf, verdictCode } from './verdict-codes.js';

/** Progress callback and abort signal of a run. */
export interface Watched {
  readonly onProgress?: ((done: number, of: number) => void) | undefined;
  readonly onEnd?: ((summary: Summary) => void) | undefined;
  readonly signal?: AbortSignal | undefined;
}

export class Runner {
  private readonly governing: Names = namesOf();
  /** The reason of an answered row is the first: none. */
  private readonly reasons: Names = namesOf();
  private readonly tags: Names = namesOf();

  constructor(
    private readonly read: ReadPlan,
    private readonly planned: PlannedDesign,
    private readonly points: Points,
    private readonly tapes: Tapes,
    private readonly measure: Measure,
    private readonly names: readonly string[],
  ) {
    this.reasons.indexOf('');
  }

  *run(from: number, to: number, { onProgress, onEnd, signal }: Watched = {}): Generator<Chunk, void> {
    const size = Math.max(0, Math.min(blockRows, to - from));
    const buffers = buffersFor(size, this.read, this.names.length);
    const tally = new Tally();
    for (let start = from; start < to && signal?.aborted !== true; start += blockRows) {
      const rows = Math.min(blockRows, to - start);
      const chunk = this.chunk(buffers, start, rows);
      tally.add(chunk);
      yield chunk;
      onProgress?.(start + rows - from, to - from);
    }
    onEnd?.(tally.summary);
  }

  private chunk(buffers: Buffers, start: number, rows: number): Chunk {
    const { choices, inputs, verdict, attention, governs, reasons } = buffers;
    for (const [k, input] of inputs.entries()) this.planned.fillValues(k, start, rows, input);
    for (const [k, choice] of choices.entries()) this.planned.fillChoices(k, start, rows, choice);
    let figures: readonly Float64Array[] = buffers.figures;
    let exactRows = 0;
    for (const group of groupsOf(choices, rows)) {
      const done = this.fill(buffers, start, rows, group);
      figures = done.figures;
      exactRows += done.exactRows;
    }
    return {
      start,
      rows,
      choices,
      inputs,
      figures,
      verdict,
      attention,
      attentionNames: this.tags.names,
      governs,
      governNames: this.governing.names,
      reasons,
      reasonNames: this.reasons.names,
      exactRows,
    };
  }

  private fill(
    buffers: Buffers,
    start: number,
    rows: number,
    { indexes, places }: Group,
  ): { figures: readonly Float64Array[]; exactRows: number } {
    const first = this.tapes.first(indexes);
    if (first.kind === 'unreadable') {
      const all = places ?? allPlaces(rows);
      for (const i of all) this.wholeRow(buffers, start, i);
      return { figures: buffers.figures, exactRows: all.length };
    }
    const ways = this.tapes.otherWays(indexes);
    const way = ways.begin() ?? first;
    const count = places?.length ?? rows;
    const done = this.onTape(buffers, start, count, way, places);
    ways.answered(way, count - leavingRows(done.otherWay));
    if (done.otherWay.size === 0) return done;
    const found = onOtherWays(way, done.otherWay, ways, {
      run: (next, some) => this.onTape(buffers, start, some.length, next, some),
      specAt: (i) => this.points.keptSpecAt(start + i),
    });
    for (const i of found.rest) this.wholeRow(buffers, start, i);
    return { figures: done.figures, exactRows: done.exactRows + found.exactRows + found.rest.length };
  }

  /** Runs rows on one tape, and assesses those whose input no tape can take. */
  private onTape(
    buffers: Buffers,
    start: number,
    rows: number,
    way: Way,
    places: readonly number[] | undefined,
  ): OnTape {
    const { names, governing, reasons, tags } = this;
    const done = rowsOnTape({ buffers, way, names, governing, reasons, tags }, rows, places, (i) =>
      this.points.figuresAt(start + i),
    );
    for (const i of done.whole) this.wholeRow(buffers, start, i);
    return done;
  }

  /** A row assessed from its spec. */
  private wholeRow({ figures, verdict, attention, governs, reasons }: Buffers, start: number, i: number): void {
    const outcome = this.assessed(start + i);
    reasons[i] = isLeft(outcome) ? this.reasons.indexOf(reasonOf(outcome.left)) : 0;
    if (isLeft(outcome)) return;
    for (const [k, figure] of outcome.right.figures.entries()) (figures[k] as Float64Array)[i] = figure;
    verdict[i] = verdictCode(outcome.right.verdict);
    attention[i] = bitsOf(outcome.right.attention, this.tags);
    governs[i] = this.governing.indexOf(outcome.right.governs);
  }

  /** What `assess` says of the spec of a row. */
  assessed(row: number, asNumber?: AsNumber): Either<StudyFailure, WholeRow> {
    const assessed = this.tapes.assessed(this.points.keptSpecAt(row));
    return isLeft(assessed) ? assessed : fromAssessment(assessed.right, this.names, this.measure, asNumber);
  }
}
