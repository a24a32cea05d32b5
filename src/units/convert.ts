/** Exact conversion: by the definitions, multiplied before divided, so that a round trip is the same figure. */
import { snap } from './closeness.js';
import { Decimal, one } from './decimal.js';
import { ofDecimal, type Quantity } from './quantity.js';
import { type SameDimension, type Unit, unitList } from './unit-list.js';

/** The exact fraction that takes a figure in `from` to one in `to`. Units of one dimension only. */
export interface Factor {
  readonly times: Decimal;
  readonly over: Decimal;
}

const known = new Map<string, Factor>();

/** The factor between two units of one dimension. */
export function factorBetween(from: Unit, to: Unit): Factor {
  const key = `${from}>${to}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const [dimension, size, per] = unitList[from];
  const [targetDimension, targetSize, targetPer] = unitList[to];
  if (dimension !== targetDimension)
    throw new TypeError(`${from} measures ${dimension}, ${to} measures ${targetDimension}`);
  const factor =
    from === to
      ? { times: one, over: one }
      : { times: new Decimal(size).times(targetPer), over: new Decimal(targetSize).times(per) };
  known.set(key, factor);
  return factor;
}

/** Applies a factor to a bare decimal; the arithmetic of `convert`, shared with the recorded step. */
export function applyFactor(value: Decimal, factor: Factor): Decimal {
  return snap(value.times(factor.times).div(factor.over));
}

/**
 * What is this figure in another unit?
 *
 * `q in target = q x size(from) / size(target)`, the sizes being the definitions in the unit list.
 *
 * @example show(convert(kg(1150), 'lb')) // 2,535.31601512... lb
 * @source NIST SP 811, appendix B.
 */
export function convert<U extends Unit, T extends SameDimension<U>>(q: Quantity<U>, target: T): Quantity<T> {
  if ((q.unit as Unit) === target) return q as unknown as Quantity<T>;
  return ofDecimal(applyFactor(q.value, factorBetween(q.unit, target)), target) as Quantity<T>;
}
