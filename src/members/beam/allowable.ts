/** Allowable bending stress: a named rule with its basis, or one that an engineer has stated. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyPressure,
  aboveZero,
  allHold,
  converted,
  type Derived,
  findRow,
  fromTable,
  inPsi,
} from '../../trace/index.js';
import { ksi } from '../../units/index.js';
import { allowableBending } from '../data/allowable-bending.js';
import type { MembersError } from '../errors.js';

export interface Allowable {
  readonly stress: Derived<'psi'>;
  /** Rule, steel and where it comes from. */
  readonly basis: string;
}

/** The rules that are printed here. */
export type BendingRule = (typeof allowableBending.rows)[number]['rule'];

/** Yield 36 ksi, or a steel of 50 ksi. */
export type SteelGrade = 'A36' | 'grade 50';

/**
 * Which bending stress does this published rule allow?
 *
 * The printed figure: 0.66 Fy (compact, braced), 0.60 Fy (not compact, braced), Fy / 1.67, or 0.55 Fy.
 *
 * Static rules for buildings and bridges, with bracing conditions of their own. None has a factor for a moving vehicle, and none
 * may be read into them.
 *
 * @param rule the rule by its printed name; @param steel by the mill certificate: 36 or 50 ksi yield
 * @returns psi and its basis in words; Left `NotTabulated`
 * @example allowableStress('ASD 1989, non-compact, braced', 'A36') // Right 21,600 psi
 * @source AISC ASD 1989 eq. F1-1 and F1-5, AISC 360, AASHTO: secondary copies
 */
export function allowableStress(rule: BendingRule, steel: SteelGrade): Either<MembersError, Allowable> {
  const found = findRow(allowableBending, (each) => each.rule, rule);
  if (isLeft(found)) return found;
  const row = found.right;
  const figure = fromTable('allowable bending stress', ksi(steel === 'A36' ? row.a36 : row.grade50), {
    table: allowableBending.name,
    key: `${row.rule}, ${steel}`,
    source: allowableBending.source,
  });
  return right({
    stress: converted('allowable bending stress', figure, 'psi'),
    basis: `${row.rule}: ${row.expression} for ${steel} (${row.from})`,
  });
}

/**
 * How does an allowable stress enter that an engineer has set?
 *
 * @param stress any unit of pressure; @param basis who set it and on what ground: it is printed with the answer
 * @returns Left `OutsideItsRange`
 * @example statedAllowable(ksi(15), 'set by the engineer of record')
 * @source as stated
 */
export function statedAllowable(stress: AnyPressure, basis: string): Either<MembersError, Allowable> {
  const figure = inPsi('allowable bending stress', stress);
  const tested = allHold([aboveZero('allowable bending stress', figure)]);
  return isLeft(tested) ? tested : right({ stress: figure, basis });
}
