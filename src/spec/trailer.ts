/** The trailer as JSON. Places are measured from the coupler rearward; every part may be left out and is then not checked. */
import type * as t from 'io-ts';
import { angleOf, lengthOf, pressureOf, rateOf, ratingOf, shareOf, weightOf } from './figure.js';
import { cutListCodec, deckCodec } from './frame.js';
import { closedRecord, count, listOf, oneOf, words } from './record.js';

const wheelsCodec = closedRecord(
  'wheels: rating of each and how many',
  { each: ratingOf('wheel rating'), count: count(1, 8) },
  {},
);

const tiresCodec = closedRecord(
  'tires of an axle',
  { designation: words, count: count(1, 8), fitment: oneOf('single', 'dual') },
  {
    molded: closedRecord(
      'molded maximum load',
      {},
      {
        single: ratingOf('molded single load'),
        dual: ratingOf('molded dual load'),
        pressure: pressureOf('molded pressure'),
      },
    ),
    pressure: pressureOf('cold pressure as run'),
  },
);

const axleCodec = closedRecord(
  'an axle',
  {},
  {
    at: lengthOf('axle position', 1),
    gawr: ratingOf('GAWR'),
    beam: ratingOf('beam rating'),
    springs: ratingOf('spring rating'),
    hubs: ratingOf('hub rating'),
    wheels: wheelsCodec,
    tires: tiresCodec,
    rate: rateOf('spring rate'),
    brakes: closedRecord(
      'the two brakes of an axle',
      { left: ratingOf('left brake rating'), right: ratingOf('right brake rating') },
      {},
    ),
  },
);

const itemCodec = closedRecord(
  'a part of the trailer',
  { name: words, weight: weightOf('weight'), at: lengthOf('position', -120) },
  { count: count(1, 500) },
);

/** A tongue weighed with a bathroom scale and a beam, the coupler resting on the beam. */
const leverCodec = closedRecord(
  'tongue by beam and scale',
  {
    reading: weightOf('scale reading', 'scale'),
    beamTare: weightOf('beam alone', 'scale'),
    pipeToTongue: lengthOf('pipe to tongue', 1),
    tongueToScale: lengthOf('tongue to scale'),
  },
  {},
);

const curbCodec = closedRecord(
  'the empty trailer: weighed, or built up from items, frame and deck',
  {},
  {
    weight: weightOf('trailer weight', 'stated', 1),
    tongue: weightOf('trailer tongue load'),
    tongueByLever: leverCodec,
    items: listOf('items', itemCodec),
    frame: cutListCodec,
    deck: deckCodec,
    grows: listOf('names of the lines that grow with the deck', words),
    tolerance: shareOf('tolerance of the built-up weight', '0'),
  },
);

const bandCodec = closedRecord(
  'a band of tongue shares',
  { low: shareOf('guideline low'), high: shareOf('guideline high'), source: words },
  {},
);

const rampsCodec = closedRecord(
  'ramps',
  { length: lengthOf('ramp length', 1), height: lengthOf('deck height at the ramps', 1) },
  {
    rating: ratingOf('rating of the ramp pair'),
    basis: oneOf('axle', 'machine'),
    setting: closedRecord(
      'where the ramps can be set',
      {
        width: lengthOf('ramp width', 1),
        margin: lengthOf('margin beside the tire'),
        closest: lengthOf('closest setting'),
        widest: lengthOf('widest setting'),
      },
      {},
    ),
    dovetail: closedRecord(
      'dovetail',
      { angle: angleOf('dovetail angle'), length: lengthOf('dovetail length', 1) },
      {},
    ),
  },
);

export const trailerCodec = closedRecord(
  'a trailer',
  { hitch: oneOf('ball', 'gooseneck'), axles: listOf('axles, from the front', axleCodec) },
  {
    name: words,
    gvwr: ratingOf('GVWR'),
    sharing: oneOf('equalised', 'independent'),
    curb: curbCodec,
    coupler: closedRecord(
      'coupler ratings',
      {},
      { gross: ratingOf('coupler gross rating'), tongue: ratingOf('coupler tongue rating') },
    ),
    chains: closedRecord('safety chains', { each: ratingOf('breaking strength of a chain'), count: count(1, 2) }, {}),
    jack: closedRecord(
      'jack',
      {
        rating: ratingOf('jack rating'),
        at: lengthOf('jack position'),
        margin: shareOf('margin on the jack load', '1', '5'),
      },
      {},
    ),
    deck: closedRecord('deck', { front: lengthOf('deck front end', -120), rear: lengthOf('deck rear end') }, {}),
    ramps: rampsCodec,
    width: lengthOf('overall width', 1),
    length: lengthOf('overall length', 1),
    guideline: bandCodec,
    rearLegs: ratingOf('rating of the rear legs, together'),
    track: lengthOf('track, middle to middle of the tires', 1),
    ballAboveLevel: lengthOf('ball above the height at which the trailer stands level', -60),
  },
);

export type TrailerSpec = t.TypeOf<typeof trailerCodec>;
export type AxleSpec = t.TypeOf<typeof axleCodec>;
export type TireSpec = t.TypeOf<typeof tiresCodec>;
export type CurbSpec = t.TypeOf<typeof curbCodec>;
