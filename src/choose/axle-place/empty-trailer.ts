/** The empty trailer, apart from what moves with its axles. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import type { Assessment } from '../../assessment/index.js';
import { asDerived, constant, type Derived, inPounds, minus, plus, result, times } from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { editDistance, has, nearestKeys } from '../../units/internal.js';
import type { ChooseError } from '../errors.js';
import { nothingToAnswer } from '../refusal.js';
import type { AxleInterval } from './design.js';

type Lb = Derived<'lb'>;
type Moment = Derived<'lb*in'>;

/** The empty trailer: its weight, what of it moves with the axles, and the moment of the rest with the axles at the coupler. */
export interface Empty {
  readonly weight: Lb;
  readonly moves: Lb;
  readonly moment: Moment;
  readonly how: AxleInterval['how'];
}

/** A fact without which no place can be calculated. */
export const missing = (what: string, path: string): Either<ChooseError, never> =>
  left(nothingToAnswer('where the axles must stand', what, path));

/** Weight, moving part and moment of the empty trailer: from its parts where they are listed, else as weighed. */
export function emptyOf({ weights, runningGear }: Assessment, moving: readonly string[]): Either<ChooseError, Empty> {
  const axlesAt = runningGear.group?.at;
  if (axlesAt === undefined) return missing('the place of the axles now', 'trailer.axles');
  const { built, curb, trailer } = weights;
  if (built === undefined) {
    const tongue =
      trailer !== undefined && has(trailer, 'tongue')
        ? inPounds('tongue load', asDerived('tongue load', trailer.tongue))
        : undefined;
    if (curb === undefined || tongue === undefined)
      return missing('weight and tongue load of the empty trailer, or its parts', 'trailer.curb');
    const moment = result('moment of the empty trailer', times(minus(curb, tongue), axlesAt));
    return right({ weight: curb, moves: constant(lb(0)), moment, how: 'weighed' });
  }
  const names = built.lines.map(({ name }) => name);
  const stray = moving.find((name) => !names.includes(name));
  if (stray !== undefined)
    return left({
      chapter: 'choose',
      tag: 'NotInTheSpec',
      path: `moving: ${stray}`,
      nearest: nearestKeys(names, (name) => editDistance(name, stray)),
    });
  const with_ = built.lines.filter(({ name }) => moving.includes(name));
  const moves =
    with_.length === 0 ? constant(lb(0)) : result('moves with the axles', plus(...with_.map(({ weight }) => weight)));
  const moments = built.lines.map(({ name, weight, at }) =>
    times(weight, moving.includes(name) ? minus(at, axlesAt) : at),
  );
  if (built.weight.value.value.times('0.5').lte(moves.value.value))
    return left({
      chapter: 'choose',
      tag: 'UnusableFigure',
      path: 'moving',
      found: `${moves.value.value.toFixed(0)} lb of ${built.weight.value.value.toFixed(0)} lb`,
      needed: 'lines of less than half of the empty weight: only what moves with the axles',
    });
  return right({
    weight: built.weight,
    moves,
    moment: result('moment with the axles at the coupler', plus(...moments)),
    how: 'built up',
  });
}
