/** The passes over a platform scale, and their readings in pounds. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AnyWeight, type Decision, type Derived, inPounds } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { TowingError } from '../errors.js';
import { noneBelowZero } from '../figures.js';

/** One pass of the coupled rig, an axle or axle group on each platform. */
export interface CoupledPass {
  readonly steer: AnyWeight;
  readonly drive: AnyWeight;
  readonly trailer: AnyWeight;
}

/** Any set of passes, one after the other with the same load, fuel and people. */
export interface Tickets {
  /** Coupled, spring bars working. */
  readonly barsOn?: CoupledPass | undefined;
  /** Coupled, spring bars slack, or no bars at all. */
  readonly barsOff?: CoupledPass | undefined;
  /** The truck by itself, trailer dropped. */
  readonly truckAlone?: { readonly steer: AnyWeight; readonly drive: AnyWeight } | undefined;
  /** The trailer unhitched, its whole weight, axles and jack together. */
  readonly trailerAlone?: AnyWeight | undefined;
}

interface CoupledReading {
  readonly steer: Derived<'lb'>;
  readonly drive: Derived<'lb'>;
  readonly trailer: Derived<'lb'>;
}

/** The same passes, in pounds, as weighed. */
export interface Readings {
  readonly barsOn?: CoupledReading;
  readonly barsOff?: CoupledReading;
  readonly truckAlone?: Omit<CoupledReading, 'trailer'>;
  readonly trailerAlone?: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

const passNames = {
  barsOn: 'coupled, bars on',
  barsOff: 'coupled, bars off',
  truckAlone: 'truck alone',
  trailerAlone: 'trailer alone',
} as const;

/** The passes there are, by name. */
export const passesOf = (tickets: Tickets): readonly string[] =>
  (Object.keys(passNames) as (keyof typeof passNames)[])
    .filter((pass) => tickets[pass] !== undefined)
    .map((pass) => passNames[pass]);

const coupled = ({ steer, drive, trailer }: CoupledPass, when: string): CoupledReading => ({
  steer: inPounds(`steer, ${when}`, steer, 'scale'),
  drive: inPounds(`drive, ${when}`, drive, 'scale'),
  trailer: inPounds(`trailer axles, ${when}`, trailer, 'scale'),
});

/** Reads the passes. Left `BelowZero`: a platform never shows less than zero. */
export function readTickets(tickets: Tickets): Either<TowingError, Readings> {
  const { barsOn, barsOff, truckAlone, trailerAlone } = tickets;
  const readings = {
    ...(barsOn && { barsOn: coupled(barsOn, 'bars on') }),
    ...(barsOff && { barsOff: coupled(barsOff, 'bars off') }),
    ...(truckAlone && {
      truckAlone: {
        steer: inPounds('steer, alone', truckAlone.steer, 'scale'),
        drive: inPounds('drive, alone', truckAlone.drive, 'scale'),
      },
    }),
    ...(trailerAlone && { trailerAlone: inPounds('trailer alone', trailerAlone, 'scale') }),
  };
  const platforms = collected(Object.entries(readings), ([pass, reading]): (readonly [string, Derived<'lb'>])[] =>
    'why' in reading
      ? [[pass, reading as Derived<'lb'>]]
      : Object.entries(reading as CoupledReading).map(([axle, load]) => [
          `${axle}, ${passNames[pass as keyof typeof passNames]}`,
          load as Derived<'lb'>,
        ]),
  );
  const weighed = noneBelowZero(platforms);
  return isLeft(weighed) ? weighed : right({ ...readings, decisions: weighed.right });
}
