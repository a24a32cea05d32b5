/** The trailer. Places are measured from the coupler rearward; every part may be left out and is then not checked. */
import { axleCodec } from './axle.js';
import { angleOf, forceOf, lengthOf, ratingOf, shareOf } from './codec/figures.js';
import type { Coded } from './codec/kind.js';
import { choice, count, list, shortText, yesOrNo } from './codec/plain.js';
import { record } from './codec/record.js';
import { curbCodec } from './curb.js';
import type { DecodedTrailer, TrailerInput } from './types/trailer.js';

const coupler = record(
  'Coupler',
  'coupler ratings',
  {},
  {
    gross: ratingOf('coupler gross rating'),
    tongue: ratingOf('coupler tongue rating'),
    d: forceOf('D on the plate'),
    dc: forceOf('Dc on the plate'),
    v: forceOf('V on the plate'),
  },
);

const chains = record(
  'Chains',
  'safety chains',
  { each: ratingOf('breaking strength of a chain'), count: count(1, 2) },
  {},
);

const jack = record(
  'Jack',
  'jack',
  {
    rating: ratingOf('jack rating'),
    at: lengthOf('jack position'),
    margin: shareOf('margin on the jack load', '1', '5'),
  },
  {},
);

const anchors = record(
  'Anchors',
  'anchor points for tiedowns',
  { each: ratingOf('working load limit of an anchor point'), count: count(1, 100) },
  {},
);

const deck = record(
  'DeckPlan',
  'deck',
  { front: lengthOf('deck front end', -120), rear: lengthOf('deck rear end') },
  {
    width: lengthOf('deck width', 1),
    betweenFenders: lengthOf('width between the fenders', 1),
    overFenders: yesOrNo,
  },
);

const setting = record(
  'RampSetting',
  'where the ramps can be set',
  {
    width: lengthOf('ramp width', 1),
    margin: lengthOf('margin beside the tire'),
    closest: lengthOf('closest setting'),
    widest: lengthOf('widest setting'),
  },
  {},
);

const ramps = record(
  'Ramps',
  'ramps',
  { length: lengthOf('ramp length', 1), height: lengthOf('deck height at the ramps', 1) },
  {
    rating: ratingOf('rating of the ramp pair'),
    basis: choice('axle', 'machine'),
    setting,
    dovetail: record(
      'Dovetail',
      'dovetail',
      { angle: angleOf('dovetail angle'), length: lengthOf('dovetail length', 1) },
      {},
    ),
  },
);

const guideline = record(
  'TongueBand',
  'a band of tongue shares',
  { low: shareOf('guideline low'), high: shareOf('guideline high'), source: shortText },
  {},
);

/** The most axles a trailer may have. */
export const mostAxles = 12;

/** The trailer. */
export const trailerCodec: Coded<DecodedTrailer, TrailerInput> = record(
  'Trailer',
  'a trailer',
  { hitch: choice('ball', 'gooseneck'), axles: list('axles', axleCodec, mostAxles, 1) },
  {
    name: shortText,
    gvwr: ratingOf('GVWR'),
    sharing: choice('equalised', 'independent'),
    axleGroup: record('AxleGroupPlace', 'all axles together', {}, { at: lengthOf('middle of the axles', 1) }),
    curb: curbCodec,
    coupler,
    chains,
    jack,
    anchors,
    deck,
    ramps,
    width: lengthOf('overall width', 1),
    length: lengthOf('overall length', 1),
    practice: choice('US and Canada', 'Europe', 'Australia'),
    guideline,
    rearLegs: ratingOf('rating of the rear legs, together'),
    track: lengthOf('track, middle to middle of the tires', 1),
    ballAboveLevel: lengthOf('ball above the height at which the trailer stands level', -60),
  },
);
