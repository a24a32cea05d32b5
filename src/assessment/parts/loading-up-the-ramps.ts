/** Getting on: does the machine hang up at an edge, and does it lift the tongue while it climbs? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  balance,
  type CrestClearance,
  crestClearance,
  crestsOf,
  type LoadError,
  type RampSpacing,
  rampAngle,
  rampSpacing,
  type TailLift,
  tailLift,
} from '../../load/index.js';
import { checkLoad, rating, weight } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type Derived, inPounds, type OutsideItsRange } from '../../trace/index.js';
import { heaviestPiece, othersPlaced } from './cargo-pieces.js';
import { emptyPart, open, type Part, together } from './part-of-answer.js';
import type { Weighed } from './weights.js';

export interface ClimbPart extends Part {
  readonly crests?: CrestClearance;
  readonly tail?: TailLift;
  /** True when rear legs are set before loading: they take what the ball would be pulled up by, and have a check of their own. */
  readonly onLegs?: boolean;
  readonly setting?: RampSpacing;
}

type Problem = LoadError | OutsideItsRange;

function crestPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, ClimbPart> {
  const machine = cargo.find(({ wheelbase, lowPoint }) => wheelbase !== undefined && lowPoint !== undefined);
  if (ramps === undefined || cargo.length === 0) return right(emptyPart);
  if (machine?.wheelbase === undefined || machine.lowPoint === undefined)
    return right(open('hanging up at the edge of the deck', 'wheelbase and low point of a wheeled machine'));
  const angle = rampAngle(ramps.height, ramps.length);
  if (isLeft(angle)) return angle;
  const edges = crestsOf(angle.right.angle, ramps.dovetail ?? 'straight deck', machine.wheelbase);
  if (isLeft(edges)) return edges;
  const clear = crestClearance(machine.wheelbase, [{ name: 'low point', ...machine.lowPoint }], edges.right.crests);
  if (isLeft(clear)) return clear;
  return right({
    ...emptyPart,
    crests: clear.right,
    notes: [...edges.right.notes, ...clear.right.notes],
    decisions: [...angle.right.decisions, ...edges.right.decisions, ...clear.right.decisions],
  });
}

/** Between which settings the ramps may stand for every tire of the machine. */
function settingPart({ trailer: { ramps }, cargo = [] }: DecodedSpec): Either<Problem, ClimbPart> {
  const gauges = cargo.find((machine) => machine.gauges !== undefined)?.gauges;
  if (ramps?.setting === undefined && gauges === undefined) return right(emptyPart);
  if (ramps?.setting === undefined || gauges === undefined)
    return right(
      open(
        'where to set the ramps',
        gauges === undefined ? 'gauge and tire width of the machine' : 'the settings the ramps allow',
      ),
    );
  const { width, ...ends } = ramps.setting;
  const setting = rampSpacing(
    gauges.map((axle, i) => ({ name: `machine axle ${i + 1}`, ...axle })),
    { rampWidth: width, ...ends },
  );
  return isLeft(setting)
    ? setting
    : right({ ...emptyPart, setting: setting.right, notes: setting.right.notes, decisions: setting.right.decisions });
}

/** The heaviest machine comes on over the rear edge while the rest of the cargo stands where it stands. */
function tailPart(
  { trailer: { deck, rearLegs }, tow, cargo = [] }: DecodedSpec,
  weighed: Weighed,
  axlesAt: Derived<'in'> | undefined,
): Either<Problem, ClimbPart> {
  const piece = heaviestPiece(cargo);
  if (piece === undefined) return right(emptyPart);
  const { cargo: machine, index } = piece;
  const what = `lifting the tongue while ${machine.name} climbs`;
  if (deck === undefined || axlesAt === undefined || weighed.trailer === undefined)
    return right({
      ...open(what, 'rear end of the deck and balance of the empty trailer'),
      decisions: piece.decisions,
    });
  const others = othersPlaced(weighed.cargo, index);
  if (others === undefined) return right({ ...open(what, 'places of the other cargo'), decisions: piece.decisions });
  const empty = balance([weighed.trailer, ...others], { axlesAt });
  if (isLeft(empty)) return empty;
  const { front, rear, wheelbase, overhang } = tow ?? {};
  const truck =
    rear === undefined || wheelbase === undefined || overhang === undefined || overhang === 'unknown'
      ? 'unknown'
      : { frontAxle: front, rearAxle: rear, wheelbase, overhang };
  const lift = tailLift({
    tongue: empty.right.tongue,
    axlesAt,
    deckRear: deck.rear,
    machineWeight: machine.weight,
    truck,
  });
  if (isLeft(lift)) return lift;
  const unknown =
    truck === 'unknown'
      ? open('what the truck holds down while loading', 'its rear axle alone, wheelbase and measured overhang')
          .notChecked
      : [];
  const legs =
    rearLegs === undefined
      ? []
      : [
          checkLoad(
            rating('rear legs', inPounds('rear legs', rearLegs)),
            weight('load on the rear legs', lift.right.legs),
          ),
        ];
  return right({
    ...emptyPart,
    checks: legs,
    onLegs: rearLegs !== undefined,
    tail: lift.right,
    notes: lift.right.notes,
    notChecked: unknown,
    decisions: [...piece.decisions, ...empty.right.decisions, ...lift.right.decisions],
  });
}

/** Asks all three. */
export function climbPart(
  spec: DecodedSpec,
  weighed: Weighed,
  axlesAt: Derived<'in'> | undefined,
): Either<Problem, ClimbPart> {
  const crest = crestPart(spec);
  if (isLeft(crest)) return left({ ...crest.left, path: 'trailer.ramps' });
  const tail = tailPart(spec, weighed, axlesAt);
  if (isLeft(tail)) return left({ ...tail.left, path: 'trailer.deck' });
  const setting = settingPart(spec);
  if (isLeft(setting)) return left({ ...setting.left, path: 'trailer.ramps.setting' });
  const parts = [crest.right, tail.right, setting.right];
  return right({
    ...together(parts),
    ...(crest.right.crests && { crests: crest.right.crests }),
    ...(tail.right.tail && { tail: tail.right.tail, onLegs: tail.right.onLegs === true }),
    ...(setting.right.setting && { setting: setting.right.setting }),
  });
}
