/** Exercises on kilograms, pounds, and the side to which each is rounded. */
import { type Derived, given, inUnit, result, times } from '../../../trace/index.js';
import { lb } from '../../../units/index.js';
import { type Mistake, type Topic, written } from '../topic.js';

/** The same number read as pounds, and what comes of it. */
function mistakenPounds(kilograms: Derived<'kg'>): readonly Mistake[] {
  const read = given('kilograms read as pounds', lb(kilograms.value.value));
  return [
    {
      tag: 'PoundsForKilograms',
      says: 'The kilograms were read as pounds. A kilogram is 2.2046 lb.',
      figure: read,
    },
    {
      tag: 'FactorTurnedRound',
      says: 'The factor was used the wrong way round: pounds are smaller than kilograms, so there are more of them.',
      figure: result('factor turned round', times(read, 0.45359237)),
    },
    {
      tag: 'TwoPoundsAKilogram',
      says: 'Two pounds were counted for a kilogram. It is 2.2046: a tenth is lost.',
      figure: result('two pounds a kilogram', times(read, 2)),
    },
  ];
}

const factor = '(1 lb is 0.45359237 kg.)';

/** A capacity given in kilograms, asked in whole pounds. */
export const capacityInPounds: Topic = {
  title: 'rounding a capacity',
  draw: (draw) => {
    const rating = given('rating', draw.kilograms(700, 3500), 'label');
    return {
      text: `A part is rated ${written(rating)}. What is that in whole pounds? ${factor}`,
      answer: result('capacity in pounds', inUnit(rating, 'lb')),
      roundedAs: 'capacity',
      rounds: true,
      mistakes: mistakenPounds(rating),
    };
  },
};

/** The weight of a machine given in kilograms, asked in whole pounds. */
export const machineInPounds: Topic = {
  title: 'rounding a load',
  draw: (draw) => {
    const weight = given('machine weight', draw.kilograms(700, 5500));
    return {
      text: `The plate of a machine says ${written(weight)}. What does it weigh in whole pounds? ${factor}`,
      answer: result('machine weight in pounds', inUnit(weight, 'lb')),
      roundedAs: 'load',
      rounds: true,
      mistakes: mistakenPounds(weight),
    };
  },
};
