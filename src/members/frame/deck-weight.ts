/** The weight of a deck, area by area, each with its place. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyAreaWeight,
  type AnyLength,
  aboveZero,
  allHold,
  inInches,
  inPoundsPerSquareFoot,
  inUnit,
  over,
  plus,
  result,
  times,
} from '../../trace/index.js';
import type { MembersError } from '../errors.js';
import { type WeightList, weighAll } from './frame-weight.js';

/** One area of deck: the main deck, a beavertail, a wheel-well filler. */
export interface DeckArea {
  readonly name: string;
  readonly length: AnyLength;
  readonly width: AnyLength;
  /** Front edge, behind the coupler. */
  readonly from: AnyLength;
  /** Weight per area: `board(...).weightPerSquareFoot`, `plateWeight`, `floorPlateWeight(...).weight`. */
  readonly surface: AnyAreaWeight;
}

export type Deck = readonly DeckArea[];

/**
 * What does this deck weigh, and where does each area of it act?
 *
 * `W = length x width x weight per square foot`, acting at the front edge plus half the length.
 *
 * Boards are taken edge to edge: gaps between them are not taken off. Wet boards weigh up to twice as much as dry ones.
 *
 * @param deck areas by tape or drawing, any unit; front edges behind the coupler; their weight per area
 * @returns lines and total in lb, places in inches; Left `OutsideItsRange`, `NothingListed`, with the place in the list
 * @example deckWeight([{ name: 'deck', length: foot(18), width: inch(83), from: inch(60), surface: lbPerFt2('4.75') }]) // Right 591.4 lb at 168 in
 * @source geometry, derived
 */
export const deckWeight = (deck: Deck): Either<MembersError, WeightList> =>
  weighAll('deck', deck, (area) => {
    const { name } = area;
    const [length, width] = [inInches(`${name} length`, area.length), inInches(`${name} width`, area.width)];
    const surface = inPoundsPerSquareFoot(`${name} weight per square foot`, area.surface);
    const tested = allHold([
      aboveZero(`${name} length`, length),
      aboveZero(`${name} width`, width),
      aboveZero(`${name} weight per square foot`, surface),
    ]);
    if (isLeft(tested)) return tested;
    const weight = result(`${name} weight`, times(surface, inUnit(times(length, width), 'ft2')));
    const at = result(`${name} position`, plus(inInches(`${name} front edge`, area.from), over(length, 2)));
    return right({ line: { name, weight, at }, decisions: tested.right });
  });
