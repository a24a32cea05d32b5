/** What the figure of payload by tongue share is drawn from. */
import type { LadenLimit, ShareBand } from '../../load/index.js';
import type { Derived } from '../../trace/index.js';

/** What the figure needs: the limits of the laden trailer, and the payloads found under them. */
export interface SharesToDraw {
  /** Weight of the empty trailer. */
  readonly curb: Derived<'lb'>;
  /** Every limit, as `payload` takes them. */
  readonly limits: readonly LadenLimit[];
  /** The band of shares the answer is for. */
  readonly band: ShareBand;
  /** The most that any share of the band allows. */
  readonly best?: Derived<'lb'>;
  /** What holds at every share of the band. */
  readonly anywhere?: Derived<'lb'>;
  /** The load as it is now. */
  readonly now?: { readonly share: Derived<'ratio'>; readonly payload: Derived<'lb'> };
}
