/** The build behind a random spec, in whole pounds and inches: what the parts are chosen to fit. */
import type { Chance } from './chance.js';
import { type Units, type Writer, writerOf } from './figures.js';

export interface Piece {
  readonly name: string;
  readonly weight: number;
  /** Where its balance point stands. */
  readonly at: number;
  readonly length: number;
}

export interface Plan {
  readonly chance: Chance;
  readonly write: Writer;
  readonly gooseneck: boolean;
  readonly axles: number;
  /** Rating of each axle. */
  readonly gawr: number;
  /** Place of the first axle, and from each to the next. */
  readonly first: number;
  readonly spread: number;
  readonly axlesAt: number;
  readonly deck: { readonly front: number; readonly rear: number };
  readonly curb: number;
  readonly emptyTongue: number;
  readonly pieces: readonly Piece[];
  readonly gross: number;
  readonly tongue: number;
  /** Ratings are set on the very loads they limit. */
  readonly ties: boolean;
  readonly dual: boolean;
  /** How much of what may be told is told, in percent. */
  readonly detail: number;
}

const names = ['skid steer', 'mini excavator', 'tractor', 'pallet of stone', 'roller', 'scissor lift'] as const;

/** Weights in steps that make the tongue load a whole number of pounds where figures shall stand on ties. */
function piecesOf(chance: Chance, room: number, step: number, deck: Plan['deck'], best: number): readonly Piece[] {
  const count = chance.pick([0, 1, 1, 1, 1, 2, 2, 3]);
  const whole = Math.max(step, Math.round((room * chance.whole(40, 115)) / 100 / Math.max(count, 1) / step) * step);
  return Array.from({ length: count }, (_, i) => {
    const length = Math.min(chance.whole(60, 190, 2), deck.rear - deck.front);
    const about = best + (i - (count - 1) / 2) * (length + 4);
    return {
      name: `${chance.pick(names)}${i === 0 ? '' : ` ${i + 1}`}`,
      weight: whole,
      at: Math.round(about) + chance.whole(-18, 12, 2),
      length,
    };
  });
}

/** One build out of a seed's choices. */
export function planOf(chance: Chance): Plan {
  const gooseneck = chance.happens(30);
  const axles = gooseneck ? chance.pick([2, 2, 3]) : chance.pick([1, 2, 2, 2, 3]);
  const dual = gooseneck && axles === 2 && chance.happens(40);
  const gawr = dual ? chance.pick([10000, 12000]) : chance.pick([3500, 5200, 6000, 7000, 7000, 8000]);
  const ties = chance.happens(25);
  const units: Units = ties ? 'us' : chance.pick(['us', 'us', 'us', 'metric', 'mixed']);
  const spread = axles === 1 ? 0 : chance.whole(32, 40, 2);
  const deckLength = chance.whole(axles === 1 ? 10 : 14, gooseneck ? 32 : 24) * 12;
  const front = gooseneck ? chance.whole(84, 108, 2) : chance.whole(46, 72, 2);
  const centre = front + Math.round((deckLength * chance.whole(54, 64)) / 100);
  const axlesAt = ties ? Math.round(centre / 40) * 40 : centre;
  const deck = { front, rear: front + deckLength };
  const step = ties ? axlesAt : 50;
  const rated = axles * gawr;
  const curb = Math.round((rated * chance.whole(22, 38)) / 100 / step) * step;
  const emptyTongue = Math.round((curb * (gooseneck ? chance.whole(17, 24) : chance.whole(8, 15))) / 100 / 10) * 10;
  const share = gooseneck ? chance.whole(15, 25) : chance.whole(9, 14);
  const pieces = piecesOf(chance, Math.round(rated * 1.1) - curb, step, deck, Math.round(axlesAt * (1 - share / 100)));
  const gross = pieces.reduce((sum, { weight }) => sum + weight, curb);
  const tongue = pieces.reduce((sum, { weight, at }) => sum + (weight * (axlesAt - at)) / axlesAt, emptyTongue);
  return {
    chance,
    write: writerOf(chance, units),
    gooseneck,
    axles,
    gawr: ties && chance.happens(40) ? Math.max(1000, Math.round((gross - tongue) / axles)) : gawr,
    first: axlesAt - ((axles - 1) * spread) / 2,
    spread,
    axlesAt,
    deck,
    curb,
    emptyTongue,
    pieces,
    gross,
    tongue,
    ties,
    dual,
    detail: chance.pick([35, 65, 85, 97]),
  };
}

/** A rating for a load: on the load itself where figures stand on ties, else one of the round figures around it. */
export function ratingFor(plan: Plan, load: number, step: number): number {
  const { chance, ties } = plan;
  const least = Math.max(Math.abs(Math.round(load)), step);
  if (ties && chance.happens(60)) return least;
  return Math.max(step, Math.round((least * chance.whole(88, 160)) / 100 / step) * step);
}
