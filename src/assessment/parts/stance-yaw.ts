/** How the weight is spread along the trailer: its yaw inertia. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Item, type LoadError, yawInertia } from '../../load/index.js';
import { note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  constant,
  type Derived,
  decide,
  inInches,
  inPounds,
  minus,
  type OutsideItsRange,
  over,
  result,
  times,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { has } from '../../units/internal.js';
import { emptyPart } from './part-of-answer.js';
import type { StancePart } from './stance-part.js';
import type { Weighed } from './weights.js';

type Found = Either<LoadError | OutsideItsRange, StancePart>;

const nothing = constant(lb(0));

/** Where the weight of an item acts; a trailer known by its tongue load acts at `a (W - T) / W`. */
function placeOf(item: Item, axlesAt: Derived<'in'>): Derived<'in'> {
  if (has(item, 'at')) return inInches(`${item.name} position`, item.at);
  const own = inPounds(`${item.name} weight`, item.weight);
  return result(
    `${item.name} position`,
    over(times(minus(own, inPounds(`${item.name} tongue load`, item.tongue)), axlesAt), own),
  );
}

/** For comparing layouts; a piece without a length counts as a point, which is said. */
export function yawOf(
  { trailer: { length }, cargo = [] }: DecodedSpec,
  { trailer, cargo: placed, balance }: Weighed,
): Found {
  if (trailer === undefined || balance === undefined) return right(emptyPart);
  const weighs = decide(trailer.weight as Derived<'lb'>, '>', nothing);
  if (!weighs.holds) return right({ ...emptyPart, decisions: [weighs] });
  const items = [
    {
      name: trailer.name,
      weight: trailer.weight,
      at: placeOf(trailer, balance.axlesAt),
      length: length ?? ('point' as const),
    },
    ...placed
      .filter((item) => item !== undefined)
      .map(({ name, weight, at }, i) => ({ name, weight, at, length: cargo[i]?.length ?? ('point' as const) })),
  ];
  const yaw = yawInertia(items);
  if (isLeft(yaw)) return yaw;
  const points = items.filter((item) => item.length === 'point').map(({ name }) => name);
  const told =
    points.length === 0
      ? []
      : [
          note(
            'CountedAsPoints',
            `For the spread of weight these count as points, for want of a length: ${points.join(', ')}.`,
          ),
        ];
  return right({
    yaw: yaw.right,
    checks: emptyPart.checks,
    notes: told,
    attention: emptyPart.attention,
    notChecked: emptyPart.notChecked,
    decisions: [weighs, ...yaw.right.decisions],
  });
}
