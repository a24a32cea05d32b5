/** The types of a whole spec, as written and as read. Made by `npm run keys` from the table of keys. */
import type { Derived } from '../../trace/index.js';
import type { CargoInput, DecodedCargo } from './cargo.js';
import type { ShareInput } from './figures.js';
import type { DecodedRules, RulesInput } from './rules.js';
import type { DecodedTickets, TicketsInput } from './tickets.js';
import type { DecodedTow, TowInput } from './tow.js';
import type { DecodedTrailer, TrailerInput } from './trailer.js';

/** A spec. */
export interface SpecInput {
  /** The trailer. */
  readonly trailer: TrailerInput;
  /**
   * A heading for the report. Where: you choose it. Example: `"TD-14 with excavator"`. Without it: the trailer's name
   * heads the report.
   */
  readonly name?: string | undefined;
  /** What lies on it, piece by piece. A list. Without it: no cargo: the empty trailer is assessed. */
  readonly cargo?: readonly CargoInput[] | undefined;
  /**
   * The share of the gross weight it will be loaded to put on the tongue; payload is reckoned at it. Where: your
   * practice, or the trailer maker's manual. Example: `"12 %"`. Without it: payload is reckoned for the whole guideline
   * band, its harder end each time.
   */
  readonly tongueShare?: ShareInput | undefined;
  /** The tow vehicle. Without it: every check on the tow side. */
  readonly tow?: TowInput | undefined;
  /** Facts for the published rules. Without it: rules that need them cannot be told. */
  readonly rules?: RulesInput | undefined;
  /** What a scale printed, to stand beside what is reckoned. Without it: nothing is compared with the scale. */
  readonly tickets?: TicketsInput | undefined;
}

/** A spec, as it was read. */
export interface DecodedSpec {
  /** The trailer. */
  readonly trailer: DecodedTrailer;
  /** A heading for the report. */
  readonly name?: string | undefined;
  /** What lies on it, piece by piece. */
  readonly cargo?: readonly DecodedCargo[] | undefined;
  /** The share of the gross weight it will be loaded to put on the tongue; payload is reckoned at it. */
  readonly tongueShare?: Derived<'ratio'> | undefined;
  /** The tow vehicle. */
  readonly tow?: DecodedTow | undefined;
  /** Facts for the published rules. */
  readonly rules?: DecodedRules | undefined;
  /** What a scale printed, to stand beside what is reckoned. */
  readonly tickets?: DecodedTickets | undefined;
}
