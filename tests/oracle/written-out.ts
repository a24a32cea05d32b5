/**
 * An answer written out whole: every figure with all its digits, every verdict, decision, order, text and error, and each node of the
 * workings once, so that two answers can be compared line by line. The order of the lines is the place.
 */
const isRecord = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** By its shape, because two copies of the library have two classes. */
const isFigure = (value: object): value is { readonly unit: string; readonly value: { toFixed(): string } } =>
  !Object.hasOwn(value, 'value') && 'unit' in value && 'value' in value;

const isDecimal = (value: object): value is { toFixed(): string } => 'toFixed' in value && 'd' in value;

/** The lines of an answer, in the order of its fields. */
export function writtenOut(answer: unknown): readonly string[] {
  const lines: string[] = [];
  const seen = new Map<object, number>();
  const write = (value: unknown, key: string): void => {
    if (typeof value === 'function') lines.push(`${key}: a function`);
    else if (!isRecord(value)) lines.push(`${key}: ${String(value)}`);
    else if (isFigure(value)) lines.push(`${key}: ${value.value.toFixed()} ${value.unit}`);
    else if (isDecimal(value)) lines.push(`${key}: ${value.toFixed()}`);
    else if (seen.has(value)) lines.push(`${key}: as line ${seen.get(value)}`);
    else {
      seen.set(value, lines.length);
      const entries = value instanceof Map ? [...value] : Object.entries(value);
      lines.push(`${key}: ${entries.length} of ${Array.isArray(value) ? 'a list' : 'a record'}`);
      for (const [name, part] of entries) write(part, String(name));
    }
  };
  write(answer, 'answer');
  return lines;
}

/** Where two answers differ first, with the lines before it; undefined when they are the same. */
export function firstDifference(a: readonly string[], b: readonly string[]): string | undefined {
  const at = a.findIndex((line, i) => line !== b[i]);
  if (at < 0) return a.length === b.length ? undefined : `${a.length} lines beside ${b.length}`;
  return `${a.slice(Math.max(0, at - 8), at + 1).join(' / ')} beside ${b[at] ?? 'nothing'}`;
}
