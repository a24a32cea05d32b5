/** How sure an assessment is, as an answer. */
import type { AssessError } from '../../assessment/index.js';
import type { Quantity } from '../../units/index.js';
import type { Question } from './asked.js';
import type { Unsure } from './tolerances.js';
import type { WeighNext } from './weigh-next.js';

/** Within or over whatever the inputs are inside their tolerances, or not sure. */
export type Sure = 'within' | 'not sure' | 'over';

/** One question and how sure its answer is. */
export interface SureCheck {
  /** What programs look it up by: the id of the check, or `presses/` and the name of the load. */
  readonly id: string;
  /** What is asked: the name of the check, or of the load that must press. */
  readonly what: string;
  /** Whether a rating is asked, or whether a load presses. */
  readonly kind: Question['kind'];
  /** How sure the answer is. */
  readonly sure: Sure;
  /** The reserve (or the load that must press) as the spec has it. */
  readonly reserve: Quantity<'lb'>;
  /** The least it can be, to a millionth of a pound, down. */
  readonly least: Quantity<'lb'>;
  /** The most it can be, to a millionth of a pound, up. */
  readonly most: Quantity<'lb'>;
  /** False where an input may turn the answer both ways or a formula changes: then the ends hold the range and may be wider than it. */
  readonly endsReached: boolean;
}

/** How sure an assessment is. */
export interface Sureness {
  /** `over` when some check is over for sure, `within` when all are within for sure. No check at all is `not sure`. */
  readonly sure: Sure;
  /** Every check and every load that must press, in the order of the assessment. */
  readonly checks: readonly SureCheck[];
  /** The inputs that may be off, and by how much. */
  readonly inputs: readonly Unsure[];
  /** The inputs to weigh or measure next, the one that decides most first. */
  readonly weighNext: readonly WeighNext[];
  /** Where inside the tolerances the spec could not be answered at all. */
  readonly refused: readonly AssessError[];
  /** False when too many comparisons may turn to follow them all; then no check is called sure. */
  readonly complete: boolean;
}
