/** Can all figures of this sheet be true? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { ChooseError } from '../errors.js';
import { nothingToAnswer, questionRefusal } from '../refusal.js';
import { feasible, type Row } from './feasible.js';
import { arithmeticOf, boundsOf, type Relation, relationsOf, rowsOf } from './relations.js';
import { type ReadFigure, readSheet, type Sheet, tongueShareOf } from './sheet.js';

/** Figures that cannot all be true; without any one of them the others can. */
export interface SheetConflict {
  /** The figures, as small a set as there is. */
  readonly figures: readonly ReadFigure[];
  /** What must hold between them and does not, with the arithmetic, one line each. */
  readonly arithmetic: readonly string[];
  /** Where each of those relations comes from. */
  readonly sources: readonly string[];
}

/** What an audit of a sheet found. */
export interface SheetAudit {
  /** Every smallest set of figures that cannot all be true; empty when the sheet agrees with itself. */
  readonly conflicts: readonly SheetConflict[];
  /** How many relations could be asked of the figures that are printed. */
  readonly asked: number;
  /** The figures as they were read. */
  readonly figures: readonly ReadFigure[];
}

/** So many sets are looked for: a sheet with more is no sheet. */
const mostConflicts = 40;

/** What is not printed may be anything that is not below zero. */
const notNegative = (relations: readonly Relation[]): readonly Row[] =>
  [...new Set(relations.flatMap(({ factors }) => [...factors.keys()]))].map((path) => ({
    factors: new Map([[path, -1]]),
    atMost: 0,
  }));

const holds = (figures: readonly ReadFigure[], relations: readonly Relation[]): boolean =>
  feasible([...figures.flatMap(boundsOf), ...relations.flatMap(rowsOf), ...notNegative(relations)]);

/** Takes out whatever is not needed for the conflict, one after the other. */
function smallest<A>(all: readonly A[], stillHolds: (some: readonly A[]) => boolean): readonly A[] {
  let kept = all;
  for (const one of all) {
    const without = kept.filter((other) => other !== one);
    if (!stillHolds(without)) kept = without;
  }
  return kept;
}

/** Every smallest set: one is found, then each of its figures is freed in turn and another is looked for. */
function conflictsIn(
  figures: readonly ReadFigure[],
  relations: readonly Relation[],
): readonly (readonly ReadFigure[])[] {
  const found = new Map<string, readonly ReadFigure[]>();
  const seen = new Set<string>();
  const search = (left: readonly ReadFigure[]): void => {
    const key = left.map(({ path }) => path).join();
    if (seen.has(key) || found.size >= mostConflicts || holds(left, relations)) return;
    seen.add(key);
    const set = smallest(left, (some) => holds(some, relations));
    found.set(set.map(({ path }) => path).join(), set);
    for (const one of set) search(left.filter((other) => other !== one));
  };
  search(figures);
  return [...found.values()].sort((a, b) => a.length - b.length);
}

/**
 * Can all figures of this sheet be true?
 *
 * Each printed figure means any figure that rounds to it: `printed - r/2` to `printed + r/2`, r what it was rounded to.
 * Relations between them: empty weight + payload = GVWR; axles bear the GVWR less the greatest tongue share; the tires of
 * an axle bear its rating; printed totals; the coupler is rated for the GVWR; tongue + deck = overall length; flat + dovetail = deck.
 * A set of figures conflicts when no true figures behind them meet all relations.
 *
 * Not a proof that a sheet is right: figures that agree may all be wrong. The label on the trailer governs.
 *
 * @param sheet figures as printed; rounded to a pound or an inch by default
 * @returns every smallest set that cannot be true, with its arithmetic; Left `UnusableFigure`, `NothingToAnswer` when no relation has all its figures
 * @example orThrow(auditSheet({ gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,500 lb' })).conflicts.length // 1
 * @source each relation carries its own
 */
export function auditSheet(sheet: Sheet): Either<ChooseError, SheetAudit> {
  const unusable = questionRefusal('sheet', sheet);
  if (unusable !== undefined) return left(unusable);
  const read = readSheet(sheet);
  if (isLeft(read)) return read;
  const share = tongueShareOf(sheet);
  if (isLeft(share)) return share;
  const figures = read.right;
  const printed = new Set(figures.map(({ path }) => path));
  const relations = relationsOf(sheet, share.right);
  const asked = relations.filter(({ factors }) => [...factors.keys()].every((path) => printed.has(path))).length;
  const sets = conflictsIn(figures, relations);
  if (asked === 0 && sets.length === 0)
    return left(
      nothingToAnswer(
        'whether the sheet agrees with itself',
        'a third figure that ties two together, such as payload beside GVWR and empty weight',
      ),
    );
  const conflicts = sets.map((set): SheetConflict => {
    const broken = smallest(relations, (some) => holds(set, some));
    return {
      figures: set,
      arithmetic: broken.map((relation) => arithmeticOf(relation, set)),
      sources: broken.map(({ source }) => source),
    };
  });
  return right({ conflicts, asked, figures });
}
