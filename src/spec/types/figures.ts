/** How a figure may be written in a spec. */
import type { Basis } from '../../trace/index.js';
import type { Dimension, Quantity, UnitOf } from '../../units/index.js';

/** A figure as text, with what it rests on: `{ text: '9,200 lb', basis: 'scale' }`. */
export interface TextWithBasis {
  /** The figure with its unit, as people write it: `9,200 lb`, `16' 6 1/2"`, `12 %`. */
  readonly text: string;
  /** What it rests on: `scale`, `label`, `published`, `computed`, `stated` or `estimated`. */
  readonly basis?: Basis | undefined;
}

/** A figure from a program: digits as text and the name of a unit: `{ value: '9200', unit: 'lb' }`. */
export interface WireFigure<D extends Dimension> {
  /** The digits, as text, so that none is lost. */
  readonly value: string;
  /** The unit: `lb`, `kg`, `in`, `mm`, `psi`, `%`. */
  readonly unit: UnitOf<D>;
  /** What it rests on. */
  readonly basis?: Basis | undefined;
}

/** A figure of one kind: text with its unit, a record of digits and unit, either with its basis, or a `Quantity`. */
export type FigureInput<D extends Dimension> = string | TextWithBasis | WireFigure<D> | Quantity<UnitOf<D>>;

/** A weight: `'9,200 lb'`, `'1150 kg'`, `lb(9200)`. */
export type WeightInput = FigureInput<'mass'>;
/** A place or a size: `'187 in'`, `'16\' 6 1/2"'`, `'4.75 m'`, `inch(187)`. */
export type LengthInput = FigureInput<'length'>;
/** A cold pressure: `'80 psi'`, `'550 kPa'`, `psi(80)`. */
export type PressureInput = FigureInput<'pressure'>;
/** A force on the plate of a coupling: `'17.2 kN'`. */
export type ForceInput = FigureInput<'force'>;
/** A share: `'12 %'`, `'0.12'`, `percent(12)`. */
export type ShareInput = FigureInput<'ratio'>;
/** An angle: `'15 deg'`, `degree(15)`. */
export type AngleInput = FigureInput<'angle'>;
/** A spring rate or a weight per foot: `'2,200 lb/in'`, `'2.35 lb/ft'`. */
export type WeightPerLengthInput = FigureInput<'weight per length'>;
/** A weight per area: `'4.75 lb/ft2'`. */
export type WeightPerAreaInput = FigureInput<'weight per area'>;
/** A density: `'38 lb/ft3'`. */
export type DensityInput = FigureInput<'density'>;
/** A number of pieces: `2`, `'2'`, or `{ text: '2', basis: 'stated' }`. */
export type PiecesInput = number | string | TextWithBasis;
