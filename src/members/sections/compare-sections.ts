/** Two sections side by side: what is saved in weight and what is given up in strength. */
import { constant, type Decision, type Derived, decide, over, result, times } from '../../trace/index.js';
import { ratio, showBrief } from '../../units/index.js';
import type { Member } from '../frame/member.js';

/** A published section or one computed from its outline. */
export interface Comparable extends Member {
  readonly Sx: Derived<'in3'>;
}

export interface SideBySide {
  readonly designation: string;
  readonly weightPerFoot: Derived<'lb/ft'>;
  readonly Sx: Derived<'in3'>;
  /** Section modulus for each lb/ft. */
  readonly SxPerPound: Derived<'in3*ft/lb'>;
}

export interface SectionComparison {
  readonly first: SideBySide;
  readonly second: SideBySide;
  /** Second over first. */
  readonly weightRatio: Derived<'ratio'>;
  readonly SxRatio: Derived<'ratio'>;
  readonly SxPerPoundRatio: Derived<'ratio'>;
  readonly says: string;
  readonly decisions: readonly Decision[];
}

const side = ({ designation, weightPerFoot, Sx }: Comparable): SideBySide => ({
  designation,
  weightPerFoot,
  Sx,
  SxPerPound: result(`${designation} Sx per lb/ft`, over(Sx, weightPerFoot)),
});

const perCent = (share: Derived<'ratio'>): string => `${showBrief(times(share, 100).value, 0)} %`;

const same = constant(ratio(1));

/**
 * How do these two sections compare: a rolled channel, say, and a plate bent to the same depth?
 *
 * `weight ratio = w2 / w1`, `Sx ratio = Sx2 / Sx1`, `Sx per pound = Sx / w`.
 *
 * Static bending about the horizontal axis only: not the steel grade, deflection, twisting, local buckling of a thin web, welds or fatigue.
 *
 * @param first the one to compare with, as from `section('C6X8.2')`
 * @param second the other, as from `sectionProperties` of a formed channel
 * @returns both sides, three ratios (second over first), and a plain sentence
 * @example compareSections(c6, c5).says.startsWith('C5X6.7 weighs 82 %') // true
 * @source arithmetic, derived
 */
export function compareSections(first: Comparable, second: Comparable): SectionComparison {
  const [a, b] = [side(first), side(second)];
  const weightRatio = result('weight ratio', over(b.weightPerFoot, a.weightPerFoot));
  const SxRatio = result('Sx ratio', over(b.Sx, a.Sx));
  const SxPerPoundRatio = result('Sx per pound ratio', over(b.SxPerPound, a.SxPerPound));
  const [worse, equal] = [decide(SxPerPoundRatio, '<', same), decide(SxPerPoundRatio, '=', same)];
  const unequal = worse.holds ? 'each pound does less than in' : 'each pound does more than in';
  const perPound = equal.holds ? 'each pound does as much as in' : unequal;
  const says =
    `${b.designation} weighs ${perCent(weightRatio)} of ${a.designation} per foot and has ${perCent(SxRatio)} of its section modulus: ` +
    `in the same steel it reaches the same bending stress at ${perCent(SxRatio)} of the bending moment, and ${perPound} ${a.designation}.`;
  return { first: a, second: b, weightRatio, SxRatio, SxPerPoundRatio, says, decisions: [worse, equal] };
}
