/** The spec of one trailer, its cargo and what tows it, as JSON. What is left out is reported as not checked. */
import type * as t from 'io-ts';
import { lengthOf, shareOf, weightOf } from './figure.js';
import { closedRecord, listOf, oneOf, words, yesOrNo } from './record.js';
import { rulesCodec, towCodec } from './tow.js';
import { trailerCodec } from './trailer.js';

const passCodec = closedRecord(
  'a coupled pass over the scale',
  {
    steer: weightOf('steer axle', 'scale'),
    drive: weightOf('drive axle', 'scale'),
    trailer: weightOf('trailer axles', 'scale'),
  },
  {},
);

/** What a scale printed, pass by pass, and what one platform rounds to. */
const ticketsCodec = closedRecord(
  'scale tickets',
  { division: weightOf('division of the scale', 'label') },
  {
    barsOn: passCodec,
    barsOff: passCodec,
    trailerAlone: weightOf('trailer alone', 'scale'),
    truckAlone: closedRecord(
      'the truck alone on the scale',
      { steer: weightOf('steer axle, alone', 'scale'), drive: weightOf('drive axle, alone', 'scale') },
      {},
    ),
  },
);

/** A tiedown: what is marked on its weakest part, or a chain or strap by the printed tables. */
const tiedownCodec = closedRecord(
  'a tiedown',
  { runs: oneOf('direct', 'same side', 'other side') },
  {
    marked: weightOf('marked working load limit', 'label'),
    chain: closedRecord(
      'chain by size and grade',
      { size: words, grade: oneOf('30', '43', '70', '80', '100', 'unmarked') },
      {},
    ),
    webbing: words,
  },
);

const cargoCodec = closedRecord(
  'a piece of cargo',
  { name: words, weight: weightOf('weight') },
  {
    at: lengthOf('position', -120),
    front: lengthOf('front face', -120),
    balancePoint: lengthOf('balance point behind the front face'),
    length: lengthOf('length', 1),
    rightOfMiddle: lengthOf('right of the middle', -60),
    uncertainty: lengthOf('uncertainty of the balance point'),
    wheelbase: lengthOf('wheelbase of the machine', 1),
    lowPoint: closedRecord(
      'lowest point between the axles',
      { behindFrontAxle: lengthOf('low point behind the front axle'), height: lengthOf('low point height') },
      {},
    ),
    gauges: listOf(
      'axles of the machine on the ramps',
      closedRecord('an axle of the machine', { gauge: lengthOf('gauge', 1), tireWidth: lengthOf('tire width', 1) }, {}),
    ),
    axles: listOf('axle loads of the machine', weightOf('axle load of the machine')),
    tiedowns: listOf('tiedowns', tiedownCodec),
    section: oneOf('general', 'heavy equipment', 'light vehicle'),
    blockedForward: yesOrNo,
  },
);

export const specCodec = closedRecord(
  'a spec',
  { trailer: trailerCodec },
  {
    name: words,
    cargo: listOf('cargo', cargoCodec),
    tongueShare: shareOf('tongue share it is loaded to'),
    tow: towCodec,
    rules: rulesCodec,
    tickets: ticketsCodec,
  },
);

export type Spec = t.TypeOf<typeof specCodec>;
export type CargoSpec = t.TypeOf<typeof cargoCodec>;
export type TiedownSpec = t.TypeOf<typeof tiedownCodec>;
export type { RulesSpec, TowSpec } from './tow.js';
export type { AxleSpec, CurbSpec, TireSpec, TrailerSpec } from './trailer.js';
