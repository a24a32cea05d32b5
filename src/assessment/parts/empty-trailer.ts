/** The empty trailer of a spec: by scale, by its list of parts, or by both. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { BalanceError } from '../../load/index.js';
import type { MembersError } from '../../members/index.js';
import { note } from '../../ratings/index.js';
import type { DecodedCurb, DecodedTrailer } from '../../spec/index.js';
import { leverScale, type TowingError } from '../../towing/index.js';
import { type Derived, inPounds, minus, result } from '../../trace/index.js';
import { axlesMoved } from './axle-places.js';
import { builtUp } from './built-up-weight.js';
import type { Empty } from './empty-as-told.js';
import { weighedElsewhere, withOptions } from './options-added.js';
import { againstScale } from './scale-against-list.js';
import { withPossibleTongue } from './tongue-of-empty.js';

/** The scale outranks the list; when there are both, the difference is reported. */
export function emptyTrailer(curb: DecodedCurb | undefined): Either<MembersError | BalanceError | TowingError, Empty> {
  const found = curb === undefined ? right(undefined) : builtUp(curb);
  if (isLeft(found)) return found;
  const built = found.right?.curb;
  const decisions = found.right?.decisions ?? [];
  const weight = curb?.weight === undefined ? undefined : inPounds('trailer weight', curb.weight);
  const lever =
    curb?.tongueByLever === undefined || curb.tongue !== undefined
      ? undefined
      : leverScale({ ...curb.tongueByLever, tongueRestsAt: 'coupler' });
  if (lever !== undefined && isLeft(lever)) return left({ ...lever.left, path: 'trailer.curb.tongueByLever' });
  const tongue = curb?.tongue === undefined ? lever?.right.tongue : inPounds('trailer tongue load', curb.tongue);
  const told =
    built === undefined || weight === undefined
      ? { notes: [], decisions: [] }
      : againstScale(weight, built, curb?.tolerance);
  const base: Empty = {
    curb: undefined,
    item: undefined,
    built,
    notes: told.notes,
    attention: [],
    notChecked: [],
    decisions: [...decisions, ...told.decisions, ...(lever?.right.decisions ?? [])],
  };
  if (weight !== undefined && tongue !== undefined)
    return right({ ...base, curb: weight, item: { name: 'trailer', weight, tongue } });
  if (built !== undefined && weight === undefined && tongue !== undefined) {
    const says =
      'The empty trailer is built up from its parts and its tongue load is given: the tongue load governs where the weight acts.';
    return right({
      ...base,
      curb: built.weight,
      item: { name: 'trailer', weight: built.weight, tongue },
      notes: [note('TongueAgainstBuiltUp', says, [tongue])],
    });
  }
  if (built !== undefined && weight === undefined)
    return right({ ...base, curb: built.weight, item: { name: 'trailer', weight: built.weight, at: built.at } });
  if (weight !== undefined)
    return right({
      ...base,
      curb: weight,
      notChecked: [
        {
          id: 'balance',
          what: 'axle loads and tongue',
          missing: 'tongue load of the empty trailer',
          paths: ['trailer.curb.tongue', 'trailer.curb.tongueByLever'],
        },
      ],
    });
  return right({
    ...base,
    notChecked: [
      {
        id: 'gross',
        what: 'gross weight and payload',
        missing: 'weight of the empty trailer',
        paths: ['trailer.curb.weight', 'trailer.curb.items'],
      },
    ],
  });
}

/** The empty trailer with its options, and with its axles moved where the spec moves them. */
export function asItStands(told: Empty, trailer: DecodedTrailer, axlesAt: Derived<'in'> | undefined): Empty {
  const moved = axlesMoved(trailer);
  const were = moved && axlesAt && result('place of the axles when it was weighed', minus(axlesAt, moved));
  const read = withPossibleTongue(told, trailer.curb);
  const placed = weighedElsewhere(read.item, were);
  const empty: Empty = { ...read, item: placed.item, notes: [...read.notes, ...placed.notes] };
  const { curb } = empty;
  const options = curb && trailer.curb && withOptions({ curb, item: empty.item }, trailer.curb, trailer, axlesAt);
  if (options === undefined) return empty;
  const fitted: Empty = {
    ...empty,
    curb: options.curb,
    item: options.item,
    notes: [...empty.notes, ...options.notes],
    decisions: [...empty.decisions, ...options.decisions],
  };
  return withPossibleTongue(fitted, trailer.curb);
}
