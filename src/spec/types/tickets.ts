/** The types of scale tickets, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { WeightInput } from './figures.js';

/**
 * Scale tickets. Each pass with the same load, fuel and people. What the passes given do not contain is said, never
 * guessed.
 */
export interface TicketsInput {
  /** What one platform rounds to. Where: the ticket, or the scale's plate. Example: `"20 lb"`. */
  readonly division: WeightInput;
  /** Coupled, spring bars working. Without it: what the bars move. */
  readonly barsOn?: PassInput | undefined;
  /** Coupled, bars slack, or none fitted. Without it: the tongue load. */
  readonly barsOff?: PassInput | undefined;
  /**
   * The trailer unhitched, axles and jack together. Where: ticket. Example: `"12,660 lb"`. Without it: the truck alone
   * must be there for the tongue.
   */
  readonly trailerAlone?: WeightInput | undefined;
  /** The truck, trailer dropped. Without it: the trailer alone must be there for the tongue. */
  readonly truckAlone?: TruckAloneInput | undefined;
}

/** Scale tickets, as it was read. */
export interface DecodedTickets {
  /** What one platform rounds to. */
  readonly division: Derived<'lb'>;
  /** Coupled, spring bars working. */
  readonly barsOn?: DecodedPass | undefined;
  /** Coupled, bars slack, or none fitted. */
  readonly barsOff?: DecodedPass | undefined;
  /** The trailer unhitched, axles and jack together. */
  readonly trailerAlone?: Derived<'lb'> | undefined;
  /** The truck, trailer dropped. */
  readonly truckAlone?: DecodedTruckAlone | undefined;
}

/** A coupled pass over the scale. */
export interface PassInput {
  /** Front axle of the truck. Where: ticket. Example: `"4,840 lb"`. */
  readonly steer: WeightInput;
  /** Rear axle of the truck. Where: ticket. Example: `"5,420 lb"`. */
  readonly drive: WeightInput;
  /** All the trailer's axles. Where: ticket. Example: `"11,260 lb"`. */
  readonly trailer: WeightInput;
}

/** A coupled pass over the scale, as it was read. */
export interface DecodedPass {
  /** Front axle of the truck. */
  readonly steer: Derived<'lb'>;
  /** Rear axle of the truck. */
  readonly drive: Derived<'lb'>;
  /** All the trailer's axles. */
  readonly trailer: Derived<'lb'>;
}

/** The truck alone on the scale. */
export interface TruckAloneInput {
  /** Front axle. Where: ticket. Example: `"5,140 lb"`. */
  readonly steer: WeightInput;
  /** Rear axle. Where: ticket. Example: `"3,720 lb"`. */
  readonly drive: WeightInput;
}

/** The truck alone on the scale, as it was read. */
export interface DecodedTruckAlone {
  /** Front axle. */
  readonly steer: Derived<'lb'>;
  /** Rear axle. */
  readonly drive: Derived<'lb'>;
}
