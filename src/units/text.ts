/** Work on plain text: wrapping, and the nearest of some words. */

/** Wraps a text at spaces to a width, with an indent for the lines that follow. @example wrapText('a line that is too long', 12, '  ').split('\n').length // 3 */
export function wrapText(text: string, width: number, indent: string): string {
  if (text.length <= width && !text.endsWith(' ')) return text;
  const out: string[] = [];
  let line = '';
  for (const [, gap = '', word = ''] of text.matchAll(/( *)([^ ]+)/g)) {
    if (line.trim() !== '' && line.length + gap.length + word.length > width) {
      out.push(line);
      line = indent + word;
    } else line += gap + word;
  }
  out.push(line);
  return out.join('\n');
}

/** The three keys nearest to the one asked for. */
export function nearestKeys(keys: readonly string[], distance: (key: string) => number): readonly string[] {
  return [...new Set(keys)]
    .map((key) => ({ key, far: distance(key) }))
    .sort((a, b) => a.far - b.far)
    .slice(0, 3)
    .map(({ key }) => key);
}

/** How many letters must change to make one word of another; words are cut to 40 letters. */
export function editDistance(first: string, second: string): number {
  const [a, b] = [first.slice(0, 40).toLowerCase(), second.slice(0, 40).toLowerCase()];
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
}

/** A sign or an at, in ASCII or full width, also behind blanks; a leading tab or line end. */
const likeAFormula = /^[\t\r\n]|^[\s\u00a0\u200b\ufeff]*[=+\-@\uff1d\uff0b\uff0d\uff20]/;

/** Text behind an apostrophe where a spreadsheet may take it for a formula. */
export const harmless = (text: string): string => (likeAFormula.test(text) ? `'${text}` : text);
