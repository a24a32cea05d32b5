/** The working of one figure: leaves that were given, looked up or fixed, and the recorded operations between them. */

import type { Factor } from '../units/convert.js';
import type { Decimal } from '../units/decimal.js';
import type { Quantity, RoundingMode, Unit } from '../units/index.js';
import type { Basis } from './basis.js';
import type { Source } from './source.js';

/** The closed list of operations. The tape, the replay and every other reader know exactly these. */
export type Operation =
  | 'sum'
  | 'difference'
  | 'product'
  | 'quotient'
  | 'least'
  | 'greatest'
  | 'convert'
  | 'relabel'
  | 'round'
  | 'squareRoot'
  | 'power'
  | 'sine'
  | 'cosine'
  | 'tangent'
  | 'arcSine'
  | 'arcTangent';

interface Figure {
  readonly value: Quantity<Unit>;
  /** The name it goes by in a formula; a step without one is written inside the formula that uses it. */
  readonly symbol?: string | undefined;
  /** The weakest input it rests on. */
  readonly basis: Basis;
}

/** A figure from outside: a spec, a label, a ticket. `path` says where in the spec. */
export interface Given extends Figure {
  readonly kind: 'given';
  readonly symbol: string;
  readonly path?: string | undefined;
  /** The least and the most this input may be, in its own unit; a study refuses what lies outside, as the spec's reader does. */
  readonly between?: readonly [Decimal, Decimal] | undefined;
  /** The text that a person wrote; a record from a program leaves none. */
  readonly written?: string | undefined;
}

/** A figure read from a published table. */
export interface LookedUp extends Figure {
  readonly kind: 'looked up';
  readonly symbol: string;
  readonly table: string;
  readonly key: string;
  readonly source: Source;
}

/** A number that belongs to a formula: 2, 12, 1.10. */
export interface Constant extends Figure {
  readonly kind: 'constant';
  readonly source?: Source | undefined;
}

/** An operation on other figures. */
export interface Computed extends Figure {
  readonly kind: 'computed';
  readonly operation: Operation;
  readonly of: readonly Node[];
  readonly source?: Source | undefined;
  readonly factor?: Factor | undefined;
  readonly rounding?: { readonly mode: RoundingMode; readonly step: Decimal } | undefined;
}

export type Node = Given | LookedUp | Constant | Computed;

/** A figure together with its working. */
export interface Derived<U extends Unit> {
  readonly value: Quantity<U>;
  readonly why: Node;
}

/** What most functions take: a plain figure, or one with its working. */
export type Known<U extends Unit> = Quantity<U> | Derived<U>;
