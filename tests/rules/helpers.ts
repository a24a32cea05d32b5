/** Facts in short for the tests of this chapter. */

import type { Either } from 'fp-ts/lib/Either.js';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describeError, type TrailerError } from '../../src/errors.js';
import { type Facts, type Finding, federalRules, type Rule, screen } from '../../src/rules/index.js';
import type { Derived } from '../../src/trace/index.js';
import { foot, inch, kg, lb, type Unit } from '../../src/units/index.js';

const units = { lb, kg, in: inch, ft: foot } as const;

/** `trailer GVWR: 10000 lb, commercial: yes, label GCWR: not shown` */
export function facts(text: string): Facts {
  return Object.fromEntries(
    text
      .split(', ')
      .filter((part) => part !== '')
      .map((part) => {
        const [name = '', said = ''] = part.split(': ');
        if (said === 'yes' || said === 'no') return [name, said === 'yes'];
        if (said === 'not shown' || said === 'none') return [name, said];
        const [digits = '', unit = ''] = said.split(' ');
        return [name, units[unit as keyof typeof units](digits)];
      }),
  ) as Facts;
}

export function orFail<A>(either: Either<TrailerError, A>): A {
  if (isLeft(either)) throw new Error(describeError(either.left));
  return either.right;
}

export function leftOf<E>(either: Either<E, unknown>): E {
  if (isLeft(either)) return either.left;
  throw new Error('was not refused');
}

/** What the rules of one question say to these facts, by the id of the question. */
export function ask(id: string, given: Facts, rules: readonly Rule[] = federalRules): Finding {
  const found = orFail(screen(given, rules)).findings.find((finding) => finding.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
}

/** What one rule says by itself, without its alternatives. */
export const askRow = (id: string, given: Facts): Finding =>
  orFail(
    screen(
      given,
      federalRules.filter((rule) => rule.id === id),
    ),
  ).findings[0] as Finding;

/** Every figure with working in a finding. */
export const workings = ({ answers }: Finding): readonly Derived<Unit>[] =>
  answers.flatMap(({ figure, line, distance }) =>
    [figure, line, distance].flatMap((part) => (part === undefined ? [] : [part])),
  );
