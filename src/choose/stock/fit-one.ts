/** One trailer with the job on it, at the best place: two assessments. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessJson, assessSpec } from '../../assessment/index.js';
import { decodeSpec } from '../../spec/index.js';
import { changed } from '../../study/index.js';
import { figureWith } from '../../trace/index.js';
import { Decimal } from '../../units/internal.js';
import { demandsIn } from '../remedies/demands.js';
import { isEased, needOf } from '../remedies/part.js';
import { hitchParts } from '../remedies/parts.js';
import { withFigures } from '../with-figures.js';
import { bestPlace } from './places.js';
import { deckJobOf, rowsOn } from './rows.js';

/** A job: what tows, and the pieces, whose places are to be found. */
export interface Job {
  readonly tow?: unknown;
  readonly cargo: readonly unknown[];
}

/** A trailer with the job on it. */
export interface Fitted {
  readonly assessment: Assessment;
  /** The spec that was assessed. */
  readonly spec: unknown;
  /** The front of each piece behind the coupler, in; absent where deck or lengths are unknown and the pieces stay as given. */
  readonly fronts?: readonly number[];
  /** The pieces are longer than the deck. */
  readonly tooLong: boolean;
  /** What another hitch part would have to be rated for, where that alone puts it right. */
  readonly hitchPart?: string;
}

const share = (figure: Decimal): string | undefined =>
  figure.gt('0.001') && figure.lt('0.999') ? `${figure.times(100).toDecimalPlaces(4).toFixed()} %` : undefined;

/** The demands that a hitch part with greater ratings eases; worked out when it is first asked. */
function easedBy(trial: Assessment): (id: string) => boolean {
  let eased: ReadonlySet<string> | undefined;
  const all = (): ReadonlySet<string> => {
    const ratings = hitchParts.flatMap(({ paths }) => paths.map((path) => ({ path, unit: 'lb' }) as const));
    const demands = demandsIn(trial, ratings);
    const numbers = Array.from({ length: demands.count }, (_, demand) => demand);
    return new Set(numbers.filter((demand) => isEased(demands, demand)).map(demands.idOf));
  };
  return (id) => {
    eased ??= all();
    return eased.has(id);
  };
}

const withFronts = (spec: unknown, fronts: readonly number[]): unknown =>
  changed(spec, Object.fromEntries(fronts.map((at, i) => [`cargo.${i}.front`, `${at} in`])));

/** The piece at the coupler, to be moved from there. */
const unplaced = (piece: unknown): unknown => {
  if (typeof piece !== 'object' || piece === null) return piece;
  const { at: _at, front: _front, ...rest } = piece as Record<string, unknown>;
  return rest.balancePoint === undefined ? rest : { ...rest, front: '0 in' };
};

const figuresAt = (fronts: readonly number[]): ReadonlyMap<string, Decimal> =>
  new Map(fronts.map((at, i) => [`cargo.${i}.front`, new Decimal(at)]));

/** The trailer with the job at its best place; at the given place where deck or lengths are unknown. */
export function fitOne(trailer: unknown, { tow, cargo }: Job): Either<AssessError, Fitted> {
  const given = changed(trailer, { cargo, ...(tow === undefined ? {} : { tow }) });
  const loose = changed(given, { cargo: cargo.map(unplaced) });
  const decoded = decodeSpec(loose);
  if (isLeft(decoded)) return decoded;
  const job = deckJobOf(decoded.right);
  const rows = job === undefined ? [] : rowsOn(job);
  const [first] = rows;
  if (job === undefined || first === undefined) {
    const assessed = assessJson(given);
    return isLeft(assessed)
      ? left(assessed.left)
      : right({ assessment: assessed.right, spec: given, tooLong: job !== undefined });
  }
  const trial = assessSpec(withFigures(decoded.right, figuresAt(first.fronts)));
  if (isLeft(trial)) return trial;
  const best = bestPlace(trial.right, job, rows, easedBy(trial.right));
  const { balance } = trial.right.weights;
  const held = balance && share(figureWith(balance.tongueShare.why, figuresAt(best.fronts)));
  const placed = withFronts(loose, best.fronts);
  const spec = held === undefined ? placed : changed(placed, { tongueShare: held });
  const assessed = assessJson(spec);
  if (isLeft(assessed)) return assessed;
  const needs =
    best.meets === 'all but hitch parts' ? hitchParts.flatMap((part) => needOf(assessed.right, part) ?? []) : [];
  return right({
    assessment: assessed.right,
    spec,
    fronts: best.fronts,
    tooLong: false,
    ...(needs.length === 0 ? {} : { hitchPart: needs.map(({ says }) => says).join(' and ') }),
  });
}
