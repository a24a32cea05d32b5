/** The smallest of several builds that does a job with something in reserve. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import type { AssessError } from '../assessment/index.js';
import { type Assessment, assess } from '../assessment/index.js';
import { type AnyWeight, asDerived, type Derived, inPounds, minus, result } from '../trace/index.js';
import { lb } from '../units/index.js';
import { compareDecimals } from '../units/internal.js';

/** What it must carry: a payload, and what is to be left of it. */
export interface Need {
  readonly payload: AnyWeight;
  readonly reserve?: AnyWeight;
}

export interface Candidate {
  readonly name: string;
  readonly assessment: Assessment;
  readonly gvwr: Derived<'lb'> | undefined;
  /** Payload minus need minus reserve; negative when it falls short, absent when its payload is not known. */
  readonly left: Derived<'lb'> | undefined;
  readonly carries: boolean;
  /** Why not, when it does not: checks that are over, a machine without a place, a payload that falls short or is not known. */
  readonly because: readonly string[];
}

export interface Smallest {
  /** The candidate with the lowest GVWR, then the lowest empty weight, that carries the need; absent when none does. */
  readonly smallest?: Candidate;
  /** All of them, smallest GVWR first; one without a GVWR comes last and never wins. */
  readonly candidates: readonly Candidate[];
  /** Candidates whose spec could not be read or answered. */
  readonly failed: readonly { readonly name: string; readonly error: AssessError }[];
}

function judge(name: string, assessment: Assessment, need: Derived<'lb'>, reserve: Derived<'lb'>): Candidate {
  const { checks, partChecks, payload: carry, spec, attention } = assessment;
  const over = [...checks, ...partChecks]
    .filter(({ verdict }) => verdict === 'over')
    .map(({ what }) => `${what} is over`);
  const rest =
    carry?.best === undefined ? undefined : result('payload left', minus(minus(carry.best.weight, need), reserve));
  const short =
    rest === undefined
      ? ['its payload is not known']
      : rest.value.value.isNegative() && compareDecimals(rest.value.value, lb(0).value) < 0
        ? ['its payload falls short']
        : [];
  const unlabelled = spec.trailer.gvwr === undefined ? ['its GVWR is not known'] : [];
  const because = [
    ...over,
    ...assessment.lifted.map(({ what }) => `${what} lifts`),
    ...attention.filter(({ tag }) => tag === 'NoPlace').map(({ says }) => says),
    ...short,
    ...unlabelled,
  ];
  return {
    name,
    assessment,
    left: rest,
    gvwr: spec.trailer.gvwr && inPounds('GVWR', spec.trailer.gvwr),
    carries: because.length === 0,
    because,
  };
}

/** Lighter first; what is not known comes last. */
function order(a: Derived<'lb'> | undefined, b: Derived<'lb'> | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return compareDecimals(a.value.value, b.value.value);
}

/**
 * Which is the smallest of these that carries it?
 *
 * Smallest means the lowest GVWR, then the lowest empty weight. A build carries the need when none of its checks is over, nothing
 * lifts, there is a place for its machine, and `payload - need - reserve` is zero or more; lb throughout. What was not checked is listed in each assessment.
 *
 * @param candidates names and specs as JSON
 * @param need payload wanted and reserve to be left
 * @example orThrow(smallestThatCarries({ fourteen: spec }, { payload: lb(9000), reserve: lb(500) })).smallest?.name // fourteen
 * @source the checks and payload of `assess`
 */
export function smallestThatCarries(
  candidates: Readonly<Record<string, unknown>>,
  need: Need,
): Either<AssessError, Smallest> {
  const wanted = inPounds('payload needed', asDerived('payload needed', need.payload));
  const reserve = inPounds('reserve', asDerived('reserve', need.reserve ?? lb(0)));
  const read: Candidate[] = [];
  const failed: { name: string; error: AssessError }[] = [];
  for (const [name, spec] of Object.entries(candidates)) {
    const assessed = assess(spec);
    if (isLeft(assessed)) failed.push({ name, error: assessed.left });
    else read.push(judge(name, assessed.right, wanted, reserve));
  }
  const sorted = read.sort(
    (a, b) => order(a.gvwr, b.gvwr) || order(a.assessment.weights.curb, b.assessment.weights.curb),
  );
  const smallest = sorted.find(({ carries }) => carries);
  return right({ candidates: sorted, failed, ...(smallest && { smallest }) });
}
