/** The place of the ball relative to the tow vehicle's axles, and the axle loads that a load on the ball causes. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  type AnyLength,
  type AnyShare,
  constant,
  type Decision,
  type Derived,
  decide,
  given,
  inInches,
  over,
  plus,
  product,
  result,
  type Source,
  type Terms,
  times,
} from '../../trace/index.js';
import { ratio, toWire, type Unit } from '../../units/index.js';
import { has, signOfFigure } from '../../units/internal.js';
import { publishedOverhangBound } from '../data/sources.js';
import type { HitchKind, TowingError } from '../errors.js';
import { allAboveZero, noneOf, plainShare } from '../figures.js';

/** How far the ball is behind the rear axle: a length (negative for a gooseneck), or that length over the wheelbase. */
export type Overhang = AnyLength | { readonly ofWheelbase: AnyShare };

/** The place of the ball. For an overhang not measured, `'unknown'` explicitly chooses the stated bound. */
export type HitchPlace =
  | { readonly hitch: HitchKind; readonly overhang: AnyLength; readonly wheelbase: AnyLength }
  | {
      readonly hitch: HitchKind;
      readonly overhang: { readonly ofWheelbase: AnyShare };
      readonly wheelbase?: AnyLength | undefined;
    }
  | { readonly hitch: 'ball behind'; readonly overhang: 'unknown'; readonly wheelbase?: AnyLength | undefined };

/** The leverage, ready for the steps: two lengths, or one share. */
export type Lever =
  | { readonly by: 'lengths'; readonly overhang: Derived<'in'>; readonly wheelbase: Derived<'in'> }
  | { readonly by: 'share'; readonly share: Derived<'ratio'> };

export interface LeverRead {
  readonly lever: Lever;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

const boundNote = (share: Derived<'ratio'>): Note =>
  note(
    'OverhangUnknown',
    'The overhang is not known: half the wheelbase is taken, so 1.5 times the tongue load lands on the rear axle. Measure it for a closer answer.',
    [share],
  );
const overAxle = note(
  'BallOverAxle',
  'The ball stands right over the rear axle: the front axle neither gains nor loses. Make sure that the overhang was measured.',
);

/** The sign of an overhang must fit the hitch, and a gooseneck ball is behind the front axle. */
function placed<U extends Unit>(
  hitch: HitchKind,
  overhang: Derived<U>,
  front: Derived<NoInfer<U>>,
): Either<TowingError, Pick<LeverRead, 'notes' | 'decisions'>> {
  const none = noneOf(overhang.value.unit);
  const contradicts = (needed: string): Either<TowingError, never> =>
    left({ chapter: 'towing', tag: 'HitchContradicts', hitch, overhang: toWire(overhang.value), needed });
  const side = decide(overhang, hitch === 'gooseneck' ? '<=' : '>=', none);
  if (!side.holds)
    return contradicts(
      hitch === 'gooseneck'
        ? 'an overhang of zero or less: the ball is ahead of the axle'
        : 'an overhang of zero or more, or the hitch called a gooseneck',
    );
  const behindFront = decide(plus(...([overhang, front] as readonly Derived<U>[] as Terms<U>)), '>', none);
  if (!behindFront.holds) return contradicts('a ball behind the front axle');
  const over = decide(overhang, '=', none);
  return right({ notes: over.holds ? [overAxle] : [], decisions: [side, behindFront, over] });
}

const isShare = (overhang: Overhang): overhang is { readonly ofWheelbase: AnyShare } => has(overhang, 'ofWheelbase');

/** Reads the place of the ball. */
export function hitchLever(place: HitchPlace): Either<TowingError, LeverRead> {
  if (place.overhang === 'unknown') {
    const share = given('overhang over wheelbase, bound', ratio('0.5'), 'estimated');
    return right({ lever: { by: 'share', share }, notes: [boundNote(share)], decisions: [] });
  }
  if (isShare(place.overhang)) {
    const share = plainShare('overhang over wheelbase', place.overhang.ofWheelbase);
    const read = placed(place.hitch, share, constant(ratio(1)));
    return isLeft(read) ? read : right({ lever: { by: 'share', share }, ...read.right });
  }
  const [overhang, wheelbase] = [
    inInches('overhang', place.overhang),
    inInches('wheelbase', place.wheelbase as AnyLength),
  ];
  const long = allAboveZero([['wheelbase', wheelbase]]);
  if (isLeft(long)) return long;
  const read = placed(place.hitch, overhang, wheelbase);
  if (isLeft(read)) return read;
  return right({
    lever: { by: 'lengths', overhang, wheelbase },
    notes: read.right.notes,
    decisions: [...long.right, ...read.right.decisions],
  });
}

const sourceOf = (lever: Lever): Source | undefined =>
  lever.by === 'share' && lever.share.why.basis === 'estimated' ? publishedOverhangBound : undefined;

/** What a load on the ball takes off the front axle: `load x overhang / wheelbase`; negative when it adds. */
export function takenOffFront(symbol: string, lever: Lever, load: Derived<'lb'>): Derived<'lb'> {
  if (lever.by === 'share') return product(symbol, load, lever.share, sourceOf(lever));
  return result(symbol, over(times(load, lever.overhang), lever.wheelbase));
}

/** The load on the ball that puts this much on the rear axle: `slack x b / (b + o)`. */
export function tongueForRear(symbol: string, lever: Lever, slack: Derived<'lb'>): Derived<'lb'> {
  if (lever.by === 'share') return result(symbol, over(slack, plus(1, lever.share)), sourceOf(lever));
  const { wheelbase, overhang } = lever;
  return result(symbol, over(times(slack, wheelbase), plus(wheelbase, overhang)));
}

/** The same for a front axle that a gooseneck loads: `slack x b / -o`. The caller has ruled out an overhang of zero. */
export function tongueForFront(symbol: string, lever: Lever, slack: Derived<'lb'>): Derived<'lb'> {
  const ahead = constant(ratio(-1));
  if (lever.by === 'share') return result(symbol, over(slack, times(ahead, lever.share)));
  return result(symbol, over(times(slack, lever.wheelbase), times(ahead, lever.overhang)));
}

/** Whether a load on the ball takes anything off the front axle. */
export const takesOffFront = (lever: Lever): boolean =>
  signOfFigure((lever.by === 'share' ? lever.share : lever.overhang).value) > 0;

/** The tongue load that takes this much off the front axle: `load x wheelbase / overhang`. For a ball behind the axle. */
export function tongueTaking(symbol: string, lever: Lever, load: Derived<'lb'>): Derived<'lb'> {
  return lever.by === 'share'
    ? result(symbol, over(load, lever.share))
    : result(symbol, over(times(load, lever.wheelbase), lever.overhang));
}
