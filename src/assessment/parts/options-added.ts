/** Options on a trailer that was weighed: what they add to its weight and to its tongue load; and axles moved under it. */
import { isLeft } from 'fp-ts/lib/Either.js';
import type { Item } from '../../load/index.js';
import { type Note, note } from '../../ratings/index.js';
import { addedWeightLimit, showsCapacity } from '../../rules/index.js';
import type { DecodedCurb, DecodedTrailer } from '../../spec/index.js';
import {
  type Decision,
  type Derived,
  decide,
  inInches,
  inPounds,
  minus,
  over,
  plus,
  result,
  sum,
  times,
} from '../../trace/index.js';
import { has } from '../../units/internal.js';
import { axlesMovedBySpec } from './axles-moved.js';

type Lb = Derived<'lb'>;
type Inches = Derived<'in'>;

/** The empty trailer with its options, as far as its balance is known. */
export interface WithOptions {
  readonly curb: Lb;
  readonly item: Item | undefined;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

interface Part {
  readonly weight: Lb;
  readonly at: Inches;
}

/** `(W x + sum of w x_i) / (W + sum of w)`, or `T + sum of w (a - x_i) / a` where the tongue load is what is known. */
function itemWith(
  item: Item | undefined,
  parts: readonly Part[],
  curb: Lb,
  axlesAt: Inches | undefined,
): Item | undefined {
  if (item === undefined) return undefined;
  if (has(item, 'at')) {
    const moments = [
      times(inPounds('trailer weight', item.weight), inInches('trailer position', item.at)),
      ...parts.map(({ weight, at }) => times(weight, at)),
    ] as const;
    return { name: item.name, weight: curb, at: result('trailer position with options', over(plus(...moments), curb)) };
  }
  if (axlesAt === undefined) return undefined;
  const shares = parts.map(({ weight, at }) => over(times(weight, minus(axlesAt, at)), axlesAt));
  return {
    name: item.name,
    weight: curb,
    tongue: result('trailer tongue load with options', plus(inPounds('trailer tongue load', item.tongue), ...shares)),
  };
}

/** The line of the label rule, on a trailer that shows a capacity figure: so much may be added before the first sale without correcting it. */
function againstLabel(
  added: Lb,
  gvwr: DecodedTrailer['gvwr'],
): { readonly notes: readonly Note[]; readonly decisions: readonly Decision[] } {
  const limit = gvwr === undefined ? undefined : addedWeightLimit(gvwr);
  if (gvwr === undefined || limit === undefined || isLeft(limit)) return { notes: [], decisions: [] };
  const shown = showsCapacity(inPounds('GVWR', gvwr));
  if (!shown.holds) return { notes: [], decisions: [shown] };
  const more = decide(added, '>', limit.right);
  const line =
    'Before the first sale, more than the lesser of 1.5 % of the GVWR and 100 lb may not be added without correcting the capacity figure on the label (49 CFR 571.110 S10; verify)';
  const told = more.holds
    ? note('AddedAboveLabelLine', `${line}: the options are more.`, [added, limit.right])
    : note('AddedWithinLabelLine', `${line}: the options are not more.`, [added, limit.right]);
  return {
    notes: [told],
    decisions: [shown, more],
  };
}

/** Adds the options of a spec to the empty trailer; both weights are reported. */
export function withOptions(
  empty: { readonly curb: Lb; readonly item?: Item | undefined },
  { added = [] }: DecodedCurb,
  { gvwr }: DecodedTrailer,
  axlesAt: Inches | undefined,
): WithOptions | undefined {
  if (added.length === 0) return undefined;
  const parts = added.map(({ name, weight, at }) => ({
    weight: inPounds(`${name} weight`, weight),
    at: inInches(`${name} position`, at),
  }));
  const all = sum(
    'weight of the options',
    parts.map(({ weight }) => weight),
  );
  const curb = sum('trailer weight with options', [empty.curb, all]);
  const item = itemWith(empty.item, parts, curb, axlesAt);
  const label = againstLabel(all, gvwr);
  const tongues = [empty.item, item].flatMap((each) =>
    each !== undefined && has(each, 'tongue') ? [inPounds('trailer tongue load', each.tongue)] : [],
  );
  const what = tongues.length === 0 ? 'its weight' : 'its weight and its tongue load';
  const told = note('OptionsAdded', `Options are added to the weighed trailer: ${what} before and after.`, [
    empty.curb,
    curb,
    ...tongues,
  ]);
  return { curb, item, notes: [told, ...label.notes], decisions: label.decisions };
}

/** A trailer weighed with its axles elsewhere: it acts at `a (W - T) / W`, a the place they had. What moves with the axles is not known. */
export function weighedElsewhere(
  item: Item | undefined,
  axlesWere: Inches | undefined,
): { readonly item: Item | undefined; readonly notes: readonly Note[] } {
  if (item === undefined || has(item, 'at') || axlesWere === undefined) return { item, notes: [] };
  const [weight, tongue] = [inPounds('trailer weight', item.weight), inPounds('trailer tongue load', item.tongue)];
  return {
    item: {
      name: item.name,
      weight,
      at: result('trailer position', over(times(minus(weight, tongue), axlesWere), weight)),
    },
    notes: [axlesMovedBySpec([axlesWere, tongue])],
  };
}
