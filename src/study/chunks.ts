/** Runs a planned design chunk by chunk. A chunk of one alternative is worked on in place; others are gathered and put back. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { assess } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import type { Decimal } from '../units/index.js';
import type { PlannedDesign } from './design.js';
import { type Chunk, type Desk, deskFor } from './desk.js';
import { evaluateBlock } from './evaluate.js';
import { exactly } from './exact-numbers.js';
import { allPlaces, figureColumns, type Group, gather, groupsOf, sortMarked } from './gather.js';
import { type Names, namesOf } from './names.js';
import type { OtherWays, Resolved } from './resolve.js';
import { changed } from './spec-paths.js';
import { blockRows, enoughColumns } from './tape.js';
import type { Measure, Variant } from './variant.js';
import { fromAssessment, missingFigure } from './whole-rows.js';

export type { Chunk };

/** Fewer rows than this are assessed from their specs rather than given a tape of their own. */
const worthATape = 4;

/** Rows of a chunk that turn out to stand alone before the rest of it is assessed row by row too. */
const mostAlone = 16;

export class Chunks {
  private readonly governing: Names = namesOf();

  constructor(
    private readonly resolved: Resolved,
    private readonly planned: PlannedDesign,
    private readonly measure: Measure,
  ) {}

  /** The exact figures of a row, by path. */
  exactFigures(row: number): ReadonlyMap<string, Decimal> {
    return new Map(
      this.resolved.factors.map(({ path, levelAt }, k) => {
        const level = this.planned.levelAt(row, k);
        return [path, level >= 0 ? levelAt(level) : exactly(this.planned.valueAt(row, k))];
      }),
    );
  }

  /** The spec of a row: its alternative with the varied figures put in, each keeping what it rests on. */
  specAt(row: number): Either<TrailerError, unknown> {
    const spec = this.resolved.specOf(this.resolved.choices.map((_, i) => this.planned.choiceAt(row, i)));
    const figures = this.exactFigures(row);
    const changes = this.resolved.factors.map(({ path, unit, basis }) => [
      path,
      { value: (figures.get(path) as Decimal).toFixed(), unit, basis },
    ]);
    return right(changed(spec, Object.fromEntries(changes) as Record<string, unknown>));
  }

  /** Every figure that some alternative measures, in the order they are first met. */
  figureNames(): Either<TrailerError, readonly { name: string; unit: string }[]> {
    const variants = this.resolved.allVariants();
    const names = new Map<string, string>();
    for (const variant of variants)
      if (!isLeft(variant))
        for (const { name, node } of variant.right.figures) if (!names.has(name)) names.set(name, node.value.unit);
    const failed = variants.find(isLeft);
    if (names.size === 0 && failed !== undefined) return left(failed.left);
    return right([...names].map(([name, unit]) => ({ name, unit })));
  }

  *run(
    from: number,
    to: number,
    names: readonly string[],
    onProgress?: (done: number, of: number) => void,
    signal?: AbortSignal,
  ): Generator<Chunk, void> {
    const size = Math.max(0, Math.min(blockRows, to - from));
    const desk = deskFor(size, this.resolved, names.length);
    for (let start = from; start < to; start += blockRows) {
      if (signal?.aborted === true) return;
      const rows = Math.min(blockRows, to - start);
      yield this.chunk(desk, start, rows, names);
      onProgress?.(start + rows - from, to - from);
    }
  }

  private chunk(desk: Desk, start: number, rows: number, names: readonly string[]): Chunk {
    desk.inputs.forEach((input, k) => this.planned.fillValues(k, start, rows, input));
    desk.choices.forEach((choice, k) => this.planned.fillChoices(k, start, rows, choice));
    desk.unanswered.clear();
    let figures: readonly Float64Array[] = desk.figures;
    let exactRows = 0;
    for (const group of groupsOf(desk.choices, rows)) {
      const done = this.fill(desk, start, rows, group, names);
      figures = done.figures;
      exactRows += done.exactRows;
    }
    const { choices, inputs, holds, governs, unanswered } = desk;
    return {
      start,
      rows,
      choices,
      inputs,
      figures,
      holds,
      governs,
      governNames: this.governing.names,
      unanswered: new Map(unanswered),
      exactRows,
    };
  }

  private fill(
    desk: Desk,
    start: number,
    rows: number,
    { indexes, places }: Group,
    names: readonly string[],
  ): { figures: readonly Float64Array[]; exactRows: number } {
    const variant = this.resolved.variantOf(indexes);
    if (isLeft(variant)) {
      const all = places ?? allPlaces(rows);
      for (const i of all) this.wholeRow(desk, start, i, names);
      return { figures: desk.figures, exactRows: all.length };
    }
    const first = this.onTape(desk, start, rows, variant.right, places, names);
    if (first.otherWay.length === 0) return first;
    const found = this.onOtherWays(desk, start, first.otherWay, this.resolved.otherWays(indexes), names);
    for (const i of found.rest) this.wholeRow(desk, start, i, names);
    return { figures: first.figures, exactRows: first.exactRows + found.exactRows + found.rest.length };
  }

  /** Rows that go another way: on the tapes met so far, then on new ones. What is handed back is to be assessed row by row. */
  private onOtherWays(
    desk: Desk,
    start: number,
    rows: readonly number[],
    { ways, record, keep }: OtherWays,
    names: readonly string[],
  ): { rest: readonly number[]; exactRows: number } {
    let rest = rows;
    let exactRows = 0;
    const runOn = (way: Variant): void => {
      const done = this.onTape(desk, start, rest.length, way, rest, names);
      rest = done.otherWay;
      exactRows += done.exactRows;
    };
    for (const way of ways) if (rest.length > 0) runOn(way);
    const alone: number[] = [];
    while (rest.length >= worthATape && alone.length < mostAlone) {
      const row = rest[0] as number;
      const spec = this.specAt(start + row);
      const way = isLeft(spec) ? undefined : record(spec.right);
      if (way === 'no more') break;
      if (way !== undefined) runOn(way);
      // A row without an answer has no tape, and one recorded on the very edge of a decision speaks for no row, its own included.
      if (way !== undefined && rest[0] !== row) keep(way);
      else {
        alone.push(row);
        rest = rest.filter((i) => i !== row);
      }
    }
    return { rest: [...alone, ...rest], exactRows };
  }

  /** Runs rows on one tape; those that go another way are handed back. */
  private onTape(
    desk: Desk,
    start: number,
    rows: number,
    variant: Variant,
    places: readonly number[] | undefined,
    names: readonly string[],
  ): { figures: readonly Float64Array[]; exactRows: number; otherWay: readonly number[] } {
    const { verdicts } = desk;
    const count = places?.length ?? rows;
    const placeOf = (j: number): number => (places === undefined ? j : (places[j] as number));
    const columns = enoughColumns(desk.columns, variant.tape, verdicts.holds.length);
    desk.inputs.forEach((input, k) => gather(input, columns[k] as Float64Array, places));
    evaluateBlock(variant, columns, count, verdicts, (j) => this.exactFigures(start + placeOf(j)));
    const figures = figureColumns(
      variant,
      columns,
      desk.figures,
      names,
      count,
      places === undefined && !verdicts.marked,
      places,
    );
    this.putVerdicts(desk, variant, count, places);
    const missing = names.find((name) => !variant.figures.some((figure) => figure.name === name));
    for (let j = 0; j < count; j += 1)
      if (missing === undefined) break;
      else desk.unanswered.set(placeOf(j), missingFigure(missing));
    if (!verdicts.marked) return { figures, exactRows: 0, otherWay: [] };
    const { whole, otherWay, exactRows } = sortMarked(verdicts.marks, count, placeOf);
    for (const i of whole) this.wholeRow(desk, start, i, names);
    for (const i of otherWay) desk.unanswered.delete(i);
    return { figures, exactRows, otherWay };
  }

  /** Holds and governing checks to their places. */
  private putVerdicts(
    { holds, governs, verdicts }: Desk,
    { shares }: Variant,
    count: number,
    places: readonly number[] | undefined,
  ): void {
    const own =
      shares.length === 0
        ? [this.governing.indexOf('nothing checked')]
        : shares.map(({ name }) => this.governing.indexOf(name));
    for (let j = 0; j < count; j += 1) {
      const i = places === undefined ? j : (places[j] as number);
      holds[i] = verdicts.holds[j] as number;
      governs[i] = own[verdicts.governs[j] as number] as number;
    }
    for (const [j, tied] of verdicts.ties)
      governs[places === undefined ? j : (places[j] as number)] = this.governing.indexOf(
        tied.map((k) => shares[k]?.name).join(' = '),
      );
  }

  /** A row assessed from its spec. */
  private wholeRow(
    { figures, holds, governs, unanswered }: Desk,
    start: number,
    i: number,
    names: readonly string[],
  ): void {
    const spec = this.specAt(start + i);
    const assessed = isLeft(spec) ? spec : assess(spec.right);
    const outcome = isLeft(assessed) ? assessed : fromAssessment(assessed.right, names, this.measure);
    unanswered.delete(i);
    if (isLeft(outcome)) {
      unanswered.set(i, outcome.left);
      return;
    }
    outcome.right.figures.forEach((figure, k) => {
      (figures[k] as Float64Array)[i] = figure;
    });
    holds[i] = outcome.right.holds ? 1 : 0;
    governs[i] = this.governing.indexOf(outcome.right.governs);
  }
}
