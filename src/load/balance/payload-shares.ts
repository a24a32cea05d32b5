/** The tongue shares at which a gross weight keeps every limit, and what lifts at them. */
import { type Decision, type Derived, decide, greatestOf, leastOf } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { type LadenLimit, shareAtLimit } from './laden-limit.js';
import type { ShareBand } from './payload-answer.js';
import type { Lb, Question } from './payload-by-limits.js';

/** The shares at which a gross weight keeps every limit, and whether some share is left when what must press does. */
export interface SharesLeft {
  readonly from: Derived<'ratio'>;
  readonly to: Derived<'ratio'>;
  readonly decisions: readonly Decision[];
}

/**
 * The shares at which this gross weight keeps within every limit: from where the axles are relieved enough to where the tongue is full.
 *
 * The ratings leave a share by themselves, since the gross weight is the least of what they allow: often just one, so that its two
 * ends tie. They are therefore not asked against each other, but against what must press.
 */
export function sharesFor({ curb, share, most, least }: Question, gross: Lb): SharesLeft {
  const at = (limits: readonly LadenLimit[], on: LadenLimit['on']): readonly Derived<'ratio'>[] =>
    limits.filter((limit) => limit.on === on).map((limit) => shareAtLimit(limit, gross, curb));
  const [lows, highs] = [
    [share.low, ...at(most, 'axles')],
    [share.high, ...at(most, 'tongue')],
  ];
  const [floors, ceilings] = [at(least, 'tongue'), at(least, 'axles')];
  const from = greatestOf('lowest tongue share', [...lows, ...floors]);
  const to = leastOf('highest tongue share', [...highs, ...ceilings]);
  if (least.length === 0) return { from, to, decisions: [] };
  const rated = { from: greatestOf('lowest tongue share', lows), to: leastOf('highest tongue share', highs) };
  const decisions = [
    ...floors.map((floor) => decide(floor, '<=', rated.to)),
    ...collected(ceilings, (ceiling) => [rated.from, ...floors].map((floor) => decide(floor, '<=', ceiling))),
  ];
  return { from, to, decisions };
}

/** What lifts at one share: a load that would be below what must press. */
export function liftsAt(
  { curb, least }: Question,
  gross: Lb,
  share: ShareBand,
  decisions: Decision[],
): readonly string[] {
  return collected(least, (limit) => {
    const edge = shareAtLimit(limit, gross, curb);
    const presses = limit.on === 'tongue' ? decide(share.low, '>=', edge) : decide(share.high, '<=', edge);
    decisions.push(presses);
    return presses.holds ? [] : [limit.name];
  });
}
