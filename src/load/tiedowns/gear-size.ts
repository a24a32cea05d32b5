/** Shop sizes of chain, webbing and rope as text: `3/8`, `1 3/4`. */

/** A shop size as a plain number, for finding neighbours: `1 3/4`, `5/16`, `2`. Only ever compared with other sizes. */
function sizeOf(text: string): number {
  const [, whole = '', top = '', bottom = ''] = /^(?:(\d+)(?:\s+|$))?(?:(\d+)\/(\d+))?$/.exec(text) ?? [];
  if (whole === '' && top === '') return Number.POSITIVE_INFINITY;
  return Number(whole) + (bottom === '' || Number(bottom) === 0 ? 0 : Number(top) / Number(bottom));
}

/** The size without its unit: `3/8`. */
export const plainSize = (size: string): string =>
  size
    .trim()
    .replace(/\s*(?:in\.?|inch|inches|")$/i, '')
    .trim();
export const apart =
  (asked: string) =>
  (key: string): number => {
    const gap = Math.abs(sizeOf(key.split(' grade ')[0] ?? '') - sizeOf(asked));
    return Number.isFinite(gap) ? gap : Number.MAX_VALUE;
  };
