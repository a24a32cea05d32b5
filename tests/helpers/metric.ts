/** A spec written again in kilograms, millimetres and kilopascals, every digit kept. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { convert, parseMeasure, show } from '../../src/units/index.js';

const measures = [
  ['mass', 'kg'],
  ['length', 'mm'],
  ['pressure', 'kPa'],
] as const;

function inMetric(text: string): string {
  for (const [dimension, unit] of measures) {
    const read = parseMeasure(text, dimension);
    if (!isLeft(read)) return show(convert(read.right as never, unit as never));
  }
  return text;
}

/** Texts that are figures are converted, everything else stays. */
export function metric(value: unknown): unknown {
  if (typeof value === 'string') return inMetric(value);
  if (Array.isArray(value)) return value.map(metric);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, metric(inner)]));
}
