/** Reading a tire designation: what the sidewall or the spec says, as typed parts. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { UnreadableDesignation } from '../designation-errors.js';
import { plainInches } from '../load/size-figures.js';
import type { Designation, TireFamily } from './designation.js';
import type { Markings } from './markings.js';
import { rowsLike } from './nearest-size.js';
import { readMarkings } from './read-markings.js';
import { readSize } from './read-size.js';
import { fail, longest, type Scan, startScan } from './scan.js';

/**
 * What does this tire designation say?
 *
 * Reads prefix, size, suffix, service description, load range or ply rating, load version, in one pass. Families: ST, LT, P and
 * Euro-metric, commercial C, LT flotation, numeric, small trailer sizes, truck sizes.
 *
 * A slash or an x in place of the construction letter is read as "unstated", never as radial. Letters that may mean two
 * things are refused. Sizes are not looked up here: a size that is well formed and that nobody makes is read.
 *
 * @param text from the sidewall, such as `ST225/75R15 113/108L LRD`; at most 80 characters
 * @returns the parts; Left `UnreadableDesignation` naming the fault, the part and the character
 * @example readTireDesignation('ST225/75R15 113/108L LRD') // Right: family ST-metric, width 225 mm, rim 15 in
 * @source common practice of sidewall marking; examples of vehicle and tire makers, agency letter 77-3.26, grade A to C
 */
export function readTireDesignation(text: string): Either<UnreadableDesignation, Designation> {
  const scan = startScan(text);
  if (text.length > longest) fail(scan, 'TooLong', 'whole text', `at most ${longest} characters`, longest);
  const read = scan.problem === undefined ? readParts(scan) : undefined;
  return read === undefined ? left(withNearest(scan.problem as UnreadableDesignation)) : right(read);
}

/** A size that lacks a part is shown the printed sizes it may be. */
function withNearest(problem: UnreadableDesignation): UnreadableDesignation {
  if (problem.fault !== 'MissingAspect' && problem.fault !== 'UnknownSize') return problem;
  const nearest = rowsLike(problem.text);
  return nearest.length === 0 ? problem : { ...problem, nearest };
}

function readParts(scan: Scan): Designation | undefined {
  const begun = readSize(scan);
  if (begun === undefined) return undefined;
  const { size } = begun;
  const isMetric = size.form === 'metric';
  const moved = !isMetric && (begun.prefix === 'LT' || begun.prefix === 'ST') ? begun.prefix : '';
  const found: Markings = {
    prefix: isMetric ? begun.prefix : '',
    size,
    suffix: moved,
    service: undefined,
    second: undefined,
    range: undefined,
    plyRating: undefined,
    version: undefined,
    setAside: [],
  };
  if (!readMarkings(scan, found)) return undefined;
  const { prefix, suffix, service, second, range, version, setAside } = found;
  return {
    family: familyOf(found),
    prefix,
    size,
    suffix,
    service,
    second,
    range,
    version,
    setAside: setAside.length > 1 ? setAside.sort() : setAside,
  };
}

const metricByPrefix = {
  P: 'P-metric',
  LT: 'LT-metric',
  ST: 'ST-metric',
  T: 'temporary spare',
  S: 'other metric',
} as const;
const metricBySuffix = { C: 'commercial', LT: 'LT-metric', ST: 'ST-metric', MH: 'mobile home' } as const;

/**
 * A metric size without prefix and suffix. Rims of 12 in and less are small trailer sizes unless radial; with a load range they are
 * small trailer sizes in any case, as passenger-car tires of that size carry none.
 */
function plainMetric({ size, range }: Markings): TireFamily {
  const rim = plainInches(size.rim);
  if (!Number.isInteger(rim)) return 'truck metric';
  const radial = size.construction === 'R' || size.construction === 'ZR';
  return rim <= 12 && (range !== undefined || !radial) ? 'small trailer' : 'Euro-metric';
}

/** A numeric size without suffix: small by its rim; on 16.5 in industrial by its speed symbol or whole width, else LT. */
function plainNumeric(rim: number, code: string, symbol: string | undefined): TireFamily {
  if (rim <= 12) return 'small trailer';
  if (rim !== 16.5) return 'truck numeric';
  return symbol?.startsWith('A') === true || !code.includes('.') ? 'industrial' : 'LT-numeric';
}

/** The family by prefix, suffix and form. */
function familyOf(found: Markings): TireFamily {
  const { prefix, size, suffix, service } = found;
  const rim = plainInches(size.rim);
  switch (size.form) {
    case 'letter':
      return 'ST-letter';
    case 'diameter and width':
      return rim <= 12 && size.construction !== 'R' && suffix === '' ? 'small trailer' : 'LT-flotation';
    case 'metric':
      if (prefix !== '') return metricByPrefix[prefix];
      if (suffix !== '') return metricBySuffix[suffix];
      return plainMetric(found);
    case 'numeric':
      if (suffix === 'LT') return 'LT-numeric';
      if (suffix === 'ST') return 'ST-numeric';
      if (suffix === 'MH' || rim === 14.5) return 'mobile home';
      return plainNumeric(rim, size.code, service?.symbol);
  }
}
