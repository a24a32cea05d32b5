/** Reads trailer and machine, and writes every limit on the place of the machine as one straight line in its weight. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Bound } from '../../ratings/index.js';
import {
  aboveZero,
  allHold,
  between,
  constant,
  type Decision,
  type Derived,
  inInches,
  inOrder,
  minus,
  notNegative,
  type OutsideItsRange,
  plus,
  renamed,
  result,
  statics,
  times,
} from '../../trace/index.js';
import { inch } from '../../units/index.js';
import { balance } from '../balance/balance.js';
import type { BalanceError } from '../errors.js';
import type { MachineShape, PlacementLimit, TrailerForPlacing } from './limits.js';
import { deckLimits, weightLimits, weightsOf } from './lines-of-limits.js';

/** Trailer and machine read in, with every limit as a line. */
export interface Lines {
  readonly axlesAt: Derived<'in'>;
  /** Weight of all that stays where it is, and its tongue load times the distance to the axles. */
  readonly weight: Derived<'lb'>;
  readonly moment: Derived<'lb*in'>;
  readonly balancePoint: Derived<'in'>;
  readonly uncertainty: Derived<'in'>;
  readonly limits: readonly PlacementLimit[];
  /** What limits the machine's weight at any place. */
  readonly weights: readonly Bound[];
  readonly decisions: readonly Decision[];
}

/** Reads trailer and machine in, refuses what cannot be placed, and writes each limit as a line. */
export function linesOf(
  trailer: TrailerForPlacing,
  machine: MachineShape,
): Either<BalanceError | OutsideItsRange, Lines> {
  const without = balance(trailer.items, { axlesAt: trailer.axlesAt });
  if (isLeft(without)) return without;
  const { axlesAt: a } = without.right;
  const weight = renamed('weight without the machine', without.right.gross);
  const front = inInches('deck front', trailer.deck.front);
  const rear = inInches('deck rear', trailer.deck.rear);
  const length = inInches('machine length', machine.length);
  const balancePoint = inInches('balance point behind machine front', machine.balancePoint);
  const uncertainty = inInches('balance point uncertainty', machine.uncertainty);
  const guarded = allHold([
    inOrder('deck ends', front, rear),
    aboveZero('machine length', length),
    ...between('balance point behind machine front', balancePoint, constant(inch(0)), length, 'included'),
    notNegative('balance point uncertainty', uncertainty),
  ]);
  if (isLeft(guarded)) return guarded;
  const moment = result(
    'tongue moment without the machine',
    minus(times(weight, a), plus(...without.right.lines.map((line) => line.moment))),
    statics,
  );
  const limits = [...deckLimits(front, rear, length, balancePoint), ...weightLimits(trailer, a, weight, moment)];
  const guideline = trailer.guideline === 'no guideline' ? [] : trailer.guideline.decisions;
  return right({
    axlesAt: a,
    weight,
    moment,
    balancePoint,
    uncertainty,
    limits,
    weights: weightsOf(trailer, weight),
    decisions: [...without.right.decisions, ...guideline, ...guarded.right],
  });
}
