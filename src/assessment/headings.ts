/** Computes the headings of an answer, each in its own file: first the independent ones, then those that need the limits of the others. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { checkId, rating } from '../ratings/index.js';
import { inPounds } from '../trace/index.js';
import type { AssessError } from './errors.js';
import type { Known } from './known.js';
import { answered } from './parts/answered.js';
import { type AxleLoad, axleLoadsOf } from './parts/axle-and-tire-loads.js';
import { type BrakesPart, brakesPart } from './parts/brakes.js';
import { type Longer, longer } from './parts/built-up-weight.js';
import { type CouplingPart, couplingPart } from './parts/european-coupling.js';
import { type JackPart, jackPart } from './parts/jack.js';
import { ladenLimits } from './parts/laden-limits.js';
import { loadingPart } from './parts/loading.js';
import type { LoadingPart } from './parts/loading-part.js';
import { placePart } from './parts/machine-placement.js';
import { type OffLevelHitchPart, offLevelHitchPart } from './parts/off-level-hitch.js';
import type { Part } from './parts/part-of-answer.js';
import { type Carry, payloadPart } from './parts/payload.js';
import type { PlacePart } from './parts/placement-part.js';
import { type LinesPart, linesPart } from './parts/published-rules.js';
import type { Rig } from './parts/rig.js';
import { type ScalePart, scalePart } from './parts/scale.js';
import { stancePart } from './parts/stance.js';
import type { StancePart } from './parts/stance-part.js';
import { type TiedownsPart, tiedownsPart } from './parts/tiedowns.js';
import type { TowPart } from './parts/tow-part.js';
import { nothingTowed, towPart } from './parts/tow-side.js';

export interface Headings {
  readonly coupling: CouplingPart;
  readonly brakes: BrakesPart;
  /** The tow side level; `hitch` is the same with what is known of it off level. */
  readonly tow: TowPart;
  readonly hitch: TowPart;
  readonly offLevel: Part;
  readonly jack: JackPart;
  readonly loading: LoadingPart;
  readonly tiedowns: TiedownsPart;
  readonly scale: ScalePart;
  readonly stance: StancePart;
}

/** None of them refuses the rest: where its figures cannot be so, it stays open and says so. */
export function headingsOf({ spec, stack, weighed, share, climbers }: Known): Headings {
  const { balance, gross } = weighed;
  const tow = answered(
    towPart(spec, gross, balance?.tongue, stack.group, share),
    { id: 'tow', what: 'coupler, chains and tow vehicle', path: 'tow' },
    (part): TowPart => ({ ...nothingTowed, ...part }),
  );
  const stance = answered(
    stancePart(spec, weighed),
    { id: 'side-to-side', what: 'how the trailer stands', path: 'trailer' },
    (part): StancePart => part,
  );
  const offLevel = answered(
    offLevelHitchPart(spec, weighed, stance, tow),
    { id: 'off-level', what: 'the hitch off level', path: 'trailer.ballAboveLevel' },
    (part): OffLevelHitchPart => ({ ...part, hitch: undefined }),
  );
  const { hitch } = offLevel;
  return {
    coupling: answered(
      couplingPart(spec, stack.group),
      { id: checkId('coupling D'), what: 'the coupling by its plate', path: 'trailer.coupler' },
      (part) => ({ ...part, againstLabel: [] }),
    ),
    brakes: answered(
      brakesPart(spec.trailer, tow.combination),
      { id: checkId('brake capacity'), what: 'brakes against the GAWRs', path: 'trailer.axles' },
      (part) => ({ ...part, againstLabel: [] }),
    ),
    tow,
    hitch: hitch === undefined ? tow : { ...tow, offLevel: hitch },
    offLevel,
    jack: answered(
      jackPart(spec, balance?.tongue, stack.at),
      { id: 'jack', what: 'jack against tongue', path: 'trailer.jack' },
      (part): JackPart => part,
    ),
    loading: loadingPart(spec, weighed, stack.at, climbers),
    tiedowns: tiedownsPart(spec, weighed),
    scale: answered(
      scalePart(spec, weighed, stack.at),
      { id: 'tickets', what: 'scale tickets', path: 'tickets' },
      (part) => ({ ...part, reading: undefined, gaps: [] }),
    ),
    stance,
  };
}

export interface LimitHeadings {
  readonly gvwr: Rig['gvwr'];
  readonly axleLoads: readonly AxleLoad[];
  readonly payload: Carry | undefined;
  readonly placement: PlacePart;
  readonly rules: LinesPart;
  readonly deckGrowth: Longer | undefined;
}

export function limitHeadingsOf(known: Known, { tow, hitch, stance }: Headings): Either<AssessError, LimitHeadings> {
  const { spec, stack, weighed, share, band, climbers } = known;
  const { trailer } = spec;
  const axleLoads = axleLoadsOf(stack, weighed);
  const gvwr = trailer.gvwr && rating('GVWR', inPounds('GVWR', trailer.gvwr));
  const rig: Rig = { spec, gvwr, stack, tow: hitch, stance, climbers };
  const limits = ladenLimits(rig);
  const payload = payloadPart(rig, limits, weighed, share);
  if (isLeft(payload)) return payload;
  const rules = linesPart({ spec, weighed, group: stack.group, axleLoads, tow });
  if (isLeft(rules)) return rules;
  const growth = longer(trailer, weighed.curb);
  if (isLeft(growth)) return left({ ...growth.left, path: growth.left.path ?? 'trailer.curb.grows' });
  return right({
    gvwr,
    axleLoads,
    payload: payload.right,
    placement: placePart(rig, limits, weighed, band),
    rules: rules.right,
    deckGrowth: growth.right,
  });
}
