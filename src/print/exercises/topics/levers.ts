/** Exercises on levers: the tongue load of a placed machine, the jack. */
import { given, minus, over, plus, result, times } from '../../../trace/index.js';
import { inch, lb } from '../../../units/index.js';
import { type Topic, written } from '../topic.js';

/** The tongue load with a machine at a place. */
export const tongueByPlace: Topic = {
  title: 'the tongue load of a placed machine',
  draw: (draw) => {
    const hundredth = draw.whole(1, 3);
    const axles = given('axles behind the coupler', inch(hundredth === 1 ? 180 : draw.oneOf(160, 200, 220)));
    const machine = given('machine weight', draw.pounds(4000, 12000, 1000));
    const own = given('tongue load of the empty trailer', draw.pounds(240, 600, 20), 'scale');
    const at = axles.value.value.toNumber();
    // Ahead of the axles by a part of the lever that leaves a whole number of pounds.
    const ahead = draw.oneOf(at / 20, at / 10, at / 8, (3 * at) / 20);
    const toBalance = draw.inches(40, 72);
    const balance = given('balance point behind the front of the machine', toBalance);
    const front = given('front of the machine behind the coupler', inch(at - ahead - toBalance.value.toNumber()));
    const place = result('balance point behind the coupler', plus(front, balance));
    const before = result('balance point ahead of the axles', minus(axles, place));
    const moved = result('what the machine puts on the tongue', over(times(machine, before), axles));
    return {
      text: `An empty trailer has ${written(own)} on the tongue; its axles stand ${written(axles)} behind the coupler. A machine of ${written(machine)} is parked with its front ${written(front)} behind the coupler; its balance point is ${written(balance)} behind its front. What is the tongue load now?`,
      answer: result('tongue load', plus(own, moved)),
      roundedAs: 'load',
      mistakes: [
        {
          tag: 'FrontForBalancePoint',
          says: 'The front of the machine was taken for its balance point. A weight acts where it balances.',
          figure: result('tongue load by the front', plus(own, over(times(machine, minus(axles, front)), axles))),
        },
        {
          tag: 'LeverUpsideDown',
          says: 'That is the part that the axles take. The tongue takes the distance ahead of the axles over the whole lever.',
          figure: result('lever upside down', plus(own, over(times(machine, place), axles))),
        },
        {
          tag: 'OwnTongueForgotten',
          says: 'The tongue load of the empty trailer was forgotten. The machine comes on top of it.',
          figure: result('tongue load of the machine alone', moved),
        },
        {
          tag: 'WrongSideOfTheAxles',
          says: 'The machine was put behind the axles. It stands ahead of them, and so it presses on the tongue.',
          figure: result('tongue load less the machine', minus(own, moved)),
        },
      ],
    };
  },
};

/** The load on a jack behind the coupler. */
export const jackLoad: Topic = {
  title: 'the load on the jack',
  draw: (draw) => {
    const lever = draw.oneOf(160, 180, 200, 220);
    const back = lever / draw.oneOf(10, 8, 5);
    const rest = draw.whole(40, 120);
    const axles = given('axles behind the coupler', inch(lever));
    const jack = given('jack behind the coupler', inch(back));
    // A multiple of what the jack's own lever leaves, so that the answer is whole.
    const tongue = given('tongue load', lb((lever - back) * Math.max(4, Math.round(rest / 12))), 'scale');
    return {
      text: `A trailer has ${written(tongue)} on the tongue; its axles stand ${written(axles)} behind the coupler and its jack ${written(jack)} behind it. What does the jack carry when the coupler is lifted off the ball?`,
      answer: result('jack load', over(times(tongue, axles), minus(axles, jack))),
      roundedAs: 'load',
      mistakes: [
        {
          tag: 'TongueForJack',
          says: 'The tongue load was taken for the jack load. The jack stands nearer to the axles and takes more.',
          figure: result('tongue load as jack load', tongue),
        },
        {
          tag: 'JackLeverUpsideDown',
          says: 'The lever was turned round: nearer to the axles means more load, not less.',
          figure: result('jack lever upside down', over(times(tongue, minus(axles, jack)), axles)),
        },
      ],
    };
  },
};
