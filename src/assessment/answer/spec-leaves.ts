/** The figures of the spec that an answer holds, as its reader reads them. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { decodeSpec, type Json, leavesOf } from '../../spec/index.js';
import { type Basis, type Given, isBasis } from '../../trace/index.js';
import { dimensionOf, isUnit, parseMeasure, type Quantity, type Unit } from '../../units/index.js';
import type { DoesNotFollow } from './does-not-follow.js';
import { type Rational, rationalOf } from './rational.js';

/** A figure of the spec: exact, in the unit it is written in, with what it rests on. */
export interface SpecLeaf {
  readonly value: Rational;
  readonly unit: Unit;
  readonly basis: Basis;
}

/** The figure at a key, read in the unit of the node that names it; undefined where the spec has none there. */
export type SpecLeaves = (path: string, unit: Unit) => SpecLeaf | undefined;

const leafOf = ({ value, unit }: Quantity<Unit>, basis: Basis): SpecLeaf => ({
  value: rationalOf(value.toFixed()) as Rational,
  unit,
  basis,
});

function at(spec: Json, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (part, key) =>
        typeof part === 'object' && part !== null && Object.hasOwn(part, key)
          ? (part as Record<string, unknown>)[key]
          : undefined,
      spec,
    );
}

/** A figure inside a list that another chapter reads: a cut list, a deck. Without a basis it is stated. */
function writtenAt(spec: Json, path: string, unit: Unit): SpecLeaf | undefined {
  const found = at(spec, path);
  if (typeof found === 'number' && unit === 'ratio') {
    const value = rationalOf(String(found));
    return value && { value, unit, basis: 'stated' };
  }
  const {
    text,
    value,
    unit: written,
    basis,
  } = typeof found === 'object' && found !== null ? (found as Record<string, unknown>) : { text: found };
  const said =
    typeof value === 'string' && typeof written === 'string' && isUnit(written) ? `${value} ${written}` : text;
  if (typeof said !== 'string') return undefined;
  const read = parseMeasure(said, dimensionOf(unit));
  const told = typeof basis === 'string' && isBasis(basis) ? basis : 'stated';
  return isLeft(read) ? undefined : leafOf(read.right as Quantity<Unit>, told);
}

/** Reads the spec without asking anything of it; a spec that cannot be read is a fault of the answer. */
export function specLeaves(spec: Json): Either<DoesNotFollow, SpecLeaves> {
  const decoded = decodeSpec(spec);
  if (isLeft(decoded))
    return left({ at: 'spec', what: 'the spec', found: decoded.left.path, needed: 'a spec that can be read' });
  const leaves: ReadonlyMap<string, Given> = leavesOf(decoded.right);
  return right((path, unit) => {
    const found = leaves.get(path);
    return found === undefined ? writtenAt(spec, path, unit) : leafOf(found.value, found.basis);
  });
}
