/** An axle of the trailer: its label, its parts, its tires. */
import { lengthOf, pressureOf, rateOf, ratingOf } from './codec/figures.js';
import type { Coded } from './codec/kind.js';
import { choice, count, shortText } from './codec/plain.js';
import { record } from './codec/record.js';
import type { AxleInput, DecodedAxle } from './types/axles.js';

const wheels = record(
  'Wheels',
  'wheels of an axle: rating of each and how many',
  { each: ratingOf({ axle: 'wheel, each' }), count: count(1, 8) },
  {},
);

const tires = record(
  'Tires',
  'tires of an axle',
  { designation: shortText, count: count(1, 8), fitment: choice('single', 'dual') },
  {
    molded: record(
      'MoldedLoad',
      'molded maximum load',
      {},
      {
        single: ratingOf({ axle: 'molded single load' }),
        dual: ratingOf({ axle: 'molded dual load' }),
        pressure: pressureOf({ axle: 'molded pressure' }),
      },
    ),
    pressure: pressureOf({ axle: 'cold pressure' }),
  },
);

const brakes = record(
  'Brakes',
  'the two brakes of an axle',
  { left: ratingOf({ axle: 'left brake' }), right: ratingOf({ axle: 'right brake' }) },
  {},
);

/** One axle. */
export const axleCodec: Coded<DecodedAxle, AxleInput> = record(
  'Axle',
  'an axle',
  {},
  {
    at: lengthOf({ axle: 'position' }, 1),
    gawr: ratingOf({ axle: 'GAWR' }),
    beam: ratingOf({ axle: 'beam' }),
    springs: ratingOf({ axle: 'springs' }),
    hubs: ratingOf({ axle: 'hubs' }),
    wheels,
    tires,
    rate: rateOf({ axle: 'spring rate' }),
    brakes,
  },
);
