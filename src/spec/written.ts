/** The spec as somebody wrote it, kept together with what was read from it. */

/** A value that JSON can write. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** No spec is nested deeper; what is deeper is no part of one, and is not copied. */
const deepest = 100;

/** A deep copy of the caller's record; a figure that a program made is written as its wire record. */
export function plainCopy(value: unknown, depth = 0): Json {
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : null;
  if (typeof value !== 'object' || depth > deepest) return null;
  if (Array.isArray(value)) return value.map((part) => plainCopy(part, depth + 1));
  const { unit, value: digits } = value as Record<string, unknown>;
  if (typeof unit === 'string' && typeof digits === 'object' && digits !== null && 'toFixed' in digits)
    return { unit, value: (digits as { toFixed(): string }).toFixed() };
  const copy: Record<string, Json> = {};
  for (const [key, part] of Object.entries(value)) {
    if (part === undefined) continue;
    const inside = plainCopy(part, depth + 1);
    // A key of this name is a key like any other here, not what the language makes of it.
    if (key === '__proto__')
      Object.defineProperty(copy, key, { value: inside, enumerable: true, writable: true, configurable: true });
    else copy[key] = inside;
  }
  return copy;
}

const kept = new WeakMap<object, Json>();

/** Keeps a copy of what a spec was read from, for as long as the spec that was read lives. */
export function keepWritten<S extends object>(read: S, input: unknown): S {
  kept.set(read, plainCopy(input));
  return read;
}

/**
 * What did somebody write, from which this spec was read?
 *
 * A copy as plain JSON, made when the spec was read: a figure that a program gave is its wire record.
 *
 * Not for a spec that was put together or changed by a program after it was read: it was never written.
 *
 * @param spec from `decodeSpec`, or `assessment.spec`
 * @returns the JSON value; undefined for a spec that was never written
 * @example writtenSpec(orThrow(decodeSpec(spec))).trailer.hitch // ball
 * @source common practice, no source: the keys are this library's own
 */
export const writtenSpec = (spec: object): Json | undefined => kept.get(spec);
