/** The first page as data: what a reader at the counter wants to know, in the order in which it decides. */
import { type Assessment, type NotChecked, type Pressing, ruleFindings } from '../assessment/index.js';
import type { Check, Note } from '../ratings/index.js';
import type { Finding } from '../rules/index.js';
import { type Derived, minus, over, plus, result } from '../trace/index.js';
import type { Decimal } from '../units/index.js';
import { openOnesFirst } from './open-questions.js';

/** The verdict of a whole answer. */
export type BriefVerdict = 'over' | 'attention' | 'within' | 'unchecked';

/** A payload and what sets it. */
export interface BriefPayload {
  /** Not above this. */
  readonly weight: Derived<'lb'>;
  /** The tongue shares at which it holds. */
  readonly shares: { readonly from: Derived<'ratio'>; readonly to: Derived<'ratio'> };
  /** The limits that set it. */
  readonly setBy: readonly string[];
}

/** Where a piece of cargo may stand, by the place of its front, which a tape finds. */
export interface BriefPlace {
  /** The piece. */
  readonly name: string;
  /** Whether no place meets every limit. */
  readonly none: boolean;
  /** The front of the piece at the front end of its window. */
  readonly from: Derived<'in'>;
  /** The front of the piece at the rear end of its window. */
  readonly to: Derived<'in'>;
  /** The middle of the window: the same distance from both ends. */
  readonly best: Derived<'in'>;
  /** The limits that set the front end, then those that set the rear end. */
  readonly setBy: readonly [front: readonly string[], rear: readonly string[]];
  /** Where its front is now, and the limits that this place breaks. */
  readonly now?: { readonly front: Derived<'in'>; readonly breaks: readonly string[] };
}

/** Something that would put the answer right, in words for people. */
export interface BriefRemedy {
  /** What to do, with its figures. */
  readonly says: string;
}

/** What other questions found out, to be told on the first page. */
export interface BriefExtras {
  /** What would put right what is wrong. */
  readonly remedies?: readonly BriefRemedy[];
  /** How sure the verdict is. */
  readonly sureness?: { readonly says: string };
}

/** The first page as data. */
export interface Brief {
  /** The name of the spec or of the trailer. */
  readonly title: string;
  /** The verdict of the whole answer. */
  readonly verdict: BriefVerdict;
  /** How many checks were made, of loads and of parts. */
  readonly asked: number;
  /** What is over, the worst first; of several ways of standing the worst one. */
  readonly over: readonly Check[];
  /** What leaves what it stands on. */
  readonly lifts: readonly Pressing[];
  /** What is not right and exceeds no rating. */
  readonly attention: readonly Note[];
  /** The most that it carries at a share of the tongue band; absent where the answer holds for the whole band alone. */
  readonly best?: BriefPayload;
  /** What it carries at every share of the tongue band. */
  readonly anywhere?: BriefPayload;
  /** Where each piece may stand. */
  readonly places: readonly BriefPlace[];
  /** What would put it right. */
  readonly remedies: readonly BriefRemedy[];
  /** How sure the verdict is. */
  readonly sureness?: { readonly says: string };
  /** The published rules that apply. */
  readonly rules: readonly Finding[];
  /** Every open question, those first that would decide most. */
  readonly open: readonly NotChecked[];
}

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

function verdictOf({ checks, partChecks, holds, attention }: Assessment): BriefVerdict {
  if (!holds) return 'over';
  if (attention.length > 0) return 'attention';
  return checks.length + partChecks.length === 0 ? 'unchecked' : 'within';
}

function payloadOf({ payload }: Assessment): Pick<Brief, 'anywhere'> {
  if (payload === undefined) return {};
  const { governed, most } = payload.payload;
  return {
    anywhere: {
      weight: most,
      shares: { from: payload.share.low, to: payload.share.high },
      setBy: governed.governing.map(({ name }) => name),
    },
  };
}

const namesOf = (limits: readonly { readonly name: string }[]): readonly string[] => limits.map(({ name }) => name);

function placesOf({ placement: { machine, window, now } }: Assessment): readonly BriefPlace[] {
  if (machine === undefined || window === undefined) return [];
  const { lower, upper, empty } = window;
  const frontToBalance = minus(lower.at, lower.machineFront);
  return [
    {
      name: machine,
      none: empty,
      from: lower.machineFront,
      to: upper.machineFront,
      best: result(`best place of the front of ${machine}`, over(plus(lower.machineFront, upper.machineFront), 2)),
      setBy: [namesOf(lower.setBy), namesOf(upper.setBy)],
      ...(now && {
        now: { front: result(`front of ${machine} now`, minus(now.at, frontToBalance)), breaks: namesOf(now.breaks) },
      }),
    },
  ];
}

/**
 * What belongs on the first page?
 *
 * The verdict, what is over and by how much, what lifts, what asks attention, what it carries, where each piece stands
 * best, what would put it right, the rules that apply, and the open questions that would decide most.
 *
 * Nothing is computed but the middle of each window: every figure is the assessment's own, with its working.
 *
 * @param assessment from `assess`
 * @param extras remedies and sureness, from the chapter `choose`, where they were asked for
 * @returns the page as data; `brief` prints it
 * @example briefOf(orThrow(assess(spec))).verdict // attention
 * @source each figure and rule carries its own
 */
export function briefOf(assessment: Assessment, { remedies = [], sureness }: BriefExtras = {}): Brief {
  const { spec, checks, partChecks, lifted, attention, notChecked, rules } = assessment;
  return {
    title: spec.name ?? spec.trailer.name ?? 'Trailer',
    verdict: verdictOf(assessment),
    asked: checks.length + partChecks.length,
    over: overOf(assessment),
    lifts: lifted,
    attention,
    ...payloadOf(assessment),
    places: placesOf(assessment),
    remedies,
    ...(sureness && { sureness }),
    rules: ruleFindings(rules).filter(({ outcome }) => outcome === 'applies'),
    open: openOnesFirst(notChecked),
  };
}
