/** What can go wrong with figures and units: plain data. */
import type { Dimension, Unit } from './unit-list.js';

/** The text is not a figure with a unit. `at` counts characters from 0. */
export interface UnreadableQuantity {
  readonly chapter: 'units';
  readonly tag: 'UnreadableQuantity';
  readonly text: string;
  readonly at: number;
  readonly found: string;
  readonly needed: string;
  readonly path?: string;
}

/** The figure was read, in a unit that is not the one asked for. */
export interface WrongUnit {
  readonly chapter: 'units';
  readonly tag: 'WrongUnit';
  readonly found: Unit;
  readonly needed: Unit | Dimension;
  readonly path?: string;
}

/** A division by a figure that is zero. */
export interface DivisionByZero {
  readonly chapter: 'units';
  readonly tag: 'DivisionByZero';
  readonly dividend: Unit;
  readonly divisor: Unit;
  readonly path?: string;
}

export type UnitsError = UnreadableQuantity | WrongUnit | DivisionByZero;

/** The error of a zero divisor. @example divisionByZero('lb', 'ft').tag // DivisionByZero */
export const divisionByZero = (dividend: Unit, divisor: Unit): DivisionByZero => ({
  chapter: 'units',
  tag: 'DivisionByZero',
  dividend,
  divisor,
});
/** The error of a figure in another unit than was asked for. @example wrongUnit('kg', 'lb').tag // WrongUnit */
export const wrongUnit = (found: Unit, needed: Unit | Dimension): WrongUnit => ({
  chapter: 'units',
  tag: 'WrongUnit',
  found,
  needed,
});
