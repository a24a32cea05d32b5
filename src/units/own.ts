/** Keys of a record itself. What stands on a prototype, put there by anything else in the process, is not read. */

/** A record that is no list, whatever its prototype. */
export const isRecord = (input: unknown): input is Readonly<Record<string, unknown>> =>
  typeof input === 'object' && input !== null && !Array.isArray(input);

/** Whether a record of one of several forms is the one with this key of its own. */
export const has = <T extends object, K extends string>(
  form: T,
  key: K,
): form is Extract<T, { readonly [P in K]: unknown }> => Object.hasOwn(form, key);

/** A key that may be left out, of the record itself. */
export const own = <T extends object, K extends keyof T>(record: T, key: K): T[K] | undefined =>
  Object.hasOwn(record, key) ? record[key] : undefined;

/** Has no key, not even of a prototype. */
const none = Object.freeze(Object.create(null));

/** A record that may be absent, to read keys of: an absent one has none. */
export const orNone = <T extends object>(record: T | undefined): Partial<T> => record ?? none;
