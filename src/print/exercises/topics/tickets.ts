/** Exercises on scale tickets. */
import { type Derived, given, minus, plus, result } from '../../../trace/index.js';
import { lb } from '../../../units/index.js';
import type { Draw } from '../chance.js';
import { type Draft, type Topic, written } from '../topic.js';

interface Tickets {
  readonly text: string;
  readonly steer: Derived<'lb'>;
  readonly drive: Derived<'lb'>;
  readonly trailer: Derived<'lb'>;
  readonly steerAlone: Derived<'lb'>;
  readonly driveAlone: Derived<'lb'>;
}

/** Two passes of one truck: coupled, and alone. */
function ticketsOf(draw: Draw): Tickets {
  const tongue = draw.whole(900, 1900, 20);
  const relief = draw.whole(200, 480, 20);
  const [front, rear] = [draw.whole(4400, 5400, 20), draw.whole(3000, 4000, 20)];
  const steerAlone = given('steer axle, alone', lb(front), 'scale');
  const driveAlone = given('drive axle, alone', lb(rear), 'scale');
  const steer = given('steer axle, coupled', lb(front - relief), 'scale');
  const drive = given('drive axle, coupled', lb(rear + relief + tongue), 'scale');
  const trailer = given('trailer axles, coupled', draw.pounds(8000, 12000, 20), 'scale');
  return {
    steer,
    drive,
    trailer,
    steerAlone,
    driveAlone,
    text: `The ticket of the coupled rig says steer ${written(steer)}, drive ${written(drive)}, trailer axles ${written(trailer)}. The truck alone weighs steer ${written(steerAlone)}, drive ${written(driveAlone)}.`,
  };
}

/** The gross weight of the trailer from two tickets. */
export const grossFromTickets: Topic = {
  title: 'the gross weight of the trailer from two tickets',
  draw: (draw): Draft => {
    const { text, steer, drive, trailer, steerAlone, driveAlone } = ticketsOf(draw);
    const all = plus(steer, drive, trailer);
    return {
      text: `${text} What does the trailer weigh, gross?`,
      answer: result('gross weight of the trailer', minus(all, plus(steerAlone, driveAlone))),
      roundedAs: 'load',
      mistakes: [
        {
          tag: 'CoupledAxlesAsGross',
          says: 'The trailer axles of a coupled ticket were read as the gross weight. The tongue stands on the truck: it is missing there.',
          figure: result('trailer axles as gross', trailer),
        },
        {
          tag: 'CombinationAsGross',
          says: 'That is the combination, truck and all. The truck alone has to come off.',
          figure: result('combination as gross', all),
        },
      ],
    };
  },
};

/** The tongue load from two tickets. */
export const tongueFromTickets: Topic = {
  title: 'the tongue load from two tickets',
  draw: (draw): Draft => {
    const { text, steer, drive, steerAlone, driveAlone } = ticketsOf(draw);
    return {
      text: `${text} What is the tongue load? (No weight-distributing bars are set.)`,
      answer: result('tongue load', minus(plus(steer, drive), plus(steerAlone, driveAlone))),
      roundedAs: 'load',
      mistakes: [
        {
          tag: 'RearAxleAlone',
          says: 'Only the drive axle was compared. What left the steer axle went there too and is no tongue load.',
          figure: result('what came onto the drive axle', minus(drive, driveAlone)),
        },
        {
          tag: 'ReliefAdded',
          says: 'What left the steer axle was added. It has to be taken off what came onto the drive axle.',
          figure: result('relief added', plus(minus(drive, driveAlone), minus(steerAlone, steer))),
        },
      ],
    };
  },
};
