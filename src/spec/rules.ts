/** What only people know: whether the rules for carriers bind; and the rules of a State. */
import { lengthOf, ratingOf, weightOf } from './codec/figures.js';
import { wordsOr } from './codec/forms.js';
import type { Coded } from './codec/kind.js';
import { choice, yesOrNo } from './codec/plain.js';
import { record } from './codec/record.js';
import { localRulesCodec } from './local/local-rules.js';
import type { DecodedRules, RulesInput } from './types/rules.js';

/** Facts for rules. */
export const rulesCodec: Coded<DecodedRules, RulesInput> = record(
  'Rules',
  'facts for rules',
  {},
  {
    commercial: yesOrNo,
    interstate: yesOrNo,
    actualWithinRatings: yesOrNo,
    labelGcwr: wordsOr(['not shown'], ratingOf('GCWR on the certification label')),
    surgeBrakes: yesOrNo,
    pathDeviation: lengthOf('path deviation'),
    addedWeight: weightOf('added weight'),
    local: localRulesCodec,
    axleGroups: record(
      'AxleGroupRule',
      'how axle groups are counted',
      {
        tie: choice('down', 'up'),
        lengthRounding: choice('none', 'nearest foot, halves up', 'nearest foot, halves down'),
      },
      {},
    ),
  },
);
