/** Figures of a random spec as people write them: pounds and inches, kilograms and millimetres, or both in one spec. */
import type { Chance } from './chance.js';

export type Units = 'us' | 'metric' | 'mixed';

/** A figure in a spec: text, a wire record, or text with what it rests on. */
export type Figure =
  | string
  | { readonly value: string; readonly unit: string }
  | { readonly text: string; readonly basis: string };

export interface Writer {
  /** A weight or a rating, given in whole pounds. */
  readonly weight: (pounds: number) => Figure;
  /** A place or a size, given in whole inches. */
  readonly length: (inches: number) => Figure;
}

const grouped = (whole: number): string => String(whole).replace(/\B(?=(\d{3})+(?!\d))/g, ',');

function dressed(chance: Chance, digits: string, unit: string): Figure {
  if (chance.happens(4)) return { value: digits.replace(/,/g, ''), unit };
  const text = `${digits} ${unit}`;
  return chance.happens(8) ? { text, basis: chance.pick(['scale', 'label', 'stated', 'estimated']) } : text;
}

/** Metric figures are whole kilograms and whole millimetres, so that two of the same pounds stay the same. */
export function writerOf(chance: Chance, units: Units): Writer {
  const metric = (): boolean => units === 'metric' || (units === 'mixed' && chance.happens(40));
  return {
    weight: (pounds) => {
      if (!metric()) return dressed(chance, chance.happens(50) ? grouped(pounds) : String(pounds), 'lb');
      const kilograms = Math.round(pounds * 0.45359237);
      return chance.happens(10)
        ? dressed(chance, (kilograms / 1000).toFixed(3), 't')
        : dressed(chance, String(kilograms), 'kg');
    },
    length: (inches) => {
      if (metric())
        return chance.happens(20)
          ? dressed(chance, (Math.round(inches * 25.4) / 1000).toFixed(3), 'm')
          : dressed(chance, String(Math.round(inches * 25.4)), 'mm');
      return inches % 12 === 0 && chance.happens(50)
        ? dressed(chance, String(inches / 12), 'ft')
        : dressed(chance, String(inches), 'in');
    },
  };
}
