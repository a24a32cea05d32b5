/** The jack under the tongue: what its foot carries, against its rating. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Check } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { jackLoad, type TowingError } from '../../towing/index.js';
import { type Derived, result, times } from '../../trace/index.js';
import { emptyPart, open, type Part } from './part-of-answer.js';
import { type Keys, unbalanced } from './wanting-keys.js';

/** The jack, uncoupled and standing on level ground. */
export interface JackPart extends Part {
  /** The load at its foot. */
  readonly foot?: Derived<'lb'>;
}

/** Asks what the jack carries when it takes the tongue load. */
export function jackPart(
  spec: DecodedSpec,
  tongue: Derived<'lb'> | undefined,
  axlesAt: Derived<'in'> | undefined,
): Either<TowingError, JackPart> {
  const { jack } = spec.trailer;
  const unasked = (missing: string, paths: Keys): Either<never, JackPart> =>
    right(open({ id: 'jack', what: 'jack against tongue', missing, paths }));
  if (jack === undefined) return unasked('jack rating and place', ['trailer.jack']);
  if (tongue === undefined || axlesAt === undefined) return unasked('tongue load', unbalanced(spec));
  const answer = jackLoad({ tongue, jackBehindBall: jack.at, axlesAt, rating: jack.rating, margin: jack.margin });
  if (isLeft(answer))
    return answer.left.tag === 'NotAboveZero'
      ? unasked('a tongue load above zero', unbalanced(spec))
      : left({ ...answer.left, path: 'trailer.jack' });
  const { check, decisions, foot } = answer.right;
  return right({ foot, ...emptyPart, checks: [check], decisions });
}

/** The jack against the greatest tongue load that the label and the band allow, as when a full trailer is parked on it. */
export function jackAtLabel(
  { trailer: { jack } }: DecodedSpec,
  gvwr: Derived<'lb'>,
  high: Derived<'ratio'>,
  axlesAt: Derived<'in'> | undefined,
): Check | undefined {
  if (jack === undefined || axlesAt === undefined) return undefined;
  const tongue = result('tongue load at the GVWR and the high tongue share', times(gvwr, high));
  const answer = jackLoad({ tongue, jackBehindBall: jack.at, axlesAt, rating: jack.rating, margin: jack.margin });
  return isLeft(answer) ? undefined : answer.right.check;
}
