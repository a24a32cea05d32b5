/** The smallest move of one figure that puts a rig right: half-lines of every demand, joined, then assessed. */
import type { Assessment } from '../../assessment/index.js';
import { type Asking, type Changes, putsRight } from './asking.js';
import { type Demands, demandsIn, nearZero } from './demands.js';
import type { Slide } from './lever.js';

/** How often a place is asked again when the assessment there shows further demands. */
const rounds = 4;

export const valueAt = ({ now, step, unit }: Slide, k: number): number =>
  Number((now + k * step).toFixed(unit === 'ratio' ? 6 : 4));

export const changeAt = (slide: Slide, k: number): Changes => ({
  [slide.path]: { text: `${valueAt(slide, k)} ${slide.unit}`, basis: 'stated' },
});

/** The steps that keep a figure between its ends, toward more (`1`) or toward less (`-1`): from and to, in steps away from now. */
export function reach({ now, step, least, most }: Slide, way: 1 | -1): readonly [from: number, to: number] {
  const [near, far] = way === 1 ? [least - now, most - now] : [now - most, now - least];
  return [Math.max(1, Math.ceil(near / step - 1e-9)), Math.floor(far / step + 1e-9)];
}

/** The first step of `from` to `to` at which something holds that, once it holds, goes on holding. */
export function firstWhere(from: number, to: number, holds: (k: number) => boolean): number {
  let [low, high] = [from, to];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The steps at which every demand is met, as one stretch; undefined when there is none. Demands are taken to go one way. */
export function stretchWhere(
  demands: Demands,
  from: number,
  to: number,
  inputsAt: (k: number) => readonly number[],
  leftOut: (demand: number) => boolean = () => false,
): readonly [from: number, to: number] | undefined {
  let [first, last] = [from, to];
  for (let demand = 0; demand < demands.count && first <= last; demand += 1) {
    if (leftOut(demand)) continue;
    const met = (k: number): boolean => demands.at(demand, inputsAt(k)) >= -nearZero;
    const [atFirst, atLast] = [met(first), met(last)];
    if (!atFirst && !atLast) return undefined;
    if (!atFirst) first = firstWhere(first, last, met);
    else if (!atLast) last = firstWhere(first, last, (k) => !met(k)) - 1;
  }
  return first <= last ? [first, last] : undefined;
}

/** Asks at the far end of a stretch, and halves it from there: for what no formula foresees. */
function halve(asking: Asking, along: (k: number) => Changes, from: number, to: number): number | undefined {
  if (!putsRight(asking.ask(along(to)))) return undefined;
  let [low, high] = [from, to];
  while (low < high && !asking.spent()) {
    const middle = Math.floor((low + high) / 2);
    if (putsRight(asking.ask(along(middle)))) high = middle;
    else low = middle + 1;
  }
  return high;
}

/** The fewest steps one way that put it right, on top of the changes made already. */
export function slideOneWay(
  slide: Slide,
  way: 1 | -1,
  start: Assessment,
  beside: Changes,
  asking: Asking,
): number | undefined {
  const [nearest, farthest] = reach(slide, way);
  const along = (k: number): Changes => ({ ...beside, ...changeAt(slide, way * k) });
  let [from, here] = [nearest, start];
  for (let round = 0; round < rounds && from <= farthest; round += 1) {
    const demands = demandsIn(here, [slide]);
    const stretch = stretchWhere(demands, from, farthest, (k) => [valueAt(slide, way * k)]);
    if (stretch === undefined) return undefined;
    const [first, last] = stretch;
    const there = asking.ask(along(first));
    if (putsRight(there)) return first;
    if (there === undefined) return undefined;
    if (round === rounds - 1 || demandsIn(there, [slide]).short.length === 0)
      return last > first ? halve(asking, along, first + 1, last) : undefined;
    [from, here] = [first + 1, there];
  }
  return undefined;
}

/** The smaller of the two ways. */
export function slideEitherWay(slide: Slide, start: Assessment, beside: Changes, asking: Asking): number | undefined {
  const ways = ([1, -1] as const).flatMap((way) => {
    const steps = slideOneWay(slide, way, start, beside, asking);
    return steps === undefined ? [] : [way * steps];
  });
  return ways.sort((a, b) => Math.abs(a) - Math.abs(b))[0];
}
