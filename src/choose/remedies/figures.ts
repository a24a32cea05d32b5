/** Figures of a spec as numbers for steps, and for words. */
import type { Derived } from '../../trace/index.js';
import { convert, type Quantity, type Unit } from '../../units/index.js';

type Length = Derived<'in' | 'ft' | 'mi' | 'mm' | 'cm' | 'm'>;
export const inchesOf = ({ value }: Length): number =>
  (convert(value as Quantity<'ft'>, 'in') as Quantity<Unit>).value.toNumber();
export const poundsOf = ({ value }: Derived<'lb' | 'kg' | 't'>): number =>
  (convert(value as Quantity<'kg'>, 'lb') as Quantity<Unit>).value.toNumber();
export const shown = (at: number): string =>
  (Math.round(at * 100) / 100).toLocaleString('en-US', { maximumFractionDigits: 2 });
