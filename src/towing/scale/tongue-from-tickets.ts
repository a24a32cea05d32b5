/** The tongue load by scale tickets. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Derived } from '../../trace/index.js';
import type { TicketsCannotTell, TowingError } from '../errors.js';
import { readScaleTickets, type TicketQuestion } from './scale-tickets.js';
import { tongueNeeds } from './ticket-figures.js';
import { passesOf } from './tickets.js';

/**
 * What is the tongue load by these tickets, or why can they not tell?
 *
 * The same reading as `readScaleTickets`, for the tongue load only.
 *
 * @returns lb; Left `TicketsCannotTell` for a coupled ticket alone or one with bars on, and the errors of `readScaleTickets`
 * @example tongueFromTickets({ tickets: { barsOff: { steer: lb(2740), drive: lb(2820), trailer: lb(5140) } }, division: scaleDivision }) // Left TicketsCannotTell
 * @source common practice, no source
 */
export function tongueFromTickets(question: TicketQuestion): Either<TowingError | TicketsCannotTell, Derived<'lb'>> {
  const read = readScaleTickets(question);
  if (isLeft(read)) return read;
  const { tongue } = read.right;
  if (tongue !== undefined) return right(tongue);
  return left({
    chapter: 'towing',
    tag: 'TicketsCannotTell',
    asked: 'the tongue load',
    passes: passesOf(question.tickets),
    needed: tongueNeeds,
  });
}
