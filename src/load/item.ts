/** Something with a weight and a place: a part of the trailer, a machine, a toolbox; or a trailer known by its two scale readings. */
import { converted, type Derived, type Known, known } from '../trace/index.js';
import type { UnitOf } from '../units/index.js';

type Mass = UnitOf<'mass'>;
type Length = UnitOf<'length'>;

/** Known by where its centre of gravity stands, behind the coupler. */
export interface PlacedItem {
  readonly name: string;
  readonly weight: Known<Mass>;
  readonly at: Known<Length>;
}

/** Known by what it puts on the coupler when it stands alone: the trailer as weighed. */
export interface CoupledItem {
  readonly name: string;
  readonly weight: Known<Mass>;
  readonly tongue: Known<Mass>;
}

export type Item = PlacedItem | CoupledItem;

/** A weight as a figure in pounds, the conversion recorded. @example show(inPounds('weight', tonne(1)).value).startsWith('2,204.62') // true */
export const inPounds = (symbol: string, weight: Known<Mass>): Derived<'lb'> =>
  converted(symbol, known(symbol, weight) as Derived<'kg'>, 'lb');

/** A length as a figure in inches, the conversion recorded. @example inInches('length', foot(20)) // 240 in */
export const inInches = (symbol: string, length: Known<Length>): Derived<'in'> =>
  converted(symbol, known(symbol, length) as Derived<'mm'>, 'in');
