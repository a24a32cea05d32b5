/** Figures of an answer as exact fractions with their units. */
import { isUnit, type Unit } from '../../units/index.js';
import type { FigureText } from './node-shape.js';
import { type Rational, rational, rationalOf } from './rational.js';

/** A figure that was read: its unit and its exact value. */
export interface ExactFigure {
  readonly value: Rational;
  readonly unit: Unit;
}

/** `9000 lb` as an exact fraction; undefined for what is no figure. */
export function readFigure(text: FigureText): ExactFigure | undefined {
  const blank = text.indexOf(' ');
  const [digits, unit] = blank < 0 ? [text, 'ratio'] : [text.slice(0, blank), text.slice(blank + 1)];
  const value = rationalOf(digits);
  return value === undefined || !isUnit(unit) || (blank >= 0 && unit === 'ratio') ? undefined : { value, unit };
}

/** So many bits of top and bottom are carried; a longer fraction is cut, far behind the digits that are compared. */
const mostBits = 8192n;
const limit = 1n << mostBits;

/** The fraction, cut where it has grown beyond all use, and zero or undefined where it is beyond all sizes: a hostile answer must not ask for endless work. */
export function bounded(figure: Rational): Rational | undefined {
  const { top, bottom } = figure;
  const tooLarge = top > limit || top < -limit;
  if (bottom < limit) return tooLarge ? undefined : figure;
  const excess = BigInt(bottom.toString(16).length * 4) - mostBits / 2n;
  return rational(top >> excess, bottom >> excess);
}
