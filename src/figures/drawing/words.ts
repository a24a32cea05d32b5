/** How wide text is, near enough to place it, and how it is broken or cut to fit. */

/** Widths in a sans serif of size 1, rounded up; what is not listed is taken as wide. */
const widthOf = (letter: string): number => {
  if (/[ijlI.,:;'|!]/.test(letter)) return 0.34;
  if (/[ frt()/"[\]-]/.test(letter)) return 0.42;
  if (/[mwMW%]/.test(letter)) return 0.97;
  if (/[A-Z]/.test(letter)) return 0.74;
  return letter.charCodeAt(0) < 0x250 ? 0.64 : 1.05;
};

/** The width of a line of text in units of the viewBox. */
export const textWidth = (text: string, size = 12): number =>
  [...text].reduce((sum, letter) => sum + widthOf(letter), 0) * size;

/** Cut to a width, with a mark where it was cut. */
export function cut(text: string, width: number, size = 12): string {
  if (textWidth(text, size) <= width) return text;
  const letters = [...text];
  while (letters.length > 1 && textWidth(`${letters.join('')}…`, size) > width) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

/** Broken at spaces into lines of a width; a word that no line holds is cut. */
export function broken(text: string, width: number, size = 12): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, size) <= width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(cut(word, width, size));
  }
  return lines.length === 0 ? [''] : lines;
}
