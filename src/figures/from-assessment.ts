/** What some figures are drawn from, taken out of an assessment. */
import type { Assessment } from '../assessment/index.js';
import { inPounds, minus, result } from '../trace/index.js';
import type { LengthsToDraw } from './payload-by-length.js';
import type { SharesToDraw } from './payload-by-share/shares.js';

/**
 * What does the picture of payload by tongue share need of an assessment?
 *
 * The limits, the band, both payloads, and the load as it is now.
 *
 * @param assessment from `assess`
 * @returns undefined where no payload is known
 * @example sharesFrom(orThrow(assess(spec))).limits.length > 5 // true
 * @source the figures are those of the assessment
 */
export function sharesFrom({ payload, weights }: Assessment): SharesToDraw | undefined {
  const { curb, balance } = weights;
  if (payload === undefined || curb === undefined) return undefined;
  return {
    curb,
    limits: payload.limits,
    band: payload.share,
    ...(payload.best && { best: payload.best.weight }),
    ...(payload.anywhere && { anywhere: payload.anywhere.weight }),
    ...(balance && {
      now: { share: balance.tongueShare, payload: result('load as it is', minus(balance.gross, curb)) },
    }),
  };
}

/**
 * What does the picture of payload by deck length need of an assessment?
 *
 * @param assessment from `assess`
 * @returns undefined where the spec does not say which of its lines grow with the deck, or has no GVWR
 * @example lengthsFrom(orThrow(assess(spec))).rows.length // 4
 * @source the figures are those of the assessment
 */
export function lengthsFrom({ deckGrowth, spec }: Assessment): LengthsToDraw | undefined {
  const { gvwr } = spec.trailer;
  return deckGrowth === undefined || gvwr === undefined
    ? undefined
    : { rows: deckGrowth.byLength.rows, gvwr: inPounds('GVWR', gvwr) };
}
