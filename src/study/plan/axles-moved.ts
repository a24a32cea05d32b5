/** Does a plan move axles under a trailer that was weighed with them elsewhere? By its levers, or by an alternative. */
import { axlesMovedByLevers } from '../../assessment/index.js';
import type { Note } from '../../ratings/index.js';
import type { Given } from '../../trace/index.js';
import { convert, dimensionOf, type Quantity, type Unit } from '../../units/index.js';
import { compareFigures } from '../../units/internal.js';
import type { Factor } from './factors.js';

type Leaves = ReadonlyMap<string, Given>;

/** The figures of the spec with one choice taken, and the keys that the choice replaces. */
export interface ChoiceLeaves {
  readonly leaves: Leaves;
  readonly replaces: readonly string[];
}

const differ = (a: Quantity<Unit>, b: Quantity<Unit>): boolean =>
  dimensionOf(a.unit) !== dimensionOf(b.unit) || compareFigures(convert(a, b.unit as never) as Quantity<Unit>, b) !== 0;

const isOfTrailerItself = (path: string): boolean => path.startsWith('trailer.curb');

/** What one choice moves: the figures of the spec that it changes, new ones where it names them, and what it tells of the empty trailer. */
function movedBy(own: Leaves, { leaves, replaces }: ChoiceLeaves): readonly string[] {
  const changes = [...leaves].flatMap(([path, { value }]) => {
    const before = own.get(path);
    return before !== undefined && differ(before.value, value) ? [path] : [];
  });
  return [...changes, ...replaces.filter((path) => !own.has(path) || isOfTrailerItself(path))];
}

/** The remark on a plan that moves axles under a weighed tongue load; none where the tongue load is told with the new places. */
export function axlesMovedBy(
  own: Leaves,
  leaves: Leaves,
  choices: readonly ChoiceLeaves[],
  factors: readonly Factor[],
): readonly Note[] {
  const together = new Map<number, string[]>();
  for (const { axis, path } of factors) together.set(axis, [...(together.get(axis) ?? []), path]);
  return axlesMovedByLevers(leaves, [...choices.map((choice) => movedBy(own, choice)), ...together.values()]);
}
