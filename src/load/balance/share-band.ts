/** What a band of tongue shares must be. */
import { aboveZero, below, constant, type Derived, type Guard, inOrder } from '../../trace/index.js';
import { ratio } from '../../units/index.js';

const whole = constant(ratio(1));

/** `0 < low <= high < 1`, for a band of tongue shares. */
export const inABand = (what: string, low: Derived<'ratio'>, high: Derived<'ratio'>): readonly Guard[] => [
  aboveZero(`the low end of ${what}`, low),
  inOrder(what, low, high),
  below(`the high end of ${what}`, high, whole),
];
