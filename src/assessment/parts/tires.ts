/** The tires of an axle: what each may carry by its rating, what at the pressure it runs, what pressure its load needs. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import type { DecodedTires } from '../../spec/index.js';
import {
  type Service,
  type Tire,
  type TireRating,
  type TiresError,
  tireLoadAsRun,
  tireLoadRating,
} from '../../tires/index.js';
import { converted, type Decision, type Derived, renamed } from '../../trace/index.js';
import { refusalText } from '../words.js';
import type { OpenQuestion } from './open-questions.js';
import type { AxleName } from './wanting-keys.js';

export interface RatedTires {
  /** Which axle: `axle 1`. */
  readonly of: string;
  /** The tires as the spec gives them. */
  readonly spec: DecodedTires;
  /** What one tire may carry at its rating; absent when no source says. */
  readonly rating?: TireRating;
  /** What one tire may carry at the pressure it runs: never more than its rating. */
  readonly asRun?: Derived<'lb'>;
  /** Remarks: what was assumed, and where sources disagree. */
  readonly notes: readonly Note[];
  /** Open questions, each with the missing facts. */
  readonly notChecked: readonly OpenQuestion[];
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
}

/** What a designation cannot be read for is an error of the spec; what no table has only narrows the answer. */
const isUnreadable = ({ tag }: TiresError): boolean =>
  tag === 'UnreadableDesignation' || tag === 'DualAboveSingle' || tag === 'NotPositive';

const inPsi = (symbol: string, pressure: NonNullable<DecodedTires['pressure']>): Derived<'psi'> =>
  renamed(symbol, pressure);

/** The sidewall of a spec; its molded figures keep their places in the working. */
function tireOf({ designation, molded }: DecodedTires, of: string): Tire {
  if (molded === undefined) return { designation };
  const { single, dual, pressure } = molded;
  const load = (name: string, figure: Derived<'lb' | 'kg' | 't'>): Derived<'lb'> =>
    converted(`${of} ${name}`, renamed(`${of} ${name}`, figure) as Derived<'kg'>, 'lb');
  return {
    designation,
    molded: {
      single: single && load('molded single load', single),
      dual: dual && load('molded dual load', dual),
      pressure: pressure && inPsi(`${of} molded pressure`, pressure),
    },
  };
}

/** The questions about an axle's tires, and their ids for programs. */
type Asked = Pick<OpenQuestion, 'id' | 'what'>;

const open = (asked: Asked, error: TiresError, { path }: AxleName): OpenQuestion => ({
  ...asked,
  missing: `a printed figure, or the load and pressure molded into the tire (${refusalText(error)})`,
  paths: [`${path}.tires.molded`],
});

/** Rates the tires of one axle. */
export function tiresOf(spec: DecodedTires, axle: AxleName): Either<TiresError, RatedTires> {
  const { of, id, path } = axle;
  const tire = tireOf(spec, of);
  const service: Service = { fitment: spec.fitment, on: 'trailer' };
  const about = (notes: readonly Note[]): readonly Note[] =>
    notes.map((each) => note(each.tag, `${of}: ${each.says}`, each.figures));
  const run =
    spec.pressure === undefined ? undefined : tireLoadAsRun(tire, service, inPsi(`${of} cold pressure`, spec.pressure));
  if (run !== undefined && !isLeft(run)) {
    const { rating, load, notes, decisions } = run.right;
    return right({ of, spec, rating, asRun: load, notes: about(notes), notChecked: [], decisions });
  }
  const rated = tireLoadRating(tire, service);
  if (isLeft(rated)) {
    if (isUnreadable(rated.left)) return rated;
    const asked = { id: `${id}/tires`, what: `${of} tires` };
    return right({ of, spec, notes: [], notChecked: [open(asked, rated.left, axle)], decisions: [] });
  }
  const base = { of, spec, rating: rated.right, notes: about(rated.right.notes), decisions: rated.right.decisions };
  const asked = { id: `${id}/tires/as-run`, what: `${of} tires at the pressure they run` };
  if (run === undefined)
    return right({
      ...base,
      notChecked: [{ ...asked, missing: 'cold pressure as run', paths: [`${path}.tires.pressure`] }],
    });
  return isUnreadable(run.left) ? run : right({ ...base, notChecked: [open(asked, run.left, axle)] });
}
