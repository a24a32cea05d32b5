/** What tows the trailer, and the questions of law, as JSON. */
import * as t from 'io-ts';
import { lengthOf, ratingOf, shareOf, weightOf } from './figure.js';
import { closedRecord, oneOf, wordOr, yesOrNo } from './record.js';

const part = (name: string) =>
  closedRecord(
    `${name} ratings`,
    {},
    { gross: ratingOf(`${name} gross rating`), tongue: ratingOf(`${name} tongue rating`) },
  );

/** A measured overhang, or the plain statement that nobody has measured it. */
const overhangCodec = wordOr('unknown', lengthOf('overhang, rear axle to ball', -200));

export const towCodec = closedRecord(
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
    overhang: overhangCodec,
    hitchHardware: weightOf('hitch hardware'),
    receiver: part('receiver'),
    ballMount: part('ball mount'),
    ball: closedRecord('ball rating', {}, { gross: ratingOf('ball rating') }),
    trailerRating: ratingOf('trailer tow rating'),
    tongueRating: ratingOf('tow vehicle tongue rating'),
    placard: closedRecord(
      'occupant and cargo placard',
      {},
      {
        limit: ratingOf('placard limit'),
        people: weightOf('people aboard'),
        cargo: weightOf('cargo aboard'),
      },
    ),
    bars: closedRecord(
      'weight distributing bars',
      { restore: shareOf('share of the front axle load to restore', '0.001', '1') },
      {},
    ),
  },
);

/** What only people know: whether the rules for carriers bind. Local rules come in as the file the rules chapter reads. */
export const rulesCodec = closedRecord(
  'facts for rules',
  {},
  {
    commercial: yesOrNo,
    interstate: yesOrNo,
    actualWithinRatings: yesOrNo,
    labelGcwr: wordOr('not shown', ratingOf('GCWR on the certification label')),
    local: t.unknown,
    axleGroups: closedRecord(
      'how axle groups are counted',
      {
        tie: oneOf('down', 'up'),
        lengthRounding: oneOf('none', 'nearest foot, halves up', 'nearest foot, halves down'),
      },
      {},
    ),
  },
);

export type TowSpec = t.TypeOf<typeof towCodec>;
export type RulesSpec = t.TypeOf<typeof rulesCodec>;
