/** The typed parts of a tire designation. */
import { type Note, note } from '../../ratings/index.js';
import type { Quantity } from '../../units/index.js';

export type TireFamily =
  | 'ST-metric'
  | 'LT-metric'
  | 'P-metric'
  | 'Euro-metric'
  | 'commercial'
  | 'truck metric'
  | 'temporary spare'
  | 'other metric'
  | 'LT-flotation'
  | 'small trailer'
  | 'LT-numeric'
  | 'ST-numeric'
  | 'mobile home'
  | 'truck numeric'
  | 'industrial'
  | 'ST-letter';

/** R radial, D bias (a hyphen in the size is the same), B bias belted, ZR radial for high speed. */
export type Construction = 'R' | 'D' | 'B' | 'ZR' | 'unstated';

export type LoadRangeLetter = 'A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G' | 'H' | 'J' | 'L' | 'M' | 'N';

interface Rimmed {
  readonly construction: Construction;
  /** Rim diameter code, in inches. */
  readonly rim: Quantity<'in'>;
}

/** `225/75R15`; a full-profile size such as `175R14C` has no aspect. */
export interface MetricSize extends Rimmed {
  readonly form: 'metric';
  readonly width: Quantity<'mm'>;
  readonly aspect: Quantity<'%'> | undefined;
}

/** `31x10.50R15`: a nominal diameter, a width, a rim. */
export interface DiameterSize extends Rimmed {
  readonly form: 'diameter and width';
  readonly diameter: Quantity<'in'>;
  readonly width: Quantity<'in'>;
}

/** `7.50-16`, `11R22.5`, `4.80/4.00-8`. 10.00 and 10 are different codes, so the code is kept as text. */
export interface NumericSize extends Rimmed {
  readonly form: 'numeric';
  readonly width: Quantity<'in'>;
  readonly code: string;
  readonly alternative: string | undefined;
}

/** `H78-15`: obsolete. */
export interface LetterSize extends Rimmed {
  readonly form: 'letter';
  readonly letter: string;
  readonly aspect: Quantity<'%'>;
}

export type TireSize = MetricSize | DiameterSize | NumericSize | LetterSize;

/** `113/108L`: load index single, dual, speed symbol. `bracketed` when it is in brackets. */
export interface ServiceDescription {
  readonly single: number;
  readonly dual: number | undefined;
  readonly symbol: string | undefined;
  readonly bracketed: boolean;
}

export interface Designation {
  readonly family: TireFamily;
  readonly prefix: '' | 'P' | 'LT' | 'ST' | 'T' | 'S';
  readonly size: TireSize;
  readonly suffix: '' | 'LT' | 'ST' | 'MH' | 'C';
  readonly service: ServiceDescription | undefined;
  /** A second description in brackets. It is read and never used for a rating. */
  readonly second: ServiceDescription | undefined;
  readonly range:
    | { readonly letter: LoadRangeLetter; readonly plyRating: number; readonly from: 'load range' | 'ply rating' }
    | undefined;
  /** XL extra load, LL light load, SL standard load, RF reinforced. */
  readonly version: 'XL' | 'LL' | 'SL' | 'RF' | undefined;
  /** Markings without effect on ratings: sidewall style, tubeless, a footnote star. */
  readonly setAside: readonly string[];
}

/** True for the families that 49 CFR 571.120 counts as passenger-car tires. @example isPassenger('P-metric') // true */
export const isPassenger = (family: TireFamily): boolean =>
  family === 'P-metric' || family === 'Euro-metric' || family === 'temporary spare';

/**
 * What should one know about this way of writing the size?
 *
 * @example designationNotes(designation) // [] for ST225/75R15 LRD
 */
export function designationNotes(d: Designation): readonly Note[] {
  const notes: Note[] = [];
  const say = (when: boolean, tag: string, says: string): void => {
    if (when) notes.push(note(tag, says));
  };
  say(
    d.size.construction === 'unstated',
    'ConstructionUnstated',
    'the size does not say radial or bias; it is not taken for radial',
  );
  say(
    d.service?.bracketed === true,
    'BracketedService',
    'a bracketed service description belongs to speeds above 240 km/h: ask the tire maker',
  );
  say(d.second !== undefined, 'SecondDescription', 'a second service description is given; ratings use the first');
  say(
    d.family === 'LT-flotation' && d.suffix === '',
    'SuffixMissing',
    'a flotation size without LT; the diameter code is nominal',
  );
  say(
    d.size.form === 'metric' && d.suffix === 'LT',
    'SuffixForm',
    'LT stands behind a metric size, where most print it in front',
  );
  say(
    d.family === 'Euro-metric' && d.range !== undefined,
    'PrefixMissing',
    'a load range without ST, LT or P in front of the size: it is read as a passenger-car size; where the sidewall says ST or LT, write it',
  );
  say(d.setAside.includes('*'), 'FootnoteMark', 'a star is a footnote of a catalogue, not a part of the size');
  say(d.setAside.includes('FRT'), 'FreeRolling', 'FRT marks a tire for free-rolling axles only');
  say(d.size.form === 'letter', 'ObsoleteSize', 'letter sizes are obsolete');
  return notes;
}
