/** Shop sizes of chain, webbing and rope as text: `3/8`, `1 3/4`. */

/** A shop size as a plain number, for finding neighbours: `1 3/4`, `5/16`, `2`. Only ever compared with other sizes. */
function sizeOf(text: string): number {
  const [, whole = '', top = '', bottom = ''] = /^(?:(\d+)(?:\s+|$))?(?:(\d+)\/(\d+))?$/.exec(text) ?? [];
  if (whole === '' && top === '') return Number.POSITIVE_INFINITY;
  return Number(whole) + (bottom === '' || Number(bottom) === 0 ? 0 : Number(top) / Number(bottom));
}

const unitEndings = ['inches', 'inch', 'in.', 'in', '"'] as const;

/** The size without its unit: `3/8`. Written without a pattern: one with blanks before the unit takes time by the square of the blanks. */
export function plainSize(size: string): string {
  const text = size.trim();
  const ending = unitEndings.find((each) => text.toLowerCase().endsWith(each));
  return ending === undefined ? text : text.slice(0, text.length - ending.length).trim();
}

export const apart =
  (asked: string) =>
  (key: string): number => {
    const gap = Math.abs(sizeOf(key.split(' grade ')[0] ?? '') - sizeOf(asked));
    return Number.isFinite(gap) ? gap : Number.MAX_VALUE;
  };
