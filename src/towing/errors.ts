/** What can go wrong with towing questions: plain data. */
import type { Unit, WireQuantity } from '../units/index.js';

/** `ball behind`: bumper pull, ball on a mount behind the rear axle. `gooseneck`: ball in the bed, ahead of it. */
export type HitchKind = 'ball behind' | 'gooseneck';

interface Where {
  readonly chapter: 'towing';
  readonly path?: string;
}

/** A figure that must be greater than zero is not: a wheelbase, a rating, a gross weight. */
export interface NotAboveZero extends Where {
  readonly tag: 'NotAboveZero';
  readonly what: string;
  readonly found: WireQuantity<Unit>;
}

/** A figure that may be zero but not less is less: the reading of a platform, the moment of spring bars. */
export interface BelowZero extends Where {
  readonly tag: 'BelowZero';
  readonly what: string;
  readonly found: WireQuantity<Unit>;
}

/** A share that must lie above zero and not above one does not. */
export interface NotAShare extends Where {
  readonly tag: 'NotAShare';
  readonly what: string;
  readonly found: WireQuantity<Unit>;
}

/** The overhang has the wrong sign for this hitch, or puts the ball at or ahead of the front axle. */
export interface HitchContradicts extends Where {
  readonly tag: 'HitchContradicts';
  readonly hitch: HitchKind;
  readonly overhang: WireQuantity<Unit>;
  readonly needed: string;
}

/** Spring bars on a hitch that they do not belong to. */
export interface BarsNeedBallBehind extends Where {
  readonly tag: 'BarsNeedBallBehind';
  readonly overhang: WireQuantity<Unit>;
}

/** A fraction of the front axle load is to be restored, but the tongue took no load off the front axle. */
export interface NothingToRestore extends Where {
  readonly tag: 'NothingToRestore';
  readonly offFront: WireQuantity<'lb'>;
}

/** The tongue load is greater than the whole trailer. */
export interface TongueAboveGross extends Where {
  readonly tag: 'TongueAboveGross';
  readonly tongue: WireQuantity<'lb'>;
  readonly gross: WireQuantity<'lb'>;
}

/** The jack is at or behind the axles. */
export interface JackBehindAxles extends Where {
  readonly tag: 'JackBehindAxles';
  readonly jackBehindBall: WireQuantity<'in'>;
  readonly axlesAt: WireQuantity<'in'>;
}

/** A scale shows less with the tongue on the beam than with the beam alone. */
export interface ReadingBelowTare extends Where {
  readonly tag: 'ReadingBelowTare';
  readonly reading: WireQuantity<'lb'>;
  readonly tare: WireQuantity<'lb'>;
}

/** Two readings of one weight differ by more than the scale can account for. */
export interface TicketsDoNotClose extends Where {
  readonly tag: 'TicketsDoNotClose';
  readonly what: string;
  readonly first: WireQuantity<'lb'>;
  readonly second: WireQuantity<'lb'>;
  readonly gap: WireQuantity<'lb'>;
  readonly allowed: WireQuantity<'lb'>;
}

/** The figure asked for is not contained in these tickets. */
export interface TicketsCannotTell extends Where {
  readonly tag: 'TicketsCannotTell';
  readonly asked: string;
  readonly passes: readonly string[];
  readonly needed: string;
}

/** Not one limit was given that a trailer could be measured by. */
export interface NothingLimits extends Where {
  readonly tag: 'NothingLimits';
  readonly missing: readonly string[];
}

export type TowingError =
  | NotAboveZero
  | BelowZero
  | NotAShare
  | HitchContradicts
  | BarsNeedBallBehind
  | NothingToRestore
  | TongueAboveGross
  | JackBehindAxles
  | ReadingBelowTare
  | TicketsDoNotClose
  | TicketsCannotTell
  | NothingLimits;
