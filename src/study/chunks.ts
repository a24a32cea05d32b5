/** Runs a planned design chunk by chunk: rows of one alternative are gathered on its tape and put back in their places. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { assess } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import type { Decimal } from '../units/index.js';
import type { PlannedDesign } from './design.js';
import { type BlockVerdicts, evaluateBlock } from './evaluate.js';
import { exactly } from './exact-numbers.js';
import type { Resolved } from './resolve.js';
import { changed } from './spec-paths.js';
import { isVaried, blockRows } from './tape.js';
import type { Measure } from './variant.js';
import { fromAssessment, missingFigure } from './whole-rows.js';

/** About a thousand rows. The arrays are used again for the next chunk: copy what is to be kept. */
export interface Chunk {
  readonly start: number;
  readonly rows: number;
  readonly choices: readonly Int16Array[];
  readonly inputs: readonly Float64Array[];
  readonly figures: readonly Float64Array[];
  readonly holds: Uint8Array;
  /** For each row, the name of the check closest to its limit. */
  readonly governs: readonly string[];
  /** Rows without an answer, by their place in the chunk. */
  readonly unanswered: ReadonlyMap<number, TrailerError>;
  /** Rows decided again with exact decimals, or assessed from their spec. */
  readonly exactRows: number;
}

export class Chunks {
  private readonly verdicts: BlockVerdicts = {
    holds: new Uint8Array(blockRows), governs: new Uint16Array(blockRows), elsewhere: new Uint8Array(blockRows), ties: new Map(), decidedExactly: 0,
  };

  constructor(private readonly resolved: Resolved, private readonly planned: PlannedDesign, private readonly measure: Measure) {}

  private choicesAt(row: number): readonly number[] {
    return this.resolved.choices.map((_, i) => this.planned.choiceAt(row, i));
  }

  /** The exact figures of a row, by path. */
  exactFigures(row: number): ReadonlyMap<string, Decimal> {
    return new Map(this.resolved.factors.map(({ path, levels }, k) => {
      const level = this.planned.levelAt(row, k);
      return [path, level >= 0 ? (levels[level] as Decimal) : exactly(this.planned.valueAt(row, k))];
    }));
  }

  /** The spec of a row: its alternative with the varied figures put in, each keeping what it rests on. */
  specAt(row: number): Either<TrailerError, unknown> {
    const spec = this.resolved.specOf(this.choicesAt(row));
    const figures = this.exactFigures(row);
    const changes = this.resolved.factors.map(({ path, unit, basis }) => [path, { value: (figures.get(path) as Decimal).toFixed(), unit, basis }]);
    return right(changed(spec, Object.fromEntries(changes) as Record<string, unknown>));
  }

  /** Every figure that some alternative measures, in the order they are first met. */
  figureNames(): Either<TrailerError, readonly { name: string; unit: string }[]> {
    const names = new Map<string, string>();
    let failed: TrailerError | undefined;
    for (const variant of this.resolved.allVariants()) {
      if (isLeft(variant)) failed ??= variant.left;
      else for (const { name, node } of variant.right.figures) if (!names.has(name)) names.set(name, node.value.unit);
    }
    if (names.size === 0 && failed !== undefined) return left(failed);
    return right([...names].map(([name, unit]) => ({ name, unit })));
  }

  *run(from: number, to: number, names: readonly string[], onProgress?: (done: number, of: number) => void, signal?: AbortSignal): Generator<Chunk, void> {
    const { choices, factors } = this.resolved;
    const buffers = {
      choices: choices.map(() => new Int16Array(blockRows)), inputs: factors.map(() => new Float64Array(blockRows)),
      figures: names.map(() => new Float64Array(blockRows)), holds: new Uint8Array(blockRows), governs: new Array<string>(blockRows).fill(''),
    };
    for (let start = from; start < to; start += blockRows) {
      if (signal?.aborted === true) return;
      const rows = Math.min(blockRows, to - start);
      const unanswered = new Map<number, TrailerError>();
      let exactRows = 0;
      for (const [indexes, places] of this.gather(start, rows, buffers)) {
        exactRows += this.fill(start, indexes, places, names, buffers, unanswered);
      }
      yield { start, rows, ...buffers, unanswered, exactRows };
      onProgress?.(start + rows - from, to - from);
    }
  }

  /** Fills choices and inputs, and lists the rows of each alternative. */
  private gather(start: number, rows: number, buffers: { choices: Int16Array[]; inputs: Float64Array[] }): Iterable<readonly [readonly number[], number[]]> {
    const { planned } = this;
    buffers.inputs.forEach((column, k) => { for (let i = 0; i < rows; i += 1) column[i] = planned.valueAt(start + i, k); });
    buffers.choices.forEach((column, k) => { for (let i = 0; i < rows; i += 1) column[i] = planned.choiceAt(start + i, k); });
    const groups = new Map<string, readonly [readonly number[], number[]]>();
    for (let i = 0; i < rows; i += 1) {
      let key = '';
      for (const column of buffers.choices) key += `${column[i]},`;
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [buffers.choices.map((column) => column[i] as number), [i]]);
      else group[1].push(i);
    }
    return groups.values();
  }

  private fill(start: number, indexes: readonly number[], places: readonly number[], names: readonly string[], buffers: { inputs: Float64Array[]; figures: Float64Array[]; holds: Uint8Array; governs: string[] }, unanswered: Map<number, TrailerError>): number {
    const variant = this.resolved.variantOf(indexes);
    const whole = (i: number): void => this.wholeRow(start + i, i, names, buffers, unanswered);
    if (isLeft(variant)) { places.forEach(whole); return places.length; }
    const { columns, figures, shares } = variant.right;
    buffers.inputs.forEach((input, k) => { const column = columns[k] as Float64Array; places.forEach((i, j) => { column[j] = input[i] as number; }); });
    const { verdicts } = this;
    verdicts.decidedExactly = 0;
    evaluateBlock(variant.right, places.length, verdicts, (j) => this.exactFigures(start + (places[j] as number)));
    names.forEach((name, k) => {
      const out = buffers.figures[k] as Float64Array;
      const at = figures.find((figure) => figure.name === name)?.at;
      if (at === undefined) places.forEach((i) => unanswered.set(i, missingFigure(name)));
      else if (isVaried(at)) { const column = columns[at.column] as Float64Array; places.forEach((i, j) => { out[i] = column[j] as number; }); } else places.forEach((i) => { out[i] = at.value; });
    });
    places.forEach((i, j) => {
      if (verdicts.elsewhere[j] === 1) { whole(i); verdicts.decidedExactly += 1; return; }
      buffers.holds[i] = verdicts.holds[j] as number;
      const tied = verdicts.ties.get(j) ?? [verdicts.governs[j] as number];
      buffers.governs[i] = tied.map((k) => shares[k]?.name ?? 'nothing checked').join(' = ');
    });
    return verdicts.decidedExactly;
  }

  /** A row assessed from its spec. */
  private wholeRow(row: number, i: number, names: readonly string[], buffers: { figures: Float64Array[]; holds: Uint8Array; governs: string[] }, unanswered: Map<number, TrailerError>): void {
    const spec = this.specAt(row);
    const assessed = isLeft(spec) ? spec : assess(spec.right);
    unanswered.delete(i);
    const outcome = isLeft(assessed) ? assessed : fromAssessment(assessed.right, names, this.measure);
    if (isLeft(outcome)) { unanswered.set(i, outcome.left); return; }
    outcome.right.figures.forEach((figure, k) => { (buffers.figures[k] as Float64Array)[i] = figure; });
    buffers.holds[i] = outcome.right.holds ? 1 : 0;
    buffers.governs[i] = outcome.right.governs;
  }
}

