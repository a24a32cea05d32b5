/** Tables of the page, in Markdown. */

const cell = (text: string): string => text.replace(/\|/g, '\\|').replace(/\s+/g, ' ').trim();

export const row = (...cells: readonly (string | number)[]): string =>
  `| ${cells.map((each) => cell(String(each))).join(' | ')} |`;

export const table = (head: readonly string[], rows: readonly string[]): string =>
  [row(...head), `|${head.map(() => '---').join('|')}|`, ...rows].join('\n');
