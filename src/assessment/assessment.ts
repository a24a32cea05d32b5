/** The answer to one spec. */
import type { Check, Note } from '../ratings/index.js';
import type { DecodedSpec } from '../spec/index.js';
import type { Decision } from '../trace/index.js';
import type { AxleLoad } from './parts/axle-and-tire-loads.js';
import type { BrakesPart } from './parts/brakes.js';
import type { Longer } from './parts/built-up-weight.js';
import type { NeededPressure } from './parts/gross-and-pressures.js';
import type { JackPart } from './parts/jack.js';
import type { LoadingPart } from './parts/loading-part.js';
import type { OpenQuestion } from './parts/open-questions.js';
import type { Carry } from './parts/payload.js';
import type { PlacePart } from './parts/placement-part.js';
import type { LinesPart } from './parts/published-rules.js';
import type { Stack } from './parts/running-gear.js';
import type { ScalePart } from './parts/scale.js';
import type { StancePart } from './parts/stance-part.js';
import type { TiedownsPart } from './parts/tiedowns.js';
import type { TonguePart } from './parts/tongue.js';
import type { TowPart } from './parts/tow-part.js';
import type { Uplift } from './parts/uplift.js';
import type { AssessmentVerdict } from './parts/verdict.js';
import type { Weighed } from './parts/weights.js';

export interface Assessment {
  /** The spec as it was read: each figure a leaf of the working that knows its key. */
  readonly spec: DecodedSpec;
  /** Each axle rated by its weakest part, its tires, and the axles as a group. */
  readonly runningGear: Stack;
  /** Empty weight, gross weight and how they balance, in lb and in. */
  readonly weights: Weighed;
  /** The load on each axle, in the order of the spec. */
  readonly axleLoads: readonly AxleLoad[];
  /** The cold pressure each axle's tires need for the heaviest load on one of them, by the printed rows. The placard's pressure governs. */
  readonly pressures: readonly NeededPressure[];
  /** The tongue load, its share, its checks, its guideline and whether it lifts, in one place; present when the balance is known. */
  readonly tongue?: TonguePart | undefined;
  /** Every load against the rating that limits it, as far as the spec lets us ask. */
  readonly checks: readonly Check[];
  /** Every part of an axle against the GAWR it must bear. */
  readonly partChecks: readonly Check[];
  /** The checks (of loads, not of parts) that use the greatest share of their limit. */
  readonly tightest: readonly Check[];
  /** Loads that must press down, and those of them that do not. */
  readonly uplift: Uplift;
  /** The gravest finding: `over` (a rating exceeded, or something lifts), `attention`, `within`, or `unchecked`. */
  readonly verdict: AssessmentVerdict;
  /** Warnings that are not rating checks: tongue outside its band, the machine's place, tiedowns, edges, ramps, the pull on the ball while loading, parts below the label, unknown brakes, axle groups, implausible figures. */
  readonly attention: readonly Note[];
  /** What it may carry, in lb: the most at some share of the tongue band, and at every share; absent where no limit or no weight is known. */
  readonly payload?: Carry | undefined;
  /** What more deck costs; present when the spec says which of its lines grow with the deck. */
  readonly deckGrowth?: Longer | undefined;
  /** The brakes against the GAWRs they must bear. */
  readonly brakes: BrakesPart;
  /** Coupler, chains, hitch and tow vehicle, the bars, the largest trailer. */
  readonly tow: TowPart;
  /** Where each piece of cargo may be placed. */
  readonly placement: PlacePart;
  /** Ramps, edges, and the lift of the tail while the machine comes on. */
  readonly loading: LoadingPart;
  /** The load at the foot of the jack, against its rating. */
  readonly jack: JackPart;
  /** The tiedowns of each piece: strong enough, and enough of them. */
  readonly tiedowns: TiedownsPart;
  /** Side-to-side share, loads off level, and yaw inertia of the laden trailer. */
  readonly stance: StancePart;
  /** Scale tickets compared with the calculated weights. */
  readonly scale: ScalePart;
  /** Facts, axle groups and step tables that the published rules are asked with; `ruleFindings` asks them. */
  readonly rules: LinesPart;
  /** Remarks: what was assumed, and where sources disagree. Never a verdict. */
  readonly notes: readonly Note[];
  /** Every question the spec leaves open, with its id and the keys that would answer it. */
  readonly notChecked: readonly OpenQuestion[];
  /** Where the program went one way because of a figure; for studies. Findings on rules keep their own. */
  readonly decisions: readonly Decision[];
}
