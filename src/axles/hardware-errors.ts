/** What can go wrong with brakes and wheels: plain data and its words. */
import type { AskedFoundNeeded, Quantity, Unit } from '../units/index.js';
import { show } from '../units/index.js';

/** A rating, weight or length that must be greater than zero is not. */
export interface HardwareNotAboveZero {
  readonly chapter: 'axles';
  readonly tag: 'HardwareNotAboveZero';
  readonly what: string;
  readonly found: Quantity<Unit>;
  readonly path?: string;
}

/** No axle of the trailer has brakes. */
export interface NoBrakes {
  readonly chapter: 'axles';
  readonly tag: 'NoBrakes';
  readonly axles: readonly string[];
  readonly path?: string;
}

export type HardwareError = HardwareNotAboveZero | NoBrakes;

export function wordsForHardware(error: HardwareError): AskedFoundNeeded {
  switch (error.tag) {
    case 'HardwareNotAboveZero':
      return { asked: error.what, found: show(error.found), needed: 'a figure greater than zero' };
    case 'NoBrakes':
      return {
        asked: 'the capacity of the brakes',
        found: error.axles.length === 0 ? 'no axles' : `no brakes on ${error.axles.join(', ')}`,
        needed: 'at least one axle with a pair of brakes',
      };
  }
}
