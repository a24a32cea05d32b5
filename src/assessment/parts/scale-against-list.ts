/** The empty trailer as weighed against the sum of its parts. */
import type { CurbWeight } from '../../load/index.js';
import { type Note, note } from '../../ratings/index.js';
import type { DecodedCurb } from '../../spec/index.js';
import { type Decision, type Derived, decide, difference, minus, result, times } from '../../trace/index.js';

export type Lb = Derived<'lb'>;

/** How far the list is from the scale, against the tolerance the spec states for its items. */
export function againstScale(
  weighed: Lb,
  built: CurbWeight,
  tolerance: DecodedCurb['tolerance'],
): { readonly notes: readonly Note[]; readonly decisions: readonly Decision[] } {
  const gap = difference('weighed minus built up', weighed, built.weight);
  const governs = note(
    'WeighedAgainstBuiltUp',
    'The trailer is both weighed and built up from its parts: the scale governs.',
    [gap],
  );
  if (tolerance === undefined) return { notes: [governs], decisions: [] };
  const allowed = result('tolerance of the built-up weight', times(built.weight, tolerance));
  const decisions = [
    decide(gap, '<=', allowed, 'a remark'),
    decide(minus(built.weight, weighed), '<=', allowed, 'a remark'),
  ];
  const agrees = decisions.every(({ holds }) => holds);
  const says = agrees
    ? note('BuiltUpAgrees', 'The built-up weight agrees with the scale within the tolerance stated for its items.', [
        gap,
        allowed,
      ])
    : note(
        'BuiltUpDisagrees',
        'The built-up weight is further from the scale than the tolerance stated for its items: something is missing from the list, or on the trailer.',
        [gap, allowed],
      );
  return { notes: [governs, says], decisions };
}
