/** What a group of axles may weigh on the Interstate system: the formula, the caps and the two-tandem exception. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyLength,
  asDerived,
  constant,
  converted,
  type Decision,
  type Derived,
  decide,
  given,
  greatestOf,
  leastOf,
  sum,
  zeroIn,
} from '../../trace/index.js';
import { dimensionOf, foot, inch, ratio, type Unit } from '../../units/index.js';
import { showInWords } from '../../units/internal.js';
import { type RulesError, rulesError } from '../errors.js';
import { printedLine } from '../federal/federal.js';
import { pathOf } from '../pounds.js';
import { type AxleGroupOptions, axleGroupFormula, bridgeLaw } from './axle-group-formula.js';

/** A run of consecutive axles, by number and by the distance between the first and the last. */
export interface AxleRun {
  readonly count: number;
  readonly length: AnyLength;
  /** True when the run is two consecutive tandems. A count and a length do not say so. */
  readonly twoTandems: boolean;
}

export type AxleGroupKind = 'single' | 'tandem' | 'two tandems' | 'group';

export interface AxleGroupLimit {
  readonly kind: AxleGroupKind;
  readonly limit: Derived<'lb'>;
  /** The formula as rounded; absent for axles that count as one. */
  readonly byFormula?: Derived<'lb'>;
  /** The formula before its rounding. */
  readonly exact?: Derived<'lb'>;
  readonly decisions: readonly Decision[];
}

const singleSpread = constant(inch(40), 'spread of a single axle', bridgeLaw);
const tandemSpread = constant(inch(96), 'spread of a tandem', bridgeLaw);
const exceptionLength = constant(foot(36), 'length of the two-tandem exception', bridgeLaw);

/** Single up to 40 in between the extremes, tandem above that and up to 96 in, whatever axles are in between. */
export function spreadKind(spread: Derived<'in'>, decisions: Decision[]): 'single' | 'tandem' | 'group' {
  const single = decide(spread, '<=', singleSpread);
  decisions.push(single);
  if (single.holds) return 'single';
  const tandem = decide(spread, '<=', tandemSpread);
  decisions.push(tandem);
  return tandem.holds ? 'tandem' : 'group';
}

/**
 * How much may this group of consecutive axles weigh?
 *
 * `W = 500 (L N / (N - 1) + 12 N + 36)` to the nearest 500 lb, N axles, L ft from the first to the last; not above the caps:
 * 20,000 lb when they are within 40 in, 34,000 lb within 96 in, 80,000 lb in all. Two consecutive tandems, 36 ft or more
 * from first to last axle, may carry 34,000 lb each.
 *
 * Interstate system; State tables differ above four axles, and grandfathered weights are not in it. Caps and exception look
 * at the length as measured, never at the rounded one.
 *
 * @param run number of axles, length in any unit of length, and whether they are two tandems
 * @param options where ties go and how the length is counted: the table of the State decides, there is no default
 * @returns lb. Left `OutOfRange` for a count that is not a whole number from 1, or a length that is not above zero.
 * @example axleGroupLimit({ count: 4, length: foot(36), twoTandems: true }, { tie: 'down', lengthRounding: 'none' }) // Right 68,000 lb
 * @source 23 USC 127(a), 23 CFR 658.17; 96 Stat. 2124
 */
export function axleGroupLimit(run: AxleRun, options: AxleGroupOptions): Either<RulesError, AxleGroupLimit> {
  if (!Number.isInteger(run.count) || run.count < 1)
    return left(
      rulesError({
        tag: 'OutOfRange',
        what: 'number of axles',
        found: String(run.count),
        needed: 'a whole number from 1',
      }),
    );
  const taken = asDerived('group length', run.length);
  if (
    dimensionOf(taken.value.unit) !== 'length' ||
    (run.count > 1 && !decide<Unit>(taken, '>', zeroIn(taken.value.unit)).holds)
  ) {
    return left(
      rulesError(
        { tag: 'OutOfRange', what: 'group length', found: showInWords(taken.value), needed: 'greater than zero' },
        pathOf(taken),
      ),
    );
  }
  const decisions: Decision[] = [];
  const kind = run.count === 1 ? 'single' : spreadKind(converted('group length', taken, 'in'), decisions);
  return right(limitOf(run.count, converted('group length', taken, 'ft'), kind, run.twoTandems, options, decisions));
}

function isLong(length: Derived<'ft'>, decisions: Decision[]): boolean {
  const long = decide(length, '>=', exceptionLength);
  decisions.push(long);
  return long.holds;
}

/** The least of the formula and the caps, or the exception where it helps. */
export function limitOf(
  count: number,
  length: Derived<'ft'>,
  spread: 'single' | 'tandem' | 'group',
  twoTandems: boolean,
  options: AxleGroupOptions,
  decisions: Decision[],
): AxleGroupLimit {
  const single = printedLine('ax-single').line;
  if (spread === 'single')
    return { kind: 'single', limit: leastOf('axle group limit', [single], bridgeLaw), decisions };
  const { exact, limit: byFormula } = axleGroupFormula(given('axles in the group', ratio(count)), length, options);
  const tandem = printedLine('ax-tandem').line;
  const gross = printedLine('gross-80').line;
  if (spread === 'tandem')
    return {
      kind: 'tandem',
      limit: leastOf('axle group limit', [byFormula, tandem, gross], bridgeLaw),
      byFormula,
      exact,
      decisions,
    };
  if (!twoTandems || !isLong(length, decisions))
    return {
      kind: 'group',
      limit: leastOf('axle group limit', [byFormula, gross], bridgeLaw),
      byFormula,
      exact,
      decisions,
    };
  const pair = sum('two tandems', [tandem, tandem], bridgeLaw);
  return {
    kind: 'two tandems',
    limit: leastOf('axle group limit', [greatestOf([byFormula, pair]), gross], bridgeLaw),
    byFormula,
    exact,
    decisions,
  };
}
