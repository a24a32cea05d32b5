/** The figures and records inside a spec, with their paths. */
import type { JsonSpec } from '../random-specs.js';

export interface Leaf {
  readonly path: string;
  readonly value: unknown;
}

const isRecord = (value: unknown): value is JsonSpec =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A figure: text that begins with a digit and ends in a unit, a wire record, or text with a basis. */
export function isFigure(value: unknown): boolean {
  if (typeof value === 'string') return /^-?[\d.,]+ (lb|kg|t|in|ft|mm|m|psi|kPa|%|deg|lb\/in)$/.test(value);
  return isRecord(value) && (('text' in value && 'basis' in value) || ('value' in value && 'unit' in value));
}

/** Every figure of a spec; records of figures count as one. */
export function figuresIn(value: unknown, path = ''): readonly Leaf[] {
  if (isFigure(value)) return [{ path, value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => figuresIn(inner, path === '' ? key : `${path}.${key}`));
}

/** Every record of a spec that is no figure. */
export function recordsIn(value: unknown, path = ''): readonly Leaf[] {
  if (typeof value !== 'object' || value === null || isFigure(value)) return [];
  const inside = Object.entries(value).flatMap(([key, inner]) =>
    recordsIn(inner, path === '' ? key : `${path}.${key}`),
  );
  return isRecord(value) ? [{ path, value }, ...inside] : inside;
}

/** Every path of a spec, of records, lists and figures alike; a figure is not opened. */
export function pathsIn(value: unknown, path = ''): readonly string[] {
  const here = path === '' ? [] : [path];
  if (typeof value !== 'object' || value === null || isFigure(value)) return here;
  return [
    ...here,
    ...Object.entries(value).flatMap(([key, inner]) => pathsIn(inner, path === '' ? key : `${path}.${key}`)),
  ];
}

/** What a figure says, as digits and unit. */
export function digitsAndUnit(value: unknown): { readonly digits: string; readonly unit: string } {
  const { text, value: digits, unit } = isRecord(value) ? value : { text: value };
  const [first = '', ...rest] = String(text ?? `${String(digits)} ${String(unit)}`).split(' ');
  return { digits: first.replace(/,/g, ''), unit: rest.join(' ') };
}
