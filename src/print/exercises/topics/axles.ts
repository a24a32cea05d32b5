/** Exercises on the loads of axles, tires and tongue. */
import { given, inShare, minus, over, plus, result, times } from '../../../trace/index.js';
import { lb } from '../../../units/index.js';
import { type Topic, written } from '../topic.js';

/** The share of the gross weight on the tongue. */
export const tongueShare: Topic = {
  title: 'the tongue share',
  draw: (draw) => {
    const percent = draw.whole(8, 18);
    const gross = draw.whole(6000, 15000, 500);
    const tongue = given('tongue load', lb((gross * percent) / 100), 'scale');
    const axles = given('load on the axles', lb(gross - (gross * percent) / 100), 'scale');
    return {
      text: `On the scale, the tongue presses with ${written(tongue)} and the axles with ${written(axles)}. What share of the gross weight stands on the tongue?`,
      answer: result('tongue share', over(tongue, plus(tongue, axles))),
      roundedAs: 'as it stands',
      mistakes: [
        {
          tag: 'ShareOfTheAxleLoad',
          says: 'The tongue load was divided by the axle load. The share is of the gross weight, tongue included.',
          figure: result('share of the axle load', over(tongue, axles)),
        },
        {
          tag: 'ShareOfTheAxles',
          says: 'That is the share on the axles. The tongue has the rest.',
          figure: result('share on the axles', over(axles, plus(tongue, axles))),
        },
      ],
    };
  },
};

/** What one of several equalised axles carries. */
export const axleLoadEach: Topic = {
  title: 'the load of each axle',
  draw: (draw) => {
    const count = draw.oneOf(2, 3);
    const gross = given('gross weight', draw.pounds(6000, 18000, 600), 'scale');
    const share = given('tongue share', draw.share(10, 15));
    const part = inShare('tongue share', share);
    return {
      text: `A trailer weighs ${written(gross)} gross with ${written(share)} of it on the tongue. Its ${count} axles are equalised. What does each axle carry?`,
      answer: result('load of each axle', over(minus(gross, times(gross, part)), count)),
      roundedAs: 'load',
      mistakes: [
        {
          tag: 'TongueLeftOnTheAxles',
          says: 'The tongue load was left on the axles. The truck carries it; the axles carry the rest.',
          figure: result('gross weight over the axles', over(gross, count)),
        },
        {
          tag: 'OneAxleCarriesAll',
          says: 'That is what all axles carry together. Equalised axles share it alike.',
          figure: result('load of all axles', minus(gross, times(gross, part))),
        },
        {
          tag: 'TongueAddedToTheAxles',
          says: 'The tongue load was added to what the axles carry. It relieves them.',
          figure: result('gross weight and tongue over the axles', over(plus(gross, times(gross, part)), count)),
        },
      ],
    };
  },
};

/** The reserve of the tires of an axle on duals. */
export const tireReserve: Topic = {
  title: 'the reserve of dual tires',
  draw: (draw) => {
    const dual = given('dual load, each', draw.pounds(2600, 3100, 20), 'label');
    const single = given('single load, each', draw.pounds(3200, 3600, 20), 'label');
    const load = given('axle load', draw.pounds(7000, 10000, 100));
    return {
      text: `An axle on four tires in dual fitment carries ${written(load)}. Each tire is molded ${written(single)} single and ${written(dual)} dual. What reserve do the tires of this axle have? (Write an overload with a minus sign.)`,
      answer: result('reserve of the tires', minus(times(dual, 4), load)),
      roundedAs: 'capacity',
      mistakes: [
        {
          tag: 'SingleForDual',
          says: 'The single load was used. Tires in dual fitment carry the dual load that is molded on them.',
          figure: result('reserve by single loads', minus(times(single, 4), load)),
        },
        {
          tag: 'OneTireForTheAxle',
          says: 'One tire was compared with the load of the axle. Four tires carry it together.',
          figure: result('reserve of one tire', minus(dual, load)),
        },
        {
          tag: 'EachForThePair',
          says: 'Two tires were counted. The axle stands on four.',
          figure: result('reserve of two tires', minus(times(dual, 2), load)),
        },
      ],
    };
  },
};
