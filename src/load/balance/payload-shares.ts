/** The tongue shares at which a gross weight keeps every limit, and what lifts at them. */
import { type Decision, type Derived, decide, greatestOf, leastOf } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { type LadenLimit, shareAtLimit } from './laden-limit.js';
import type { ShareBand } from './payload-answer.js';
import type { Lb, Question } from './payload-by-limits.js';

/** The shares at which this gross weight keeps within every limit: from where the axles are relieved enough to where the tongue is full. */
export function sharesFor(
  { curb, share, most, least }: Question,
  gross: Lb,
): { readonly from: Derived<'ratio'>; readonly to: Derived<'ratio'> } {
  const at = (limits: readonly LadenLimit[], on: LadenLimit['on']): readonly Derived<'ratio'>[] =>
    limits.filter((limit) => limit.on === on).map((limit) => shareAtLimit(limit, gross, curb));
  return {
    from: greatestOf('lowest tongue share', [share.low, ...at(most, 'axles'), ...at(least, 'tongue')]),
    to: leastOf('highest tongue share', [share.high, ...at(most, 'tongue'), ...at(least, 'axles')]),
  };
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

/**
 * Whether some share is left when what must press does. The ratings leave one by themselves, since the gross weight is the least of
 * what they allow: often just one, so that its two ends tie. They are therefore not asked against each other.
 */
export function pressesAtSomeShare(question: Question, gross: Lb): readonly Decision[] {
  const { from, to } = sharesFor({ ...question, least: [] }, gross);
  const edges = (on: LadenLimit['on']): readonly Derived<'ratio'>[] =>
    question.least.filter((limit) => limit.on === on).map((limit) => shareAtLimit(limit, gross, question.curb));
  const [floors, ceilings] = [edges('tongue'), edges('axles')];
  return [
    ...floors.map((floor) => decide(floor, '<=', to)),
    ...collected(ceilings, (ceiling) => [from, ...floors].map((floor) => decide(floor, '<=', ceiling))),
  ];
}
