/** A table transcribed a second time: compact lines, one a printed row, compared whole with the rows of the library. */

/** The lines as records; an empty cell is a figure that is not printed. */
export function readLines(columns: string, lines: string, mark = ','): Record<string, string>[] {
  const names = columns.split(mark);
  return lines
    .trim()
    .split('\n')
    .map((line) =>
      Object.fromEntries(
        line
          .split(mark)
          .map((cell, i) => [names[i] as string, cell] as const)
          .filter(([, cell]) => cell !== ''),
      ),
    );
}

/** Rows of the library with the named columns only. */
export function pickColumns(rows: readonly object[], columns: string, mark = ','): Record<string, string>[] {
  const names = columns.split(mark);
  return rows.map((row) =>
    Object.fromEntries(
      Object.entries(row)
        .filter(([name]) => names.includes(name))
        .sort(([a], [b]) => names.indexOf(a) - names.indexOf(b)),
    ),
  );
}
