/** Does the machine lift the tongue while it comes on over the rear edge? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { balance, type LoadError, tailLift } from '../../load/index.js';
import { checkLoad, rating, weight } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type Derived, inPounds, type OutsideItsRange } from '../../trace/index.js';
import { orNone } from '../../units/internal.js';
import { othersPlaced, pieceThatLiftsMost } from './cargo-pieces.js';
import type { Climbers } from './climbers.js';
import type { LoadingPart } from './loading-part.js';
import { emptyPart, open } from './part-of-answer.js';
import { type Keys, unbalancedEmpty, unhitched, unplaced, wantingOf } from './wanting-keys.js';
import type { Weighed } from './weights.js';

type Problem = LoadError | OutsideItsRange;

/** Asks what lifts while the machine that pulls the ball up most comes on over the rear edge; the rest of the cargo stays in its place. */
export function tailPart(
  spec: DecodedSpec,
  weighed: Weighed,
  axlesAt: Derived<'in'> | undefined,
  { heaviest }: Climbers,
): Either<Problem, LoadingPart> {
  const { trailer, tow, cargo = [] } = spec;
  const { deck, rearLegs } = trailer;
  const piece = deck === undefined ? heaviest : pieceThatLiftsMost(cargo, weighed.cargo, deck.rear);
  if (piece === undefined) return right(emptyPart);
  const { cargo: machine, index } = piece;
  const unasked = (missing: string, paths: Keys): Either<never, LoadingPart> => {
    const what = `lifting the tongue while ${machine.name} climbs`;
    return right({
      ...open({ id: 'loading/uplift', what, missing, paths, piece: index }),
      decisions: piece.decisions,
    });
  };
  if (weighed.weightless[index]?.holds === true)
    return unasked(`a weight above zero of ${machine.name}`, [`cargo.${index}.weight`]);
  if (deck === undefined || axlesAt === undefined || weighed.trailer === undefined)
    return unasked('rear end of the deck and balance of the empty trailer', [
      ...wantingOf('trailer', trailer, 'deck'),
      ...unbalancedEmpty(spec),
    ]);
  const others = othersPlaced(weighed.cargo, index);
  if (others === undefined) return unasked('places of the other cargo', unplaced(spec, index));
  const empty = balance([weighed.trailer, ...others], { axlesAt });
  if (isLeft(empty)) return left({ ...empty.left, path: 'trailer.deck' });
  const { front, rear, wheelbase, overhang } = orNone(tow);
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
  if (isLeft(lift)) return left({ ...lift.left, path: 'trailer.deck' });
  const unknown =
    truck === 'unknown'
      ? [
          {
            id: 'loading/truck-hold',
            what: 'what the truck holds down while loading',
            missing: 'its rear axle alone, wheelbase and measured overhang',
            paths: unhitched(spec, 'rear', 'wheelbase', 'overhang'),
          },
        ]
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
    onLegs: rearLegs !== undefined,
    tailLift: lift.right,
    ...emptyPart,
    checks: legs,
    notes: lift.right.notes,
    notChecked: unknown,
    decisions: [...piece.decisions, ...empty.right.decisions, ...lift.right.decisions],
  });
}
