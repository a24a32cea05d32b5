/** What is made of a form of the spec when it has been read. */
import type { Member } from '../../members/index.js';
import type { Condition, LocalRules, Rule, StepTable } from '../../rules/index.js';
import type { AnyAreaWeight, Derived } from '../../trace/index.js';
import type { UnitOf } from '../../units/index.js';
import type { DeckAreaForm, DecodedSurface } from './deck.js';
import type { DensityInput } from './figures.js';
import type { MemberForm } from './member.js';

/** A member of a cut list: its weight per foot, and the form it was written in. */
export interface DecodedMember extends Member {
  /** What was written: a designation, or a record of sizes. */
  readonly form: MemberForm;
}

/** An area of deck: what its surface weighs per area, and the form the surface was written in. */
export interface DecodedDeckArea extends Omit<DeckAreaForm, 'surface'> {
  /** Weight per area. */
  readonly surface: AnyAreaWeight;
  /** What was written. */
  readonly form: DecodedSurface;
}

/** Materials whose density is known. */
export type NamedMaterial = 'steel' | 'steel at 40.8 lb/ft2 per inch' | 'aluminium';
/** A material: one of those whose density is known, or a density. */
export type MaterialInput = NamedMaterial | DensityInput;
/** A material, as it was read. */
export type DecodedMaterial = NamedMaterial | Derived<UnitOf<'density'>>;

/** A condition of a local rule. */
export type DecodedRuleCondition = Condition;
/** A local rule. */
export type DecodedLocalRule = Rule;
/** A local step table. */
export type DecodedStepTable = StepTable;
/** A file of local rules. */
export type DecodedLocalRules = LocalRules;
