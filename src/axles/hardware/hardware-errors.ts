/** What can go wrong with brakes and wheels: plain data and its words. */
import { fromWire, mustBe, type WireQuantity } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';

/** A rating, weight or length that must be greater than zero is not. */
export interface HardwareNotAboveZero {
  readonly chapter: 'axles';
  readonly tag: 'HardwareNotAboveZero';
  readonly what: string;
  readonly found: WireQuantity;
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

export function wordsForHardware(error: HardwareError): string {
  switch (error.tag) {
    case 'HardwareNotAboveZero':
      return mustBe(error.what, showInWords(fromWire(error.found)), 'greater than zero');
    case 'NoBrakes': {
      const found = error.axles.length === 0 ? 'no axles' : `no brakes on ${error.axles.join(', ')}`;
      return `the brakes have no capacity: ${found}; give at least one axle with a pair of brakes`;
    }
  }
}
