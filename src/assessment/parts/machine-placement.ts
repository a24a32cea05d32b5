/** Where the machine of a spec may stand: the window of the first piece of cargo whose length is known, the others staying put. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import {
  type Guideline,
  type HeaviestMachine,
  heaviestMachine,
  type LoadError,
  type PlacedLimit,
  type PlacementWindow,
  placementWindow,
  type TrailerForPlacing,
} from '../../load/index.js';
import { type Bound, note, rating } from '../../ratings/index.js';
import type { Spec } from '../../spec/index.js';
import {
  asDerived,
  constant,
  type Derived,
  inInches,
  inPounds,
  type OutsideItsRange,
  renamed,
} from '../../trace/index.js';
import { compare, inch } from '../../units/index.js';
import { othersPlaced } from './cargo-pieces.js';
import { emptyPart, open, type Part } from './part-of-answer.js';
import { tiresAsRun } from './payload.js';
import type { Stack } from './running-gear.js';
import type { TowPart } from './tow-side.js';
import type { Weighed } from './weights.js';

export interface PlacePart extends Part {
  readonly machine?: string;
  readonly window?: PlacementWindow;
  readonly heaviest?: HeaviestMachine;
  /** Where its balance point is now, and the limits it does not keep to there. */
  readonly now?: { readonly at: Derived<'in'>; readonly breaks: readonly PlacedLimit[] };
}

/** The tongue ratings a place must keep to, and what the tow vehicle leaves for the tongue; without a tow vehicle the coupler's alone. */
const tongueBounds = ({ trailer: { coupler } }: Spec, { largest }: TowPart): readonly Bound[] =>
  largest?.limits.filter(({ on }) => on === 'tongue') ??
  (coupler?.tongue === undefined
    ? []
    : [{ name: 'coupler tongue', limit: inPounds('coupler tongue', coupler.tongue) }]);

/** What the axles may carry: by their ratings, and with the tires at the pressure they run. */
const axleLimits = ({ capacity }: AxleGroup, asRun: Derived<'lb'> | undefined): TrailerForPlacing['axleLimits'] => [
  rating('axle group', capacity),
  ...(asRun === undefined ? [] : [rating('axle group', asRun, { part: 'tires of the' })]),
];

const barsOff = note(
  'WindowWithBarsOff',
  'The window is reckoned with the bars off: set, they put some of the tongue load back on the trailer axles, which are checked so where the machine stands now.',
);

/** The limits that a place does not keep to: further forward than a front end, or further back than a rear end. */
const placeNow = (at: Derived<'in'>, limits: readonly PlacedLimit[]): NonNullable<PlacePart['now']> => ({
  at,
  breaks: limits.filter((limit) => compare(at.value, limit.at.value) === (limit.end === 'front' ? -1 : 1)),
});

/** Finds the window, and the heaviest machine that has one. */
export function placePart(
  spec: Spec,
  weighed: Weighed,
  stack: Stack,
  tow: TowPart,
  band: Guideline,
): Either<LoadError | OutsideItsRange, PlacePart> {
  const cargo = spec.cargo ?? [];
  const index = cargo.findIndex(({ length, balancePoint }) => length !== undefined && balancePoint !== undefined);
  const machine = cargo[index];
  if (machine === undefined)
    return right(
      cargo.length === 0
        ? emptyPart
        : open('where the machine may stand', 'length and balance point of a piece of cargo'),
    );
  const { deck } = spec.trailer;
  const { group } = stack;
  if (deck === undefined || group === undefined || weighed.trailer === undefined)
    return right(
      open(`where ${machine.name} may stand`, deck === undefined ? 'ends of the deck' : 'balance of the empty trailer'),
    );
  const others = othersPlaced(weighed.cargo, index);
  if (others === undefined) return right(open(`where ${machine.name} may stand`, 'places of the other cargo'));
  const trailer: TrailerForPlacing = {
    items: [weighed.trailer, ...others],
    axlesAt: group.at,
    deck: { front: deck.front, rear: deck.rear },
    guideline: band,
    tongueLimits: [],
    tongueBounds: tongueBounds(spec, tow),
    axleLimits: axleLimits(group, tiresAsRun(stack)),
  };
  const measure = (symbol: string, figure: Derived<'in' | 'ft' | 'mi' | 'mm' | 'cm' | 'm'>): Derived<'in'> =>
    inInches(symbol, renamed(symbol, figure));
  const shape = {
    length: measure(`${machine.name} length`, machine.length as NonNullable<typeof machine.length>),
    balancePoint: measure(
      `${machine.name} balance point`,
      machine.balancePoint as NonNullable<typeof machine.balancePoint>,
    ),
    uncertainty:
      machine.uncertainty === undefined
        ? constant(inch(0))
        : measure(`${machine.name} uncertainty`, machine.uncertainty),
  };
  const window = placementWindow(trailer, {
    ...shape,
    weight: inPounds(`${machine.name} weight`, renamed(`${machine.name} weight`, asDerived('weight', machine.weight))),
  });
  if (isLeft(window)) return left({ ...window.left, path: `cargo.${index}` });
  const heaviest = heaviestMachine(trailer, shape);
  const now =
    weighed.cargo[index] &&
    placeNow(inInches(`${machine.name} position`, weighed.cargo[index].at), window.right.limits);
  const unsure =
    machine.uncertainty === undefined
      ? [
          note(
            'BalancePointTakenAsSure',
            `The balance point of ${machine.name} is taken as exact: no uncertainty was given.`,
          ),
        ]
      : [];
  return right({
    ...emptyPart,
    machine: machine.name,
    window: window.right,
    ...(now && { now }),
    notes: [
      ...window.right.notes.filter(({ tag }) => tag !== 'GrossNotHere'),
      ...unsure,
      ...(spec.tow?.bars === undefined ? [] : [barsOff]),
    ],
    decisions: window.right.decisions,
    ...(isLeft(heaviest) ? {} : { heaviest: heaviest.right }),
  });
}
