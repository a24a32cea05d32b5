/** Figures in print: loads up, capacities down, in the reader's units; and as plain numbers for coordinates only. */
import type { Derived } from '../../trace/index.js';
import {
  convert,
  inch,
  kg,
  lb,
  metre,
  mm,
  percent,
  type Quantity,
  roundCapacityDown,
  roundLoadUp,
  roundNearest,
  show,
  showBrief,
  showFeetInches,
  type Unit,
} from '../../units/index.js';
import { roundLoadAway } from '../../units/internal.js';
import type { FigureUnits } from './options.js';

/** A figure as a coordinate. Nothing that is printed comes from it. */
export const plain = (figure: Derived<Unit>): number => figure.value.value.toNumber();

const rounded = (weight: Quantity<'lb'>, units: FigureUnits, round: typeof roundLoadUp): string =>
  units === 'metric' ? show(round(convert(weight, 'kg'), kg(1))) : show(round(weight, lb(1)));

/** A load in whole pounds or kilograms, up. */
export const loadText = (load: Quantity<'lb'>, units: FigureUnits): string => rounded(load, units, roundLoadAway);

/** A capacity or what is left of it, down. */
export const capacityText = (limit: Quantity<'lb'>, units: FigureUnits): string =>
  rounded(limit, units, roundCapacityDown);

/** Without its unit, where the unit is printed next to it. */
export const bare = (printed: string): string => printed.replace(/ (lb|kg)$/, '');

/**
 * A place along the trailer as a tape shows it: feet and inches to a sixteenth, or metres to a millimetre. An end of a window is
 * rounded into the window: its front end toward the rear, its rear end toward the front.
 */
export function lengthText(length: Quantity<'in'>, units: FigureUnits, toward?: 'front' | 'rear'): string {
  const metric = units === 'metric';
  const fine = metric ? convert(length, 'mm') : length;
  const step = metric ? mm(1) : inch('0.0625');
  const round = { front: roundCapacityDown, rear: roundLoadUp } as const;
  const rounded = (toward === undefined ? roundNearest : round[toward])(fine as Quantity<'in'>, step as Quantity<'in'>);
  return metric ? showBrief(convert(rounded, 'm'), 3) : showFeetInches(rounded);
}

/** A length of deck: whole and half feet, or metres. */
export const deckText = (length: Quantity<'ft'>, units: FigureUnits): string =>
  showBrief(units === 'metric' ? convert(length, 'm') : length, 2);

/** A share of a limit, up to the next tenth of a per cent. */
export const usedText = (share: Quantity<'ratio'>): string => show(roundLoadUp(convert(share, '%'), percent('0.1')));

/** A share to the nearest tenth of a per cent. */
export const shareText = (share: Quantity<'ratio'>): string => show(roundNearest(convert(share, '%'), percent('0.1')));

/** The unit of weight of the reader, and what one of it is in pounds. */
export const weightUnit = (units: FigureUnits): { readonly name: string; readonly pounds: number } =>
  units === 'metric' ? { name: 'kg', pounds: convert(kg(1), 'lb').value.toNumber() } : { name: 'lb', pounds: 1 };

/** The unit of length of the reader, and what one of it is in inches. */
export const lengthUnit = (units: FigureUnits): { readonly name: string; readonly inches: number } =>
  units === 'metric' ? { name: 'm', inches: convert(metre(1), 'in').value.toNumber() } : { name: 'ft', inches: 12 };

/** A number for an axis: commas between groups of three. */
export const axisText = (value: number): string =>
  `${value < 0 ? '-' : ''}${String(Math.abs(Math.round(value * 100) / 100)).replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, ',')}`;

/** A round step that divides a range into at most so many parts: 1, 2 or 5 times a power of ten. */
export function roundStep(range: number, parts: number): number {
  const least = range / parts;
  if (!(least > 0) || !Number.isFinite(least)) return 1;
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5, 10].find((step) => step * power >= least) ?? 10) * power;
}
