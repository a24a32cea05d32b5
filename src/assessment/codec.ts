/**
 * The spec of one trailer, its cargo and what tows it, as JSON.
 *
 * Places are measured from the coupler rearward. Every part may be left out; what is left out is reported as not checked.
 */
import type * as t from 'io-ts';
import { lengthOf, pressureOf, rateOf, ratingOf, shareOf, weightOf } from './figure-codec.js';
import { closedRecord, count, listOf, oneOf, words } from './record-codec.js';

const partSet = closedRecord('wheels: rating of each and how many', { each: ratingOf('wheel rating'), count: count(1, 8) }, {});

const tiresCodec = closedRecord('tires of an axle', {
  designation: words, count: count(1, 8), fitment: oneOf('single', 'dual'),
}, {
  molded: closedRecord('molded maximum load', {}, { single: ratingOf('molded single load'), dual: ratingOf('molded dual load'), pressure: pressureOf('molded pressure') }),
  pressure: pressureOf('cold pressure as run'),
});

const axleCodec = closedRecord('an axle', {}, {
  at: lengthOf('axle position', 1),
  gawr: ratingOf('GAWR'), beam: ratingOf('beam rating'), springs: ratingOf('spring rating'), hubs: ratingOf('hub rating'),
  wheels: partSet, tires: tiresCodec, rate: rateOf('spring rate'),
});

const itemCodec = closedRecord('a part of the trailer', { name: words, weight: weightOf('weight'), at: lengthOf('position', -120) }, { count: count(1, 500) });

const curbCodec = closedRecord('the empty trailer: weighed, or built up from items', {}, {
  weight: weightOf('trailer weight'), tongue: weightOf('trailer tongue load'), items: listOf('items', itemCodec),
});

const bandCodec = closedRecord('a band of tongue shares', { low: shareOf('guideline low'), high: shareOf('guideline high'), source: words }, {});

const trailerCodec = closedRecord('a trailer', { hitch: oneOf('ball', 'gooseneck'), axles: listOf('axles, from the front', axleCodec) }, {
  name: words, gvwr: ratingOf('GVWR'), sharing: oneOf('equalised', 'independent'), curb: curbCodec,
  coupler: closedRecord('coupler ratings', {}, { gross: ratingOf('coupler gross rating'), tongue: ratingOf('coupler tongue rating') }),
  guideline: bandCodec,
});

const cargoCodec = closedRecord('a piece of cargo', { name: words, weight: weightOf('weight') }, {
  at: lengthOf('position', -120), front: lengthOf('front face', -120), balancePoint: lengthOf('balance point behind the front face'),
});

export const specCodec = closedRecord('a spec', { trailer: trailerCodec }, {
  name: words, cargo: listOf('cargo', cargoCodec), tongueShare: shareOf('tongue share it is loaded to'),
});

export type Spec = t.TypeOf<typeof specCodec>;
export type TrailerSpec = t.TypeOf<typeof trailerCodec>;
export type AxleSpec = t.TypeOf<typeof axleCodec>;
export type TireSpec = t.TypeOf<typeof tiresCodec>;
export type CurbSpec = t.TypeOf<typeof curbCodec>;
export type CargoSpec = t.TypeOf<typeof cargoCodec>;
