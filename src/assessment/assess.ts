/** The whole stack in one call: do the ratings stack up, what may it carry, which part is the limit? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type TongueAdvice, tongueAdvice } from '../load/index.js';
import { type Check, type Note, note, rating, tightest } from '../ratings/index.js';
import { contradictionsIn, type DecodedSpec, decodeSpec, type SpecInput } from '../spec/index.js';
import { type Decision, inPounds } from '../trace/index.js';
import type { AssessError } from './errors.js';
import { attentionTo } from './parts/attention.js';
import {
  type AxleLoad,
  axleLoadsOf,
  checksOf,
  heavierSideChecks,
  heaviestOnTires,
  standingsOf,
} from './parts/axle-and-tire-loads.js';
import { belowLabel } from './parts/below-the-label.js';
import { type BrakesPart, brakesPart } from './parts/brakes.js';
import { type Longer, longer } from './parts/built-up-weight.js';
import { cargoOnDeck } from './parts/cargo-on-deck.js';
import { couplingPart, practicePart } from './parts/european-coupling.js';
import { grossChecks, type NeededPressure, pressuresFor } from './parts/gross-and-pressures.js';
import { guidelineOf } from './parts/guideline.js';
import { type GearPart, gearPart } from './parts/jack-ramps-tiedowns.js';
import { ladenLimits, type Rig } from './parts/laden-limits.js';
import { type ClimbPart, climbPart } from './parts/loading-up-the-ramps.js';
import { type PlacePart, placePart } from './parts/machine-placement.js';
import { offLevelHitchPart } from './parts/off-level-hitch.js';
import { type OpenQuestion, openQuestions } from './parts/open-questions.js';
import { joined, together } from './parts/part-of-answer.js';
import { type Carry, payloadPart, shareBand } from './parts/payload.js';
import { doubtsIn } from './parts/plausible.js';
import { type LinesPart, linesPart } from './parts/published-rules.js';
import { type Stack, stackOf } from './parts/running-gear.js';
import { type ScalePart, scalePart } from './parts/scale.js';
import { type AttitudePart, attitudePart } from './parts/sides-level-yaw.js';
import { type TowPart, towPart } from './parts/tow-side.js';
import { type Pressing, pressed } from './parts/uplift.js';
import { type AssessmentVerdict, verdictOf } from './parts/verdict.js';
import { type Weighed, weigh } from './parts/weights.js';

export interface Assessment {
  readonly spec: DecodedSpec;
  readonly runningGear: Stack;
  readonly weights: Weighed;
  /** The load on each axle, in the order of the spec. */
  readonly axleLoads: readonly AxleLoad[];
  /** The cold pressure each axle's tires need for the heaviest load that one of them sees, by the printed rows. The placard's pressure governs. */
  readonly pressures: readonly NeededPressure[];
  readonly advice?: TongueAdvice;
  /** Every load against the rating that limits it, as far as the spec lets us ask. */
  readonly checks: readonly Check[];
  /** Every part of an axle against the GAWR it must bear. */
  readonly partChecks: readonly Check[];
  /** The checks (of loads, not of parts) that use the greatest share of their limit. */
  readonly tightest: readonly Check[];
  /** The tongue, the tow vehicle's axles, the sides, in every way of standing: loads that must not be below zero. */
  readonly mustPress: readonly Pressing[];
  /** Those of them that are: the ball, an axle or a side leaves what it stands on. */
  readonly lifted: readonly Pressing[];
  /** The gravest of what was found: a rating exceeded or something lifted, attention asked, all within, or nothing to check. */
  readonly verdict: AssessmentVerdict;
  /** What is not right and is no check of a rating: tongue outside its band, the machine's place, tiedowns, edges, ramps, the pull on the ball while loading, parts below the label, no brakes told, axle groups, figures that are hard to believe. */
  readonly attention: readonly Note[];
  readonly payload?: Carry;
  /** What more deck costs; present when the spec says which of its lines grow with the deck. */
  readonly deckGrowth?: Longer;
  readonly brakes: BrakesPart;
  readonly tow: TowPart;
  readonly placement: PlacePart;
  readonly gear: GearPart;
  readonly climb: ClimbPart;
  readonly stance: AttitudePart;
  readonly scale: ScalePart;
  readonly rules: LinesPart;
  readonly notes: readonly Note[];
  readonly notChecked: readonly OpenQuestion[];
  /** Where the program went one way because of a figure; for studies. Findings on rules keep their own. */
  readonly decisions: readonly Decision[];
}

/**
 * Do tires, axles, coupler and label stack up, what may this build honestly carry, and which part is the limit?
 *
 * Three separate questions, never one: gross against GVWR; each axle against its GAWR; tongue load against coupler and
 * tow vehicle. The payload is the least of what every known limit allows.
 *
 * A static reckoning: no road loads, no fatigue, no safe speed, and never "legal". Labels and makers govern.
 *
 * @param spec what is known of the trailer, its cargo and what tows it: an editor offers the keys, each with where it is read;
 * figures as people write them, `'9,200 lb'`, or as quantities, `lb(9200)`
 * @returns checks, payload and its governing limit, tongue and axle loads in lb, open questions; Left `UndecodableSpec` with every
 * fault at its key, or what cannot be answered (`TongueAboveWeight`, `NothingWeighed`, `OutsideItsRange`, ...); an overload is an answer
 * @example isLeft(assess({ trailer: { hitch: 'ball', axles: [] } })) // true
 * @source each check and figure carries its own
 */
export const assess = (spec: SpecInput): Either<AssessError, Assessment> => assessJson(spec);

/**
 * The same for what comes over a wire: a parsed JSON value of which nothing is known.
 *
 * @param input what `JSON.parse` or `readJson` made of a text
 * @returns as `assess`
 * @example isLeft(assessJson({ trailer: 'a big one' })) // true
 * @source each check and figure carries its own
 */
export function assessJson(input: unknown): Either<AssessError, Assessment> {
  const decoded = decodeSpec(input);
  return isLeft(decoded) ? decoded : assessSpec(decoded.right);
}

/**
 * Do tires, axles, coupler and label stack up, for a spec that has been read already?
 *
 * The same arithmetic as `assess`, without the reading.
 *
 * Not for JSON as it comes: that goes through `decodeSpec` or `assess`.
 *
 * @param spec from `decodeSpec`
 * @returns as `assess`; `UndecodableSpec` only for two statements that contradict each other
 * @example orThrow(assessSpec(orThrow(decodeSpec(spec)))).verdict // attention
 * @source each check and figure carries its own
 */
export function assessSpec(spec: DecodedSpec): Either<AssessError, Assessment> {
  const { trailer } = spec;
  const contradictions = contradictionsIn(spec);
  if (contradictions.error !== undefined) return left(contradictions.error);
  const stacked = stackOf(trailer);
  if (isLeft(stacked)) return stacked;
  const stack = stacked.right;
  const found = weigh(spec, stack.at);
  if (isLeft(found)) return found;
  const weighed = found.right;
  const band = guidelineOf(trailer);
  if (isLeft(band)) return left({ ...band.left, path: 'trailer.guideline' });
  const share = shareBand(spec, band.right);
  const { balance, gross, curb } = weighed;
  const tow = towPart(spec, gross, balance?.tongue, stack.group, share);
  if (isLeft(tow)) return tow;
  const gear = gearPart(spec, balance?.tongue, stack.at);
  if (isLeft(gear)) return gear;
  const coupling = couplingPart(spec, stack.group);
  if (isLeft(coupling)) return coupling;
  const brakes = brakesPart(trailer);
  if (isLeft(brakes)) return brakes;
  const climb = climbPart(spec, weighed, stack.at);
  if (isLeft(climb)) return climb;
  const scale = scalePart(spec, weighed, stack.at);
  if (isLeft(scale)) return scale;
  const axleLoads = axleLoadsOf(stack, weighed);
  const attitude = attitudePart(spec, weighed);
  if (isLeft(attitude)) return attitude;
  const offLevel = offLevelHitchPart(spec, weighed, attitude.right, tow.right);
  if (isLeft(offLevel)) return offLevel;
  const hitch: TowPart =
    offLevel.right.hitch === undefined ? tow.right : { ...tow.right, offLevel: offLevel.right.hitch };
  const gvwr = trailer.gvwr && rating('GVWR', inPounds('GVWR', trailer.gvwr));
  const rig: Rig = { spec, gvwr, stack, tow: hitch, stance: attitude.right };
  const limits = ladenLimits(rig);
  const carried = payloadPart(rig, limits, weighed, share);
  if (isLeft(carried)) return carried;
  const place = placePart(rig, limits, weighed, band.right);
  if (isLeft(place)) return place;
  const lines = linesPart({ spec, weighed, group: stack.group, axleLoads, tow: tow.right });
  if (isLeft(lines)) return lines;
  const more = longer(trailer, curb);
  if (isLeft(more)) return left({ ...more.left, path: more.left.path ?? 'trailer.curb.grows' });
  const standings = standingsOf(stack, weighed, axleLoads, attitude.right, hitch);
  const [level, ...others] = standings;
  const inflation = pressuresFor(stack, heaviestOnTires(stack, standings));
  const whole = grossChecks(gvwr, weighed);
  const parts = together([
    brakes.right,
    coupling.right,
    practicePart(trailer),
    tow.right,
    place.right,
    gear.right,
    climb.right,
    attitude.right,
    scale.right,
    offLevel.right,
  ]);
  const checks = joined([
    whole.checks,
    checksOf(stack, level),
    parts.checks,
    heavierSideChecks(stack, level),
    ...others.flatMap((other) => [checksOf(stack, other), heavierSideChecks(stack, other)]),
  ]);
  const partChecks = joined([
    ...stack.systems.map((system) => system.checks),
    brakes.right.againstLabel,
    coupling.right.againstLabel,
  ]);
  const { mustPress, lifted, decisions: presses } = pressed(weighed, hitch, attitude.right);
  const lift =
    balance !== undefined && lifted.some(({ load }) => load === balance.tongue)
      ? [note('NegativeTongue', 'The trailer lifts the ball: move the load forward.', [balance.tongue])]
      : [];
  const advice = balance && tongueAdvice(balance, band.right);
  const doubts = doubtsIn(spec);
  const label = belowLabel(spec, stack, share);
  const onDeck = cargoOnDeck(spec, weighed);
  const attention = attentionTo({
    advice,
    place: place.right,
    gear: gear.right,
    climb: climb.right,
    lines: lines.right,
    label,
    onDeck,
    doubts,
  });
  const answer: { -readonly [K in keyof Assessment]: Assessment[K] } = {
    spec,
    runningGear: stack,
    weights: weighed,
    axleLoads,
    pressures: inflation.pressures,
    checks,
    partChecks,
    tightest: tightest(checks),
    mustPress,
    lifted,
    verdict: verdictOf({ checks, partChecks, lifted, attention }),
    attention,
    brakes: brakes.right,
    tow: hitch,
    placement: place.right,
    gear: gear.right,
    climb: climb.right,
    stance: attitude.right,
    scale: scale.right,
    rules: lines.right,
    notes: joined([stack.notes, weighed.notes, lift, parts.notes, label.notes, lines.right.notes]),
    notChecked: openQuestions(
      joined([
        stack.notChecked,
        weighed.notChecked,
        whole.notChecked,
        inflation.notChecked,
        parts.notChecked,
        onDeck.notChecked,
        lines.right.notChecked,
      ]),
      spec,
    ),
    decisions: joined([
      contradictions.decisions,
      stack.decisions,
      weighed.decisions,
      presses,
      more.right?.decisions ?? [],
      band.right.decisions,
      carried.right?.decisions ?? [],
      parts.decisions,
      label.decisions,
      onDeck.decisions,
      doubts.decisions,
    ]),
  };
  if (advice !== undefined) answer.advice = advice;
  if (carried.right !== undefined) answer.payload = carried.right;
  if (more.right !== undefined) answer.deckGrowth = more.right;
  return right(answer);
}
