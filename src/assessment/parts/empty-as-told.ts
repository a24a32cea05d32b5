/** What is known of the empty trailer. */
import type { CurbWeight, Item } from '../../load/index.js';
import type { Note } from '../../ratings/index.js';
import type { Decision, Derived } from '../../trace/index.js';
import type { OpenQuestion } from './open-questions.js';

export interface Empty {
  readonly curb?: Derived<'lb'> | undefined;
  readonly item?: Item | undefined;
  readonly built?: CurbWeight | undefined;
  readonly notes: readonly Note[];
  readonly attention: readonly Note[];
  readonly notChecked: readonly OpenQuestion[];
  readonly decisions: readonly Decision[];
}
