/** Writing a designation in one canonical form. */
import type { Construction, Designation, ServiceDescription, TireSize } from './designation.js';

function mark(construction: Construction, bias: string, unstated: string): string {
  if (construction === 'D') return bias;
  return construction === 'unstated' ? unstated : construction;
}

/** A width or diameter with at least so many decimals. */
const decimals = (text: string, places: number): string => {
  const [whole = '', rest = ''] = text.split('.');
  return `${whole}.${rest.padEnd(places, '0')}`;
};

/** The size without prefix and suffix. */
function sizeText(size: TireSize, bias: string): string {
  const rim = size.rim.value.toFixed();
  switch (size.form) {
    case 'metric': {
      const aspect = size.aspect === undefined ? '' : `/${size.aspect.value.toFixed()}`;
      return `${size.width.value.toFixed()}${aspect}${mark(size.construction, bias, '/')}${rim}`;
    }
    case 'diameter and width':
      return `${size.diameter.value.toFixed()}x${decimals(size.width.value.toFixed(), size.rim.value.lte(12) ? 1 : 2)}${mark(size.construction, '-', 'x')}${rim}`;
    case 'numeric':
      return `${size.code}${size.alternative === undefined ? '' : `/${size.alternative}`}${mark(size.construction, '-', 'x')}${rim}`;
    case 'letter':
      return `${size.letter}${size.construction === 'R' ? 'R' : ''}${size.aspect.value.toFixed()}${size.construction === 'R' ? '-' : mark(size.construction, '-', '-')}${rim}`;
  }
}

/** The size as the tire's name, without service description and load range. @example showSize(d) // ST225/75R15 */
export const showSize = (d: Designation): string =>
  `${d.prefix}${sizeText(d.size, d.prefix === '' ? '-' : 'D')}${d.suffix}`;

/** The size with the construction left out: the key under which tables are searched. */
export const sizeKey = (d: Designation): string =>
  `${d.prefix}${sizeText({ ...d.size, construction: 'D' }, '-')}${d.suffix}`;

function serviceText({ single, dual, symbol, bracketed }: ServiceDescription): string {
  const text = `${single}${dual === undefined ? '' : `/${dual}`}${symbol ?? ''}`;
  return bracketed ? `(${text})` : text;
}

function rangeText({ letter, plyRating, from }: NonNullable<Designation['range']>): string {
  return from === 'load range' ? `LR${letter}` : `${plyRating}PR`;
}

/**
 * How is this designation written in full?
 *
 * Size, service description, a second one in brackets, load range (or ply rating, if that is what was given), load
 * version, markings set aside; `readTireDesignation(showDesignation(d))` is `d`.
 *
 * @param d what `readTireDesignation` returned
 * @returns text
 * @example showDesignation(d) // ST225/75R15 113/108L LRD
 * @source our own order; the parts are those of sidewalls
 */
export function showDesignation(d: Designation): string {
  const parts = [
    showSize(d),
    d.service && serviceText(d.service),
    d.second && serviceText(d.second),
    d.range && rangeText(d.range),
    d.version,
    ...d.setAside,
  ];
  return parts.filter((part) => part !== undefined).join(' ');
}
