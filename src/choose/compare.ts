/** Several builds side by side: the same figures of each, and which of them hold. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Assessment, assess } from '../assessment/index.js';
import type { TrailerError } from '../errors.js';
import { type Derived, difference } from '../trace/index.js';
import { showBrief, type Unit } from '../units/index.js';
import { capacityInPrint, loadInPrint, remark, row, shareInPrint } from '../units/text-layout.js';

/** How a figure is printed: a load up, a capacity down, a share, a pressure as it stands. */
export type Print = 'load' | 'capacity' | 'share' | 'as it stands';

export interface ComparedFigure {
  readonly what: string;
  readonly print: Print;
  /** One for each build, in order; undefined where a build does not say. */
  readonly figures: readonly (Derived<Unit> | undefined)[];
}

export interface Comparison {
  readonly names: readonly string[];
  readonly assessments: readonly Assessment[];
  readonly rows: readonly ComparedFigure[];
}

type Pick = (assessment: Assessment) => Derived<Unit> | undefined;

const compared: readonly (readonly [string, Print, Pick])[] = [
  ['GVWR', 'capacity', ({ spec }) => spec.trailer.gvwr],
  ['empty weight', 'load', ({ weighed }) => weighed.curb],
  ['payload', 'capacity', ({ carry }) => carry?.payload.most],
  ['gross weight', 'load', ({ weighed }) => weighed.gross],
  ['tongue load', 'load', ({ weighed }) => weighed.balance?.tongue],
  ['tongue share', 'share', ({ weighed }) => weighed.balance?.tongueShare],
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
  ['axle group capacity', 'capacity', ({ stack }) => stack.group?.capacity],
  ['tire rating, axle 1, each', 'capacity', ({ stack }) => stack.tires[0]?.rating?.rating],
  ['tire pressure needed', 'as it stands', ({ pressures }) => pressures[0]?.needed.pressure],
  ['brakes together', 'capacity', ({ brakes }) => brakes.total],
  ['coupler gross rating', 'capacity', ({ spec }) => spec.trailer.coupler?.gross],
  ['load at the jack foot', 'load', ({ gear }) => gear.jackFoot],
  ['truck rear axle, hitched', 'load', ({ tow }) => tow.hitched?.rear],
  ['radius of gyration', 'as it stands', ({ attitude }) => attitude.yaw?.radius],
  ['combination', 'load', ({ tow }) => tow.combination],
  ['largest trailer the truck allows', 'capacity', ({ tow }) => tow.largest?.trailer],
];

/**
 * How do these builds compare for this job?
 *
 * Each is assessed by itself; the table sets the same figures side by side. Nothing is added up across builds.
 *
 * @param specs names and specs as JSON, two or more
 * @returns the figures with their working; Left with the error of the first spec that cannot be read, its name before the path
 * @example orThrow(compare({ now: spec, next: spec })).names.length // 2
 * @source each figure carries its own
 */
export function compare(specs: Readonly<Record<string, unknown>>): Either<TrailerError, Comparison> {
  const assessments: Assessment[] = [];
  for (const [name, spec] of Object.entries(specs)) {
    const assessed = assess(spec);
    if (isLeft(assessed)) return left({ ...assessed.left, path: `${name}: ${assessed.left.path ?? 'the spec'}` });
    assessments.push(assessed.right);
  }
  const rows = compared
    .map(([what, print, pick]) => ({ what, print, figures: assessments.map(pick) }))
    .filter(({ figures }) => figures.some((figure) => figure !== undefined));
  return right({ names: Object.keys(specs), assessments, rows });
}

/** The change of a figure from one build to another, where both have it in one unit. @example changeOf(orThrow(compare({ now: spec, next: spec })).rows[0]) // 0 lb */
export function changeOf({ figures: [now, next] }: ComparedFigure): Derived<Unit> | undefined {
  return now === undefined || next === undefined || now.value.unit !== next.value.unit
    ? undefined
    : difference('change', next, now);
}

function inPrint(figure: Derived<Unit> | undefined, print: Print): string {
  if (figure === undefined) return '-';
  if (figure.value.unit !== 'lb' && print !== 'share') return showBrief(figure.value, 1);
  switch (print) {
    case 'load':
      return loadInPrint((figure as Derived<'lb'>).value);
    case 'capacity':
      return capacityInPrint((figure as Derived<'lb'>).value);
    case 'share':
      return shareInPrint((figure as Derived<'ratio'>).value);
    case 'as it stands':
      return showBrief(figure.value, 1);
  }
}

/** The comparison as a table of at most 80 columns for two to four builds. @example comparisonText(orThrow(compare({ now: spec, next: spec }))).includes('GVWR') // true */
export function comparisonText({ names, assessments, rows }: Comparison): string {
  const wide = Math.max(11, Math.floor(44 / Math.max(1, names.length)));
  const widths = names.map(() => wide);
  const line = (first: string, cells: readonly string[]): string =>
    row(
      first,
      cells.map((cell) => cell.slice(0, wide - 1)),
      34,
      widths,
    );
  return [
    line('', names),
    ...rows.map(({ what, print, figures }) =>
      line(
        `  ${what}`,
        figures.map((figure) => inPrint(figure, print)),
      ),
    ),
    line(
      '  checks over',
      assessments.map(({ checks, partChecks }) =>
        String([...checks, ...partChecks].filter(({ verdict }) => verdict === 'over').length),
      ),
    ),
    line(
      '  not well besides',
      assessments.map(({ attention, lifted }) => String(attention.length + lifted.length)),
    ),
    line(
      '  questions open',
      assessments.map(({ notChecked }) => String(notChecked.length)),
    ),
    ...assessments.map(({ tightest, carry }, i) =>
      remark(
        `${names[i]}: closest to its limit is ${tightest.map(({ what }) => what).join(' and ') || 'nothing'}; payload set by ${carry?.payload.governed.governing.map(({ name }) => name).join(' and ') ?? 'nothing'}`,
      ),
    ),
  ].join('\n');
}
