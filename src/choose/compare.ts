/** Several builds side by side: the same figures of each, and which of them hold. */

import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AssessError } from '../assessment/index.js';
import { type Assessment, assess } from '../assessment/index.js';
import type { SpecInput } from '../spec/index.js';
import { type Derived, difference } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import type { ChooseError } from './errors.js';
import { nothingToAnswer, questionRefusal } from './refusal.js';

/** How a figure is printed: a load rounded up, a capacity down, a share, a pressure unrounded. */
export type Print = 'load' | 'capacity' | 'share' | 'as it stands';

export interface ComparedFigure {
  /** Which figure, in shop words. */
  readonly what: string;
  /** How it is rounded for print: loads up, capacities down. */
  readonly print: Print;
  /** One for each build, in order; undefined where a build does not say. */
  readonly figures: readonly (Derived<Unit> | undefined)[];
}

export interface Comparison {
  /** The builds by name, in the order they were given. */
  readonly names: readonly string[];
  /** The answer to each build. */
  readonly assessments: readonly Assessment[];
  /** The figures side by side. */
  readonly rows: readonly ComparedFigure[];
}

type Pick = (assessment: Assessment) => Derived<Unit> | undefined;

const compared: readonly (readonly [string, Print, Pick])[] = [
  ['GVWR', 'capacity', ({ spec }) => spec.trailer.gvwr],
  ['empty weight', 'load', ({ weights: weighed }) => weighed.curb],
  ['payload', 'capacity', ({ payload: carry }) => carry?.best?.weight],
  ['gross weight', 'load', ({ weights: weighed }) => weighed.gross],
  ['tongue load', 'load', ({ weights: weighed }) => weighed.balance?.tongue],
  ['tongue share', 'share', ({ weights: weighed }) => weighed.balance?.tongueShare],
  [
    'heaviest axle load',
    'load',
    ({ axleLoads }) =>
      axleLoads
        .map(({ load }) => load)
        .reduce<Derived<'lb'> | undefined>(
          (most, next) => (most === undefined || next.value.value.gt(most.value.value) ? next : most),
          undefined,
        ),
  ],
  ['axle group capacity', 'capacity', ({ runningGear: stack }) => stack.group?.capacity],
  ['tire rating, axle 1, each', 'capacity', ({ runningGear: stack }) => stack.tires[0]?.rating?.rating],
  ['tire pressure needed', 'as it stands', ({ pressures }) => pressures[0]?.needed.pressure],
  ['brakes together', 'capacity', ({ brakes }) => brakes.total],
  ['coupler gross rating', 'capacity', ({ spec }) => spec.trailer.coupler?.gross],
  ['load at the jack foot', 'load', ({ jack }) => jack.foot],
  ['truck rear axle, hitched', 'load', ({ tow }) => tow.hitched?.rear],
  ['radius of gyration', 'as it stands', ({ stance: attitude }) => attitude.yaw?.radius],
  ['combination', 'load', ({ tow }) => tow.combination],
  ['largest trailer the truck allows', 'capacity', ({ tow }) => tow.largest?.trailer],
];

/**
 * How do these builds compare for this job?
 *
 * Each is assessed by itself; the table sets the same figures side by side. Nothing is added up across builds.
 *
 * @param specs names and specs as JSON; one alone is a table of one
 * @returns the figures with their working; Left with the error of the first spec that cannot be read, its name before the path;
 * `NothingToAnswer` without any, `UnusableFigure` for what is no record of specs
 * @example orThrow(compare({ now: spec, next: spec })).names.length // 2
 * @source each figure carries its own
 */
export function compare(specs: Readonly<Record<string, SpecInput>>): Either<AssessError | ChooseError, Comparison> {
  const unusable = questionRefusal('specs', specs);
  if (unusable !== undefined) return left(unusable);
  const names = Object.keys(specs);
  if (names.length === 0) return left(nothingToAnswer('how the builds compare', 'a build', 'specs'));
  const assessments: Assessment[] = [];
  for (const [name, spec] of Object.entries(specs)) {
    const assessed = assess(spec);
    if (isLeft(assessed)) return left({ ...assessed.left, path: `${name}: ${assessed.left.path ?? 'the spec'}` });
    assessments.push(assessed.right);
  }
  const rows = compared
    .map(([what, print, pick]) => ({ what, print, figures: assessments.map(pick) }))
    .filter(({ figures }) => figures.some((figure) => figure !== undefined));
  return right({ names, assessments, rows });
}

/** The change of a figure from one build to another, where both have it in one unit. @example changeOf(orThrow(compare({ now: spec, next: spec })).rows[0]) // 0 lb */
export function changeOf({ figures: [now, next] }: ComparedFigure): Derived<Unit> | undefined {
  return now === undefined || next === undefined || now.value.unit !== next.value.unit
    ? undefined
    : difference('change', next, now);
}
