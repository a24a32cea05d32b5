/** Exercises on payload and on what the weakest part of an axle allows. */
import {
  type Derived,
  given,
  greatestOf,
  inShare,
  leastOf,
  minus,
  over,
  plus,
  result,
  times,
} from '../../../trace/index.js';
import { type Topic, written } from '../topic.js';

/** What the label leaves for the load. */
export const payloadOnTheLabel: Topic = {
  title: 'payload on the label',
  draw: (draw) => {
    const gvwr = given('GVWR', draw.pounds(7000, 21000, 500), 'label');
    const curb = given('empty trailer', draw.pounds(1800, 4600), 'scale');
    const share = given('tongue share', draw.share(10, 15));
    const axles = given(
      'GAWRs together',
      draw.pounds(Math.max(7000, gvwr.value.value.toNumber() + 600), 23000, 500),
      'label',
    );
    const tongue = times(gvwr, inShare('tongue share', share));
    const room = minus(gvwr, curb);
    return {
      text: `The label says GVWR ${written(gvwr)}; the axles are rated ${written(axles)} together. The trailer weighs ${written(curb)} empty, by scale, and is loaded to put ${written(share)} of the gross weight on the tongue. How much may the load weigh by the label?`,
      answer: result('payload on the label', room),
      roundedAs: 'capacity',
      mistakes: [
        {
          tag: 'TongueAddedToPayload',
          says: 'The tongue load was added to the payload. The truck carries it, but it is part of the gross weight that the label limits.',
          figure: result('payload plus tongue load', plus(room, tongue)),
        },
        {
          tag: 'TongueTakenOffTwice',
          says: 'The tongue load was taken off the payload. It is part of the gross weight already: the label counts it once.',
          figure: result('payload less tongue load', minus(room, tongue)),
        },
        {
          tag: 'EmptyTrailerForgotten',
          says: 'That is the GVWR itself. The empty trailer has to come off it.',
          figure: result('GVWR as payload', gvwr),
        },
        {
          tag: 'AxleRatingsForGvwr',
          says: 'The ratings of the axles were taken for the GVWR. The label of the whole trailer has its own figure, and the maker sets it.',
          figure: result('payload on the axle ratings', minus(axles, curb)),
        },
        {
          tag: 'EmptyTrailerAdded',
          says: 'The empty weight was added. It is what the trailer uses up of its rating before anything is loaded.',
          figure: result('GVWR plus empty trailer', plus(gvwr, curb)),
        },
      ],
    };
  },
};

/** The rating of an axle by its weakest part. */
export const weakestPart: Topic = {
  title: 'the weakest part of an axle',
  draw: (draw) => {
    const beam = given('beam', draw.pounds(5200, 7000, 100), 'label');
    const springs = given('springs', draw.pounds(5000, 7200, 100), 'label');
    const tire = given('tire, each', draw.pounds(2250, 3100, 10), 'label');
    const wheel = given('wheel, each', draw.pounds(2600, 3700, 10), 'label');
    const [tires, wheels] = [times(tire, 2), times(wheel, 2)];
    const parts: readonly Derived<'lb'>[] = [beam, springs, result('tires', tires), result('wheels', wheels)];
    return {
      text: `An axle has a beam rated ${written(beam)}, springs rated ${written(springs)} for the axle, two wheels of ${written(wheel)} each and two single tires molded ${written(tire)} each. What may the axle carry?`,
      answer: leastOf('axle rating', parts as [Derived<'lb'>]),
      roundedAs: 'capacity',
      mistakes: [
        {
          tag: 'GreatestForLeast',
          says: 'That is the strongest part. An axle carries what its weakest part carries.',
          figure: greatestOf('strongest part', parts as [Derived<'lb'>]),
        },
        {
          tag: 'EachForThePair',
          says: 'One tire was taken for the axle. Two tires carry it together; compare the pair with the other parts.',
          figure: result('one tire', tire),
        },
        {
          tag: 'MeanForLeast',
          says: 'The mean of the parts was taken. A strong part does not help a weak one.',
          figure: result('mean of the parts', over(plus(...parts), 4)),
        },
      ],
    };
  },
};
