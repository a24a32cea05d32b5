/** How far an input may be from what the spec says: by its basis, or as given for one figure. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { DecodedSpec } from '../../spec/index.js';
import { leavesOf } from '../../spec/index.js';
import type { Basis, Given } from '../../trace/index.js';
import { doubleOf } from '../../units/figure.js';
import { type Dimension, dimensionOf } from '../../units/index.js';
import { editDistance, nearestKeys } from '../../units/internal.js';
import type { ChooseError } from '../errors.js';
import type { Interval } from '../ranges/interval.js';
import { amountOf } from './amount.js';

/** How far figures of one kind may be off, either way. */
export interface Tolerance {
  /** What the figure rests on. */
  readonly basis: Basis;
  /** What it measures. */
  readonly dimension: Dimension;
  /** `3 %` of the figure, or an amount: `1 in`. */
  readonly amount: string;
  /** Where the amount comes from. */
  readonly source: string;
}

/** Tolerances in addition to the usual ones, or in their place. */
export interface Tolerances {
  /** By what a figure rests on and what it measures; each outranks the usual one of its kind. */
  readonly byBasis?: readonly Tolerance[];
  /** By the path of a figure in the spec: `{ 'cargo.0.weight': '5 %' }`. These outrank all others. */
  readonly byPath?: Readonly<Record<string, string>>;
}

const practice = 'common practice, no source';

/** Default tolerances. Labels and published figures count as exact; a scale is off by its division. */
export const usualTolerances: readonly Tolerance[] = [
  { basis: 'scale', dimension: 'mass', amount: '20 lb', source: `the usual division of a truck scale; ${practice}` },
  { basis: 'scale', dimension: 'length', amount: '0.25 in', source: `a tape read along the frame; ${practice}` },
  { basis: 'computed', dimension: 'mass', amount: '2 %', source: practice },
  { basis: 'computed', dimension: 'length', amount: '0.5 in', source: practice },
  { basis: 'stated', dimension: 'mass', amount: '3 %', source: `a maker's sheet against the scale; ${practice}` },
  { basis: 'stated', dimension: 'length', amount: '1 in', source: practice },
  { basis: 'estimated', dimension: 'mass', amount: '10 %', source: practice },
  { basis: 'estimated', dimension: 'length', amount: '3 in', source: practice },
];

/** An input of a spec and how far it may be off. */
export interface Unsure {
  /** Its key in the spec. */
  readonly path: string;
  /** Its name in formulas. */
  readonly symbol: string;
  /** The input as the spec has it. */
  readonly leaf: Given;
  /** How far it may be off, as given: `3 %`, `1 in`. */
  readonly amount: string;
  /** Where that comes from. */
  readonly source: string;
  /** The least and the most it may be, in its own unit. */
  readonly between: Interval;
}

/** The balance point is as unsure as the spec itself says; a scale is off by the division given with its tickets. */
function toldInSpec(spec: DecodedSpec): ReadonlyMap<string, Pick<Tolerance, 'amount' | 'source'>> {
  const told = new Map<string, Pick<Tolerance, 'amount' | 'source'>>();
  spec.cargo?.forEach(({ uncertainty }, i) => {
    if (uncertainty === undefined) return;
    const { value, unit } = uncertainty.value;
    told.set(`cargo.${i}.balancePoint`, { amount: `${value.toFixed()} ${unit}`, source: 'told in the spec' });
    told.set(`cargo.${i}.uncertainty`, { amount: '0 in', source: 'is a tolerance itself' });
  });
  return told;
}

function ofBasis(
  spec: DecodedSpec,
  rows: readonly Tolerance[],
): (leaf: Given) => Pick<Tolerance, 'amount' | 'source'> | undefined {
  const division = spec.tickets?.division.value;
  return ({ basis, value }) => {
    const dimension = dimensionOf(value.unit);
    if (basis === 'scale' && dimension === 'mass' && division !== undefined)
      return { amount: `${division.value.toFixed()} ${division.unit}`, source: 'the division told with the tickets' };
    return rows.find((row) => row.basis === basis && row.dimension === dimension);
  };
}

const clamp = ({ between, value }: Given, off: number): Interval => {
  const at = doubleOf(value);
  const [least, most] = between?.map((end) => end.toNumber()) ?? [-Infinity, Infinity];
  return { low: Math.max(least as number, at - off), high: Math.min(most as number, at + off) };
};

/** Every input of the spec that may be off, in the order of the spec. */
export function unsureInputs(spec: DecodedSpec, tolerances: Tolerances): Either<ChooseError, readonly Unsure[]> {
  const leaves = leavesOf(spec);
  const byPath = tolerances.byPath ?? {};
  const stray = Object.keys(byPath).find((path) => !leaves.has(path));
  if (stray !== undefined)
    return left({
      chapter: 'choose',
      tag: 'NotInTheSpec',
      path: stray,
      nearest: nearestKeys([...leaves.keys()], (key) => editDistance(key, stray)),
    });
  const inSpec = toldInSpec(spec);
  const usual = ofBasis(spec, [...(tolerances.byBasis ?? []), ...usualTolerances]);
  const found: Unsure[] = [];
  for (const [path, leaf] of leaves) {
    const own = Object.hasOwn(byPath, path) ? (byPath[path] as string) : undefined;
    const told =
      own === undefined ? (inSpec.get(path) ?? usual(leaf)) : { amount: own, source: 'told for this figure' };
    if (told === undefined) continue;
    const off = amountOf(
      told.amount,
      leaf,
      own === undefined ? `tolerances.byBasis.${leaf.basis}` : `tolerances.byPath.${path}`,
    );
    if (isLeft(off)) return off;
    if (off.right === 0) continue;
    found.push({
      path,
      symbol: leaf.symbol,
      leaf,
      amount: told.amount,
      source: told.source,
      between: clamp(leaf, off.right),
    });
  }
  return right(found);
}
