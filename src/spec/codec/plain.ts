/** What is no figure: a word from a list, a whole number, a short text, yes or no, a list. */
import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { failed, failedWith, readableOf } from './fault.js';
import { type AnyCoded, type Coded, coded } from './kind.js';
import { neededByKind } from './needed.js';

/** One of a few words. */
export function choice<const W extends string>(...words: readonly W[]): Coded<W, W> {
  const keys = Object.fromEntries(words.map((word) => [word, null])) as Record<W, null>;
  const says = { kind: 'choice', words } as const;
  return coded(t.keyof(keys, neededByKind(says)) as unknown as t.Type<W, W, unknown>, says);
}

/** A whole number from `least` to `most`: how many tires, axles, wheels. */
export function count(least: number, most: number): Coded<number, number> {
  const says = { kind: 'count', least, most } as const;
  const isCount = (n: number): boolean => Number.isInteger(n) && n >= least && n <= most;
  return coded(t.refinement(t.number, isCount, neededByKind(says)) as t.Type<number, number, unknown>, says);
}

/** What would break a line of a report, or hide in one. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is refused
const control = /[\u0000-\u001f\u007f-\u009f\u2028\u2029]/;

/** A text on one line. */
export function textUpTo(most: number): Coded<string, string> {
  const says = { kind: 'text', most } as const;
  const isText = (text: string): boolean => text.length > 0 && text.length <= most && !control.test(text);
  return coded(t.refinement(t.string, isText, neededByKind(says)) as t.Type<string, string, unknown>, says);
}

/** A short text: a name, a designation. */
export const shortText: Coded<string, string> = textUpTo(200);

/** True or false. */
export const yesOrNo: Coded<boolean, boolean> = coded(new t.BooleanType(), { kind: 'yes or no' });

/** A list, each place with its number in the path; one that is longer than `most` is not looked into. */
export function list<C extends AnyCoded>(
  of: string,
  each: C,
  most = 1000,
  least = 0,
): Coded<readonly t.TypeOf<C>[], readonly t.OutputOf<C>[]> {
  const inner = t.readonlyArray(each, of);
  const fits = (length: number): boolean => length >= least && length <= most;
  const codec = new t.Type<readonly t.TypeOf<C>[], readonly t.OutputOf<C>[], unknown>(
    of,
    (input): input is readonly t.TypeOf<C>[] => inner.is(input) && fits(input.length),
    (input, context) => {
      if (!Array.isArray(input)) return failed(input, context, 'wrong kind', `a list: ${of}`);
      if (input.length < least) return failed(input, context, 'missing', `${of}, at least ${least}`);
      if (input.length > most) return failed(input, context, 'too many', `at most ${most} ${of}`);
      const read = inner.validate(input, context);
      if (!isLeft(read)) return read;
      const partly = Array.from(input as readonly unknown[], (value, i) => {
        const one = each.validate(value, t.appendContext(context, String(i), each, value));
        return isLeft(one) ? readableOf(one.left) : one.right;
      });
      return failedWith(read.left, partly);
    },
    inner.encode,
  );
  return coded(codec, { kind: 'list', of, each, least, most });
}
