/** The published formula for a group of axles, and its rounding. */
import {
  constant,
  type Derived,
  difference,
  over,
  plus,
  result,
  rounded,
  type Source,
  times,
} from '../../trace/index.js';
import { foot, lb, lbPerFt, type RoundingMode, ratio } from '../../units/index.js';

export const bridgeLaw: Source = Object.freeze({
  id: 'bridge',
  title: 'United States Statutes at Large, volume 96, page 2124',
  grade: 'B',
  edition: 'read 2026-11',
  clause: '23 USC 127(a), 23 CFR 658.17(e)',
});

/** Where a figure halfway between two steps of 500 lb goes. The statute says only "nearest"; State tables differ. */
export type TieRule = 'down' | 'up';

/** How a measured length becomes the L of the formula. The federal text is silent; some States round to a foot. */
export type LengthRounding = 'none' | 'nearest foot, halves up' | 'nearest foot, halves down';

/** Both are choices of the State whose table is being followed, so neither has a default. */
export interface AxleGroupOptions {
  readonly tie: TieRule;
  readonly lengthRounding: LengthRounding;
}

const lengthModes: Readonly<Record<Exclude<LengthRounding, 'none'>, RoundingMode>> = {
  'nearest foot, halves up': 'nearest',
  'nearest foot, halves down': 'nearest-down',
};

/** The formula before and after its rounding. */
export interface FormulaLimit {
  readonly exact: Derived<'lb'>;
  readonly limit: Derived<'lb'>;
}

/**
 * `W = 500 (L N / (N - 1) + 12 N + 36)`, multiplied out so that the one division comes last:
 * `W = (500 L N + 500 (12 N + 36) (N - 1)) / (N - 1)`, then to the nearest 500 lb. The caller has made sure of N >= 2.
 */
export function axleGroupFormula(
  axles: Derived<'ratio'>,
  length: Derived<'ft'>,
  options: AxleGroupOptions,
): FormulaLimit {
  const used =
    options.lengthRounding === 'none'
      ? length
      : rounded('length as counted', length, foot(1), lengthModes[options.lengthRounding]);
  const fewer = difference('axles less one', axles, constant(ratio(1)));
  const spread = times(constant(lbPerFt(500)), used, axles);
  const fixed = times(constant(lb(500)), plus(times(12, axles), 36), fewer);
  const exact = result('formula weight', over(plus(spread, fixed), fewer), bridgeLaw);
  return {
    exact,
    limit: rounded('formula limit', exact, lb(500), options.tie === 'up' ? 'nearest' : 'nearest-down', bridgeLaw),
  };
}
