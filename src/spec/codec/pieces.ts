/** How many pieces a line of a cut list has: a leaf of the working, so that a study may vary it. */
import { isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import type { Derived, Given } from '../../trace/index.js';
import { parseQuantity, quantity, wireQuantity } from '../../units/index.js';
import type { PiecesInput } from '../types/figures.js';
import { failed, isRecord, own, pathOf } from './fault.js';
import { givenBehind } from './figure.js';
import { type Coded, coded } from './kind.js';
import { type Naming, symbolAt } from './naming.js';
import { neededByKind } from './needed.js';
import { isWrong, said } from './read-figure.js';

const [least, most] = [1, 1000] as const;
const says = { kind: 'pieces', least, most } as const;

function pieces(input: unknown): number | undefined {
  if (typeof input === 'number') return input;
  const read = parseQuantity(typeof input === 'string' ? input : '', 'ratio');
  return isLeft(read) ? undefined : read.right.value.toNumber();
}

const isCount = (n: unknown): n is number => typeof n === 'number' && Number.isInteger(n) && n >= least && n <= most;

/** A whole number of pieces from 1 to 1,000: `2`, `"2"`, or either with its basis. */
export function pieceCount(symbol: Naming): Coded<Derived<'ratio'>, PiecesInput> {
  const codec = new t.Type<Derived<'ratio'>, PiecesInput, unknown>(
    neededByKind(says),
    (input): input is Derived<'ratio'> => {
      const leaf = isRecord(input) ? givenBehind(own(input, 'why')) : undefined;
      return leaf !== undefined && wireQuantity('ratio').is(leaf.value) && isCount(leaf.value.value.toNumber());
    },
    (input, context) => {
      const figure = said(input);
      if (isWrong(figure)) return failed(input, context, figure.fault, figure.needed);
      const n = pieces(figure.figure);
      if (!isCount(n))
        return failed(input, context, n === undefined ? 'wrong kind' : 'out of range', neededByKind(says));
      const value = quantity(n, 'ratio');
      const ends = [quantity(least, 'ratio').value, quantity(most, 'ratio').value] as const;
      const why: Given = {
        kind: 'given',
        symbol: symbolAt(symbol, context),
        value,
        basis: figure.basis ?? 'stated',
        path: pathOf(context),
        between: ends,
        written: typeof figure.figure === 'string' ? figure.figure : undefined,
      };
      return t.success({ value, why });
    },
    ({ why }) => {
      const { basis, value, written } = givenBehind(why) as Given;
      const text = written ?? value.value.toFixed();
      if (basis !== 'stated') return { text, basis };
      return written ?? value.value.toNumber();
    },
  );
  return coded(codec, says);
}
