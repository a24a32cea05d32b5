/** The whole stack in one call: do the ratings stack up, what may it carry, which part is the limit? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { TrailerError } from '../errors.js';
import { type Balance, guideline, type Guideline, guidelineFor, inPounds, tongueAdvice, type TongueAdvice } from '../load/index.js';
import { type Check, check, note, type Note, type Rating, rating, tightest, weight } from '../ratings/index.js';
import type { PressureForLoad } from '../tires/index.js';
import { constant, type Decision, type Derived, quotient } from '../trace/index.js';
import { ratio } from '../units/index.js';
import { type Carry, carry, shareBand, trailerLimits } from './carry.js';
import type { Spec, TrailerSpec } from './codec.js';
import { decodeSpec } from './decode.js';
import type { NotChecked } from './not-checked.js';
import { type Stack, stackOf } from './stack.js';
import { type AxleTires, pressureNeeded } from './tires.js';
import { weigh, type Weighed } from './weigh.js';

export interface Assessment {
  readonly spec: Spec;
  readonly stack: Stack;
  readonly weighed: Weighed;
  /** The load on each axle, in the order of the spec. */
  readonly axleLoads: readonly { readonly of: string; readonly load: Derived<'lb'> }[];
  /** The pressure each axle's tires need for their load, by the printed rows. */
  readonly pressures: readonly { readonly of: string; readonly needed: PressureForLoad }[];
  readonly advice?: TongueAdvice;
  /** Every load against the rating that limits it, as far as the spec lets us ask. */
  readonly checks: readonly Check[];
  /** Every part of an axle against the GAWR it must bear. */
  readonly partChecks: readonly Check[];
  /** The checks (of loads, not of parts) that use the greatest share of their limit. */
  readonly tightest: readonly Check[];
  /** True when no check is over and the tongue presses down; says nothing of what was not checked. */
  readonly holds: boolean;
  readonly carry?: Carry;
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
}

interface Labels {
  readonly gvwr?: Rating<'GVWR'>;
  readonly coupler: { readonly gross?: Rating<'coupler gross'>; readonly tongue?: Rating<'coupler tongue'> };
}

function labelsOf({ gvwr, coupler }: TrailerSpec): Labels {
  return {
    ...(gvwr && { gvwr: rating('GVWR', inPounds('GVWR', gvwr)) }),
    coupler: {
      ...(coupler?.gross && { gross: rating('coupler gross', inPounds('coupler gross rating', coupler.gross)) }),
      ...(coupler?.tongue && { tongue: rating('coupler tongue', inPounds('coupler tongue rating', coupler.tongue)) }),
    },
  };
}

function grossChecks({ gvwr, coupler }: Labels, gross: Derived<'lb'> | undefined, notChecked: NotChecked[]): readonly Check[] {
  if (gross === undefined) return [];
  const load = weight('gross', gross);
  if (gvwr === undefined) notChecked.push({ what: 'GVWR against gross', missing: 'GVWR from the label' });
  if (coupler.gross === undefined) notChecked.push({ what: 'coupler against gross', missing: 'coupler gross rating' });
  return [...(gvwr ? [check(gvwr, load)] : []), ...(coupler.gross ? [check(coupler.gross, load)] : [])];
}

function balanceChecks({ coupler }: Labels, stack: Stack, balanced: Balance | undefined, loads: Assessment['axleLoads'], notChecked: NotChecked[]): readonly Check[] {
  if (balanced === undefined) return [];
  const axles = stack.systems.flatMap((system, index) => {
    const load = loads[index]?.load;
    if (load === undefined) return [];
    const limit = system.gawr ?? rating('axle parts', system.rating, { of: system.of });
    return [limit.rating === 'GAWR' ? check(limit, weight('axle load', load)) : check(limit, weight('axle load', load))];
  });
  const tires = stack.tires.flatMap((each, index) => {
    const load = loads[index]?.load;
    const limit = each?.asRun ?? each?.rating?.rating;
    if (each === undefined || load === undefined || limit === undefined) return [];
    return [check(rating('tire', limit, { of: each.of }), weight('tire load', perTire(each, load)))];
  });
  if (coupler.tongue === undefined) notChecked.push({ what: 'coupler against tongue', missing: 'coupler tongue rating' });
  return [...axles, ...tires, ...(coupler.tongue ? [check(coupler.tongue, weight('tongue', balanced.tongue))] : [])];
}

/** The load on one tire: the axle's, shared alike. */
const perTire = ({ of, spec: { count } }: AxleTires, load: Derived<'lb'>): Derived<'lb'> => quotient(`${of} tire load`, load, constant(ratio(count)));

/** The cold pressures the loads need, where printed rows say so. */
function pressuresFor({ tires }: Stack, loads: Assessment['axleLoads']): Assessment['pressures'] {
  return tires.flatMap((each, index) => {
    const load = loads[index]?.load;
    const needed = each === undefined || load === undefined ? undefined : pressureNeeded(each, perTire(each, load));
    return each === undefined || needed === undefined ? [] : [{ of: each.of, needed }];
  });
}

/**
 * Do tires, axles, coupler and label stack up, what may this build honestly carry, and which part is the limit?
 *
 * Three separate questions, never one: gross against GVWR; each axle against its GAWR; tongue load against coupler and
 * tow vehicle. The payload is the least of what every known limit allows.
 *
 * A static reckoning: no road loads, no fatigue, no safe speed, and never "legal". Labels and makers govern.
 *
 * @param input a spec as JSON: see the guide for its keys; quantities as people write them, `"9,200 lb"`
 * @returns Left with path, got and needed for what cannot be read or answered; an overload is an answer
 * @example isLeft(assess({ trailer: { hitch: 'ball', axles: [] } })) // true
 * @source each check and figure carries its own
 */
export function assess(input: unknown): Either<TrailerError, Assessment> {
  const decoded = decodeSpec(input);
  return isLeft(decoded) ? decoded : assessSpec(decoded.right);
}

/** The same for a spec that has been read already. */
export function assessSpec(spec: Spec): Either<TrailerError, Assessment> {
  const stack = stackOf(spec.trailer);
  if (isLeft(stack)) return stack;
  const weighed = weigh(spec, stack.right.group);
  if (isLeft(weighed)) return weighed;
  const band = guidelineOf(spec.trailer);
  if (isLeft(band)) return band;
  const labels = labelsOf(spec.trailer);
  const { balance: balanced, gross, curb } = weighed.right;
  const notChecked = [...stack.right.notChecked, ...weighed.right.notChecked];
  const loads = balanced === undefined ? [] : (stack.right.group?.loads(balanced.axleLoad) ?? []);
  const axleLoads = loads.map((load, index) => ({ of: `axle ${index + 1}`, load }));
  const checks = [
    ...grossChecks(labels, gross, notChecked),
    ...balanceChecks(labels, stack.right, balanced, axleLoads, notChecked),
  ];
  const partChecks = stack.right.systems.flatMap((system) => system.checks);
  const share = shareBand(spec, band.right);
  const limits = trailerLimits(labels.gvwr, stack.right.group, labels.coupler);
  const carried = curb === undefined || limits.length === 0 ? undefined : carry(curb, share, limits, labels.gvwr);
  if (carried !== undefined && isLeft(carried)) return carried;
  const lifted = balanced !== undefined && balanced.tongue.value.value.isNegative();
  return right({
    spec, stack: stack.right, weighed: weighed.right, axleLoads, pressures: pressuresFor(stack.right, axleLoads), checks, partChecks, notChecked,
    tightest: tightest(checks),
    holds: !lifted && [...checks, ...partChecks].every(({ verdict }) => verdict === 'within'),
    notes: [...stack.right.notes, ...weighed.right.notes, ...(lifted ? [note('NegativeTongue', 'The trailer lifts the ball: move the load forward.', [balanced.tongue])] : [])],
    decisions: [...stack.right.decisions, ...(balanced?.decisions ?? []), ...band.right.decisions, ...(carried?.right.payload.decisions ?? [])],
    ...(balanced && { advice: tongueAdvice(balanced, band.right) }),
    ...(carried && { carry: carried.right }),
  });
}

function guidelineOf({ guideline: own, hitch }: TrailerSpec): Either<TrailerError, Guideline> {
  if (own === undefined) return right(guidelineFor(hitch));
  return guideline(own.low as Derived<'ratio'>, own.high as Derived<'ratio'>, { id: 'spec', title: own.source, grade: 'memory' });
}
