/** The tongue load of the empty trailer against its weight: with more than all of it no trailer presses on its coupler. */
import { note } from '../../ratings/index.js';
import type { DecodedCurb } from '../../spec/index.js';
import { type Derived, decide } from '../../trace/index.js';
import { has } from '../../units/internal.js';
import type { Empty } from './empty-as-told.js';

type Lb = Derived<'lb'>;

/** The keys that say what it weighs and what its tongue carries. */
const keysOf = (curb: DecodedCurb): readonly string[] =>
  (['tongue', 'tongueByLever', 'weight', 'items', 'frame', 'deck', 'added'] as const).flatMap((key) => {
    const told = curb[key];
    const unused =
      (key === 'tongueByLever' && curb.tongue !== undefined) ||
      (['items', 'frame', 'deck'].includes(key) && curb.weight !== undefined);
    return told === undefined || unused ? [] : [`trailer.curb.${key}`];
  });

/** The same trailer where its tongue load can be so; otherwise one whose weight is known and whose balance is not. */
export function withPossibleTongue(empty: Empty, curb: DecodedCurb = {}): Empty {
  const { item, decisions, attention, notChecked, ...rest } = empty;
  if (item === undefined || !has(item, 'tongue')) return empty;
  const [weight, tongue] = [item.weight as Lb, item.tongue as Lb];
  const possible = decide(tongue, '<=', weight);
  const decided = [...decisions, possible];
  if (possible.holds) return { ...empty, decisions: decided };
  const paths = keysOf(curb);
  const says = 'the tongue load of the empty trailer is above its weight: one of the two is wrong';
  const open = {
    id: 'balance',
    what: 'axle loads and tongue',
    missing: 'a tongue load of the empty trailer that is not above its weight',
    paths,
  };
  return {
    ...rest,
    item: undefined,
    attention: [...attention, { ...note('TongueAboveWeight', says, [tongue, weight]), paths }],
    notChecked: [...notChecked, open],
    decisions: decided,
  };
}
