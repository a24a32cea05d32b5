/** Getting on: ramps, edges, and the lift of the tail while the machine climbs. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { rampAngle } from '../../load/index.js';
import type { DecodedCargo, DecodedSpec, DecodedTrailer } from '../../spec/index.js';
import type { Derived } from '../../trace/index.js';
import { own } from '../../units/internal.js';
import { answered } from './answered.js';
import type { Piece } from './cargo-pieces.js';
import type { Climbers } from './climbers.js';
import { edgesPart } from './loading-edges.js';
import type { LoadingPart } from './loading-part.js';
import { rampRatingPart, settingPart, slopePart } from './loading-ramps.js';
import { tailPart } from './loading-tail.js';
import { emptyPart, open, together } from './part-of-answer.js';
import type { Weighed } from './weights.js';

const path = 'trailer.ramps';
const alone = (part: LoadingPart): LoadingPart => part;

/** How steep the ramps are and whether a machine hangs up on them; ramps that do not reach the ground leave both open. */
function climbed(
  ramps: NonNullable<DecodedTrailer['ramps']>,
  cargo: readonly DecodedCargo[],
  heaviest: Piece | undefined,
): LoadingPart {
  const angle = rampAngle(ramps.height, ramps.length);
  if (isLeft(angle)) return answered(angle, { id: 'ramps', what: 'ramps', path: `${path}.length` }, alone);
  const [slope, edges] = [slopePart(angle.right, heaviest), edgesPart(ramps, angle.right, cargo)];
  return { ...slope, ...edges, ...together([slope, edges]) };
}

/** Asks ramps, edges, tail lift and the setting of the ramps, each by itself. */
export function loadingPart(
  spec: DecodedSpec,
  weighed: Weighed,
  axlesAt: Derived<'in'> | undefined,
  climbers: Climbers,
): LoadingPart {
  const { trailer, cargo = [] } = spec;
  const { ramps } = trailer;
  const untold =
    cargo.length === 0 ? emptyPart : open({ id: 'ramps', what: 'ramps', missing: 'length and height', paths: [path] });
  const heaviest = ramps && climbers.heaviest;
  const climb: LoadingPart = ramps === undefined ? untold : climbed(ramps, cargo, heaviest);
  const asked = { id: 'ramps/rating', what: 'ramps against the machine', path };
  const rated = answered(rampRatingPart(spec, weighed, climbers), asked, alone);
  const lift = { id: 'loading/uplift', what: 'lifting the tongue while a machine climbs', path: 'trailer.deck' };
  const lifted = answered(tailPart(spec, weighed, axlesAt, climbers), lift, alone);
  const set = answered(
    settingPart(spec),
    { id: 'ramps/setting', what: 'where to set the ramps', path: `${path}.setting` },
    alone,
  );
  const { checks, notes, attention, notChecked, decisions } = together([rated, climb, lifted, set]);
  // What is not known stands there as not known: nothing is read from a prototype.
  return {
    ramps: own(climb, 'ramps'),
    edges: own(climb, 'edges'),
    tailLift: own(lifted, 'tailLift'),
    onLegs: own(lifted, 'onLegs'),
    setting: own(set, 'setting'),
    checks,
    notes,
    attention,
    notChecked,
    decisions: heaviest === undefined ? decisions : [...heaviest.decisions, ...decisions],
  };
}
