/** Random figures for laws. */
import fc from 'fast-check';

/** Decimals of up to 18 digits, as text. */
export const decimals = fc
  .tuple(fc.bigInt({ min: -(10n ** 18n), max: 10n ** 18n }), fc.integer({ min: 0, max: 12 }))
  .map(([digits, places]) => {
    const text = (digits < 0n ? -digits : digits).toString().padStart(places + 1, '0');
    return `${digits < 0n ? '-' : ''}${text.slice(0, text.length - places)}${places === 0 ? '' : `.${text.slice(-places)}`}`;
  });
