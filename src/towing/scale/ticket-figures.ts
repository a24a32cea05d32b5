/** Out of the readings of a set of passes: tongue, weights, moves, and the sums that must agree. */
import { type Derived, difference, sum } from '../../trace/index.js';
import { roundingOf } from './ticket-closure.js';
import type { Readings } from './tickets.js';

/** The figures that a set of passes contains; what it does not contain is absent. */
export interface TicketFigures {
  readonly tongue?: Derived<'lb'>;
  /** What the tongue load is at the least, when only a pass with bars on was made: the tongue less what the bars moved. */
  readonly tongueAtLeast?: Derived<'lb'>;
  /** How far the tongue may be off by rounding of the platforms alone, either way. */
  readonly tongueWithin?: Derived<'lb'>;
  /** The whole trailer, tongue load included. */
  readonly gross?: Derived<'lb'>;
  readonly combination?: Derived<'lb'>;
  readonly towVehicleAlone?: Derived<'lb'>;
  /** Taken off the front axle by the tongue, bars off. */
  readonly offFront?: Derived<'lb'>;
  /** Put on the rear axle by the tongue, bars off. */
  readonly ontoRear?: Derived<'lb'>;
  readonly overhangOverWheelbase?: Derived<'ratio'>;
  /** What the bars put on the trailer axles and back on the front axle. */
  readonly trailerGain?: Derived<'lb'>;
  readonly frontGain?: Derived<'lb'>;
  readonly restored?: Derived<'ratio'>;
  readonly moment?: Derived<'lb*in'>;
}

export const total = (symbol: string, ...loads: readonly Derived<'lb'>[]): Derived<'lb'> => sum(symbol, loads);

/** What the tongue needs. */
export const tongueNeeds = 'a pass coupled with bars off, and the truck alone or the trailer alone';

/** The tongue load of a coupled pass: what came onto the truck, or what the trailer axles lost. */
function tongueIn(
  { steer, drive, trailer }: NonNullable<Readings['barsOn']>,
  bars: 'bars on' | 'bars off',
  symbol: string,
  alone: Derived<'lb'> | undefined,
  trailerAlone: Derived<'lb'> | undefined,
): Derived<'lb'> | undefined {
  if (alone !== undefined) return difference(symbol, total(`truck, coupled, ${bars}`, steer, drive), alone);
  return trailerAlone && difference(symbol, trailerAlone, trailer);
}

/** Tongue load and weights: from bars off against truck alone, or from the trailer alone against its axles coupled. */
export function weights(
  { barsOn, barsOff, truckAlone, trailerAlone }: Readings,
  division: Derived<'lb'>,
): TicketFigures {
  const pass = barsOff ?? barsOn;
  const combination = pass === undefined ? undefined : total('combination', pass.steer, pass.drive, pass.trailer);
  const alone = truckAlone && total('truck alone', truckAlone.steer, truckAlone.drive);
  const tongue = barsOff && tongueIn(barsOff, 'bars off', 'tongue load', alone, trailerAlone);
  const atLeast =
    barsOff === undefined && barsOn !== undefined
      ? tongueIn(barsOn, 'bars on', 'tongue load less what the bars moved', alone, trailerAlone)
      : undefined;
  const gross = trailerAlone ?? (combination && alone && difference('trailer gross', combination, alone));
  const towVehicleAlone =
    alone ?? (combination && trailerAlone && difference('truck alone', combination, trailerAlone));
  return {
    ...(combination && { combination }),
    ...(towVehicleAlone && { towVehicleAlone }),
    ...(gross && { gross }),
    ...(atLeast && { tongueAtLeast: atLeast }),
    ...(tongue && {
      tongue,
      tongueWithin: roundingOf('rounding in the tongue load', alone === undefined ? 2 : 4, division),
    }),
  };
}

/** What the tongue did to the truck's axles, and what the bars moved. */
export function moves({ barsOn, barsOff, truckAlone }: Readings): TicketFigures {
  return {
    ...(barsOff &&
      truckAlone && {
        offFront: difference('taken off the front axle', truckAlone.steer, barsOff.steer),
        ontoRear: difference('put on the rear axle', barsOff.drive, truckAlone.drive),
      }),
    ...(barsOn &&
      barsOff && {
        trailerGain: difference('gain of the trailer axles', barsOn.trailer, barsOff.trailer),
        frontGain: difference('gain of the front axle', barsOn.steer, barsOff.steer),
      }),
  };
}

/** The figures that people weigh for. */
export type WantedFigure =
  | 'tongue'
  | 'gross'
  | 'combination'
  | 'offFront'
  | 'trailerGain'
  | 'overhangOverWheelbase'
  | 'restored'
  | 'moment';

/** Each with its name and with the pass that would bring it. */
export const wanted: readonly (readonly [WantedFigure, string, string])[] = [
  ['tongue', 'tongue load', tongueNeeds],
  ['gross', 'trailer gross', 'a coupled pass and the truck alone, or the trailer alone'],
  ['combination', 'combination', 'a coupled pass'],
  ['offFront', 'what the tongue moves on the truck axles', 'a pass coupled with bars off and the truck alone'],
  ['trailerGain', 'what the bars move', 'a pass with bars on and one with bars off'],
  [
    'overhangOverWheelbase',
    'overhang over wheelbase',
    'a pass coupled with bars off and the truck alone, and a tongue load above the rounding of the scale',
  ],
  [
    'restored',
    'share of the front axle load restored',
    'all three passes of the rig and the truck, and a front axle change above the rounding of the scale',
  ],
  ['moment', 'moment of the bars', 'a pass with bars on, one with bars off, and the length from ball to trailer axles'],
];
