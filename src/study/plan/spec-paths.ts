/** The spec as JSON with some of its parts changed. */
type Json = Readonly<Record<string, unknown>>;

/**
 * The JSON with one part replaced; all other parts are shared with the original, which never changes. An object that
 * occurs twice in the original is replaced at one place only. Missing records along the path are made.
 */
function put(part: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  const record = typeof part === 'object' && part !== null ? (part as Json) : {};
  const changedInside = put(Object.hasOwn(record, key) ? record[key] : undefined, rest, value);
  if (!Array.isArray(part) || !/^(0|[1-9]\d{0,3})$/.test(key)) return { ...record, [key]: changedInside };
  return Array.from({ length: Math.max(part.length, Number(key) + 1) }, (_, i): unknown =>
    i === Number(key) ? changedInside : part[i],
  );
}

/** The JSON with the part at each path replaced; the original is left as it is. @example isLeft(decodeSpec(changed(spec, { 'trailer.gvwr': '12,000 lb' }))) // false */
export function changed(base: unknown, changes: Readonly<Record<string, unknown>>): unknown {
  return Object.entries(changes).reduce((spec, [path, part]) => put(spec, path.split('.'), part), base);
}
