/** Rules and step tables that a user brings: State brake lines, registration classes. The spec chapter reads them. */
import type { Rule } from '../rule.js';
import type { StepTable } from './steps.js';

/** What a rule file says, checked. `rules` go to `screen`, tables to `weightClassFor`. */
export interface LocalRules {
  /** The places its rules may name. */
  readonly jurisdictions: readonly { readonly id: string; readonly name: string }[];
  /** Its rules, for `screen`. */
  readonly rules: readonly Rule[];
  /** Its step tables, for `weightClassFor`. */
  readonly stepTables: readonly StepTable[];
}
