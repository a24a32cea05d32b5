/** The first page as data, in the order of importance to a reader at the counter. */
import { type Assessment, ruleFindings } from '../assessment/index.js';
import type { Check } from '../ratings/index.js';
import { type Finding, hasEffect } from '../rules/index.js';
import { type Derived, minus, over, plus, result } from '../trace/index.js';
import type { Decimal } from '../units/index.js';
import type { Brief, BriefExtras, BriefPlace } from './brief-data.js';
import { openOnesFirst } from './open-questions.js';

const figure = ({ value }: Derived<'lb'>): Decimal => value.value;

/** More of its limit is used by the first: load over limit, compared without dividing. */
const byShareUsed = (a: Check, b: Check): number =>
  figure(b.load)
    .times(figure(a.limit))
    .cmp(figure(a.load).times(figure(b.limit)));

/** What is over, once for each rating: the way of standing that uses most of it. */
function overOf({ checks, partChecks }: Assessment): readonly Check[] {
  const worst = new Map<string, Check>();
  for (const check of [...checks, ...partChecks].filter(({ verdict }) => verdict === 'over').sort(byShareUsed)) {
    const key = check.id.replace(/@.*$/, '');
    if (!worst.has(key)) worst.set(key, check);
  }
  return [...worst.values()];
}

const setBy = ({ governing }: { readonly governing: readonly { readonly name: string }[] }): readonly string[] =>
  governing.map(({ name }) => name);

function payloadOf({ payload }: Assessment): Pick<Brief, 'best' | 'anywhere'> {
  if (payload === undefined) return {};
  const { best, anywhere, share } = payload;
  const band = { from: share.low, to: share.high };
  return {
    ...(best && {
      best: {
        weight: best.weight,
        shares: best.shares ?? band,
        ...(best.places && { places: best.places }),
        setBy: setBy(best),
      },
    }),
    ...(anywhere &&
      share.low !== share.high && { anywhere: { weight: anywhere.weight, shares: band, setBy: setBy(anywhere) } }),
  };
}

const namesOf = (limits: readonly { readonly name: string }[]): readonly string[] => limits.map(({ name }) => name);

const placesOf = ({ placement }: Assessment): readonly BriefPlace[] =>
  placement.pieces.map(({ name, window, now }) => {
    const { lower, upper, empty } = window;
    const frontToBalance = minus(lower.at, lower.machineFront);
    return {
      name,
      none: empty,
      from: lower.machineFront,
      to: upper.machineFront,
      best: result(`best place of the front of ${name}`, over(plus(lower.machineFront, upper.machineFront), 2)),
      setBy: [namesOf(lower.setBy), namesOf(upper.setBy)],
      ...(now && {
        now: { front: result(`front of ${name} now`, minus(now.at, frontToBalance)), breaks: namesOf(now.breaks) },
      }),
    };
  });

const crossedFirst = (a: Finding, b: Finding): number =>
  Number(b.outcome === 'crossed') - Number(a.outcome === 'crossed');

/**
 * What does the first page contain?
 *
 * The verdict, what is over and by how much, what lifts, warnings, payload, where each piece is placed
 * best, what would put it right, limits crossed and duties that apply, and the open questions that would decide most.
 *
 * Only the middle of each window is computed here; every other figure is the assessment's own, with its working.
 *
 * @param assessment from `assess`
 * @param extras remedies and sureness, from the chapter `choose`, where they were asked for
 * @returns the page as data; `brief` prints it
 * @example briefOf(orThrow(assess(spec))).verdict // attention
 * @source each figure and rule carries its own
 */
export function briefOf(assessment: Assessment, { remedies = [], sureness }: BriefExtras = {}): Brief {
  const { spec, checks, partChecks, uplift, verdict, attention, notChecked, rules } = assessment;
  return {
    title: spec.name ?? spec.trailer.name ?? 'Trailer',
    verdict,
    asked: checks.length + partChecks.length,
    over: overOf(assessment),
    lifts: uplift.lifted,
    attention,
    ...payloadOf(assessment),
    places: placesOf(assessment),
    remedies,
    ...(sureness && { sureness }),
    rules: ruleFindings(rules).filter(hasEffect).sort(crossedFirst),
    open: openOnesFirst(notChecked),
  };
}
