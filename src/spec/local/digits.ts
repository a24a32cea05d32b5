/** Printed figures of a rule file: digits as text, so that none is lost, with the unit in a key of its own. */
import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { parseQuantity } from '../../units/index.js';
import { failed } from '../codec/fault.js';
import { type Coded, coded } from '../codec/kind.js';

/** The digits of a figure greater than zero, without commas; undefined when it is none. */
function plain(input: unknown): string | undefined {
  const read = parseQuantity(typeof input === 'string' ? `${input} %` : '', '%');
  return isLeft(read) || !read.right.value.gt(0) ? undefined : read.right.value.toFixed();
}

/** Digits of a figure greater than zero: `3200`, `3,200`, `0.5`. */
export const digits: Coded<string, string> = coded(
  new t.Type<string, string, unknown>(
    'digits of a figure greater than zero, as text',
    (input): input is string => typeof input === 'string' && plain(input) === input,
    (input, context) => {
      const found = plain(input);
      return found === undefined
        ? failed(input, context, 'unreadable', 'digits of a figure greater than zero, as text')
        : t.success(found);
    },
    t.identity,
  ),
  { kind: 'text', most: 200 },
);
