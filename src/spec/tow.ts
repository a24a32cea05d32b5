/** What tows the trailer. */
import { lengthOf, ratingOf, shareOf, weightOf } from './codec/figures.js';
import { wordsOr } from './codec/forms.js';
import type { Coded } from './codec/kind.js';
import { record } from './codec/record.js';
import type { DecodedTow, TowInput } from './types/tow.js';

const part = (type: string, name: string) =>
  record(
    type,
    `${name} ratings`,
    {},
    { gross: ratingOf(`${name} gross rating`), tongue: ratingOf(`${name} tongue rating`) },
  );

const placard = record(
  'Placard',
  'occupant and cargo placard',
  {},
  { limit: ratingOf('placard limit'), people: weightOf('people aboard'), cargo: weightOf('cargo aboard') },
);

const bars = record(
  'Bars',
  'weight distributing bars',
  { restore: shareOf('share of the front axle load to restore', '0.001', '1') },
  {},
);

/** The tow vehicle. */
export const towCodec: Coded<DecodedTow, TowInput> = record(
  'Tow',
  'a tow vehicle',
  {},
  {
    front: weightOf('tow vehicle front axle, alone', 'scale'),
    rear: weightOf('tow vehicle rear axle, alone', 'scale'),
    gvwr: ratingOf('tow vehicle GVWR'),
    frontGawr: ratingOf('tow vehicle front GAWR'),
    rearGawr: ratingOf('tow vehicle rear GAWR'),
    gcwr: ratingOf('GCWR'),
    wheelbase: lengthOf('wheelbase', 40),
    overhang: wordsOr(['unknown'], lengthOf('overhang, rear axle to ball', -200)),
    hitchHardware: weightOf('hitch hardware'),
    receiver: part('Receiver', 'receiver'),
    ballMount: part('BallMount', 'ball mount'),
    ball: record('Ball', 'ball rating', {}, { gross: ratingOf('ball rating') }),
    trailerRating: ratingOf('trailer tow rating'),
    tongueRating: ratingOf('tow vehicle tongue rating'),
    placard,
    bars,
  },
);
