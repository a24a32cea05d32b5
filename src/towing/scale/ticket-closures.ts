/** Every sum of a set of passes that must agree. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { Decision, Derived } from '../../trace/index.js';
import type { TicketsDoNotClose } from '../errors.js';
import { type Closure, closed } from './ticket-closure.js';
import { total } from './ticket-figures.js';
import type { Readings } from './tickets.js';

/** Every test of closure these passes allow. */
export function closuresOf(
  { barsOn, barsOff, truckAlone, trailerAlone }: Readings,
  division: Derived<'lb'>,
): Either<TicketsDoNotClose, { closures: Closure[]; decisions: Decision[] }> {
  const sums = ({ steer, drive, trailer }: NonNullable<Readings['barsOn']>, when: string): Derived<'lb'> =>
    total(`whole rig, ${when}`, steer, drive, trailer);
  const apart =
    truckAlone &&
    trailerAlone &&
    total('truck alone and trailer alone', truckAlone.steer, truckAlone.drive, trailerAlone);
  const tests = [
    barsOn &&
      barsOff &&
      closed('the rig with bars on and with bars off', sums(barsOn, 'bars on'), sums(barsOff, 'bars off'), 6, division),
    barsOff &&
      apart &&
      closed('the rig coupled, and truck and trailer apart', sums(barsOff, 'bars off'), apart, 6, division),
    barsOn &&
      barsOff === undefined &&
      apart &&
      closed('the rig coupled, and truck and trailer apart', sums(barsOn, 'bars on'), apart, 6, division),
  ];
  const closures: Closure[] = [];
  const decisions: Decision[] = [];
  for (const test of tests) {
    if (!test) continue;
    if (isLeft(test)) return test;
    closures.push(test.right.closure);
    decisions.push(...test.right.decisions);
  }
  return right({ closures, decisions });
}
