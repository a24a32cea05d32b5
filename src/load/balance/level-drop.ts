/** How far must the ball mount drop? */
import { type Note, note } from '../../ratings/index.js';
import { type AnyLength, constant, type Derived, decide, inInches, minus, result } from '../../trace/index.js';
import { inch } from '../../units/index.js';

/** The drop of the ball mount for a level trailer. */
export interface LevelDrop {
  /** Receiver height minus coupler height: positive for a mount that drops, negative for one that rises. */
  readonly drop: Derived<'in'>;
  readonly notes: readonly Note[];
}

/**
 * How far must the ball mount drop for the trailer to ride level?
 *
 * `drop = receiver height - coupler height`; a figure below zero is a rise.
 *
 * @param receiverHeight ground to the receiver opening, tow vehicle loaded
 * @param couplerHeight ground to the coupler, trailer loaded and level
 * @returns in
 * @example levelDrop(inch(23), inch(19)).drop // 4 in
 * @source common practice, no source
 */
export function levelDrop(receiverHeight: AnyLength, couplerHeight: AnyLength): LevelDrop {
  const drop = result(
    'drop of the ball mount',
    minus(inInches('receiver height', receiverHeight), inInches('coupler height', couplerHeight)),
  );
  return {
    drop,
    notes: decide(drop, '<', constant(inch(0)), 'a remark').holds
      ? [note('Rise', 'The mount must rise, not drop.', [drop])]
      : [],
  };
}
