/** Which stretch of the deck each piece of cargo covers. */
import type { Note } from '../../ratings/index.js';
import type { DecodedCargo } from '../../spec/index.js';
import { type Decision, type Derived, inInches, minus, plus, result } from '../../trace/index.js';
import type { OpenQuestion } from './open-questions.js';

type Inches = Derived<'in'>;

/** A piece and the stretch of deck it covers, as far as known. */
export interface Covered {
  readonly name: string;
  readonly index: number;
  readonly front: Inches;
  readonly rear: Inches;
  readonly rightOfMiddle: Inches | undefined;
  readonly width: Inches | undefined;
}

/** More pieces than this are not held against each other: every pair is asked. */
export const mostPieces = 30;

/** Front and rear of a piece: its front face and its length, or its balance point and how far that lies behind its front. */
export function coveredBy(piece: DecodedCargo, index: number): Covered | undefined {
  const { name, at, front, balancePoint, length, rightOfMiddle } = piece;
  if (length === undefined) return undefined;
  const face =
    front === undefined
      ? at &&
        balancePoint &&
        result(
          `front of ${name}`,
          minus(inInches(`${name} position`, at), inInches(`${name} balance point`, balancePoint)),
        )
      : inInches(`${name} front face`, front);
  if (face === undefined) return undefined;
  return {
    name,
    index,
    front: face,
    rear: result(`rear of ${name}`, plus(face, inInches(`${name} length`, length))),
    rightOfMiddle: rightOfMiddle && inInches(`${name} right of the middle`, rightOfMiddle),
    width: piece.width && inInches(`${name} width`, piece.width),
  };
}

export const pathsOf = (...indices: readonly number[]): readonly string[] => indices.map((index) => `cargo.${index}`);

/** Warnings, missing facts, and the comparisons behind them. */
export interface OnDeck {
  readonly attention: readonly Note[];
  readonly notChecked: readonly OpenQuestion[];
  readonly decisions: readonly Decision[];
}
