/** Figures as a reader wants them printed. */
import type { Quantity, ReaderUnits, Unit } from '../units/index.js';

/** How figures are written on a page. */
export interface FiguresInPrint {
  readonly units: ReaderUnits;
  /** `lb` or `kg`: for the heading of a column without units. */
  readonly weightUnit: string;
  /** A load, up to the whole pound or kilogram. */
  readonly load: (q: Quantity<'lb'>) => string;
  /** A capacity, down to the whole pound or kilogram. */
  readonly capacity: (q: Quantity<'lb'>) => string;
  /** The least and the most of a range, each rounded into it: whole where it holds a whole pound or kilogram, else as fine as it takes. */
  readonly range: (least: Quantity<'lb'>, most: Quantity<'lb'>) => readonly [least: string, most: string];
  /** The same for a column whose heading has the unit. */
  readonly bareLoad: (q: Quantity<'lb'>) => string;
  /** The same for a column whose heading has the unit. */
  readonly bareCapacity: (q: Quantity<'lb'>) => string;
  /** A place along the trailer, rounded up or down to what a tape shows: a sixteenth, or a millimetre. */
  readonly place: (q: Quantity<'in'>, toward: 'front' | 'rear') => string;
  /** A place as it was found: to the nearest sixteenth, or millimetre. */
  readonly placeNow: (q: Quantity<'in'>) => string;
  /** A length for reading. */
  readonly length: (q: Quantity<'in'>) => string;
  /** A length of several feet or metres, for reading. */
  readonly longLength: (q: Quantity<'in' | 'ft'>) => string;
  /** A pressure that tires need, also in the unit it was given in. */
  readonly pressure: (q: Quantity<'psi'>) => string;
  /** What one inch, or ten millimetres, of a machine's place is worth on the tongue. */
  readonly tongueByPlace: (q: Quantity<'lb/in'>) => string;
  /** The words for that length: `an inch`, `10 mm`. */
  readonly placeStep: string;
  /** The weight of one more foot, or metre, of deck. */
  readonly weightOfDeck: (q: Quantity<'lb/ft'>) => string;
  /** A share as a percentage, to the nearest tenth. */
  readonly share: (q: Quantity<'ratio'>) => string;
  /** What is used of a limit, as a percentage, up. */
  readonly used: (q: Quantity<'ratio'>) => string;
  /** Any figure a remark refers to, for reading. */
  readonly any: (q: Quantity<Unit>) => string;
}
