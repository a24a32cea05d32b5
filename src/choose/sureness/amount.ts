/** A tolerance as written, `3 %` or `1 in`, as an amount of one figure. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Given } from '../../trace/index.js';
import { doubleOf } from '../../units/figure.js';
import { convert, dimensionOf, parseMeasure, type Quantity, type Unit } from '../../units/index.js';
import type { ChooseError } from '../errors.js';

const unusable = (path: string, found: string, needed: string): Either<ChooseError, never> =>
  left({ chapter: 'choose', tag: 'UnusableFigure', path, found, needed });

const needed = 'a share such as "3 %" or an amount such as "1 in", zero or more';

/** An amount that was read: a share of the figure, or so much in its unit; undefined when it cannot be used. */
interface Amount {
  readonly share?: number;
  readonly off?: number;
}

function readAmount(amount: string, unit: Unit): Amount | undefined {
  const share = parseMeasure(amount, 'ratio');
  if (!isLeft(share)) {
    const of = convert(share.right as Quantity<'ratio'>, 'ratio').value.toNumber();
    return of < 0 || of >= 1 ? undefined : { share: of };
  }
  const read = parseMeasure(amount, dimensionOf(unit));
  if (isLeft(read)) return undefined;
  const off = (convert(read.right as Quantity<Unit>, unit as never) as Quantity<Unit>).value.toNumber();
  return off < 0 ? undefined : { off };
}

/** The same few amounts are asked for every leaf of every rig. */
const known = new Map<string, Amount | undefined>();
const mostKnown = 500;

/** How far off, in the unit of the figure. A percentage is one of the figure itself. */
export function amountOf(amount: string, leaf: Given, path: string): Either<ChooseError, number> {
  const { unit } = leaf.value;
  const key = `${amount}|${unit}`;
  if (!known.has(key)) {
    if (known.size >= mostKnown) known.clear();
    known.set(key, readAmount(amount, unit));
  }
  const read = known.get(key);
  if (read === undefined) return unusable(path, amount, needed);
  return right(read.off ?? (read.share as number) * Math.abs(doubleOf(leaf.value)));
}
