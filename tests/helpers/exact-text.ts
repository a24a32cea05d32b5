/** Decimals written in another unit exactly, digit by digit: whole-number arithmetic, no rounding. */

/** `digits` times `size`, both plain decimals. */
export function timesExactly(digits: string, size: string): string {
  const parts = [digits, size].map((text) => {
    const [whole = '', behind = ''] = text.replace('-', '').split('.');
    return { whole: BigInt(`${whole}${behind}`), places: behind.length, negative: text.startsWith('-') };
  });
  const places = parts.reduce((sum, part) => sum + part.places, 0);
  const product = parts.reduce((all, { whole }) => all * whole, 1n);
  const sign = parts.filter(({ negative }) => negative).length % 2 === 1 ? '-' : '';
  const padded = product.toString().padStart(places + 1, '0');
  const text = places === 0 ? padded : `${padded.slice(0, -places)}.${padded.slice(-places)}`;
  return `${sign}${text.includes('.') ? text.replace(/\.?0+$/, '') : text}`;
}

/** The exact size of a unit in the one of the other system. */
const sizes: Readonly<Record<string, { readonly times: string; readonly unit: string }>> = {
  lb: { times: '0.45359237', unit: 'kg' },
  in: { times: '25.4', unit: 'mm' },
  ft: { times: '0.3048', unit: 'm' },
  '%': { times: '0.01', unit: 'ratio' },
};

/** The same figure in metric units; undefined where the unit has no exact one, or is metric already. */
export function metricText(digits: string, unit: string): string | undefined {
  const size = sizes[unit];
  return size === undefined ? undefined : `${timesExactly(digits, size.times)} ${size.unit}`;
}
