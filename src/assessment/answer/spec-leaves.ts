/** The figures of the spec that an answer holds, as its reader reads them. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { decodeSpec, type Json, leavesOf } from '../../spec/index.js';
import type { Basis, Given } from '../../trace/index.js';
import type { Quantity, Unit } from '../../units/index.js';
import type { DoesNotFollow } from './does-not-follow.js';
import { type Rational, rationalOf } from './rational.js';

/** A figure of the spec: exact, in the unit it is written in, with what it rests on. */
export interface SpecLeaf {
  readonly value: Rational;
  readonly unit: Unit;
  readonly basis: Basis;
}

/** The figure at a key, in the unit it is written in; undefined where the spec has none there. */
export type SpecLeaves = (path: string) => SpecLeaf | undefined;

const leafOf = ({ value, unit }: Quantity<Unit>, basis: Basis): SpecLeaf => ({
  value: rationalOf(value.toFixed()) as Rational,
  unit,
  basis,
});

/** Reads the spec without asking anything of it; a spec that cannot be read is a fault of the answer. */
export function specLeaves(spec: Json): Either<DoesNotFollow, SpecLeaves> {
  const decoded = decodeSpec(spec);
  if (isLeft(decoded))
    return left({ at: 'spec', what: 'the spec', found: decoded.left.path, needed: 'a spec that can be read' });
  const leaves: ReadonlyMap<string, Given> = leavesOf(decoded.right);
  return right((path) => {
    const found = leaves.get(path);
    return found === undefined ? undefined : leafOf(found.value, found.basis);
  });
}
