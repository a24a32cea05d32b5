/** Several weak parts at once, with at most one figure moved. */
import type { Assessment } from '../../assessment/index.js';
import { type Asking, type Changes, putsRight } from './asking.js';
import { demandsIn } from './demands.js';
import type { AnyLever } from './lever.js';
import { demandsOfPart, isEased, needOf } from './part.js';
import { type Pulled, slid } from './pull.js';
import { reach, stretchWhere, valueAt } from './slide.js';

/** A lever and what it does. */
export interface Pulling {
  readonly lever: AnyLever;
  readonly pulled: Pulled;
}

const ways = [1, -1] as const;

/** At most one figure moved, and every part that is then too weak: for a rig with several weak parts. */
export function pullAll(
  levers: readonly AnyLever[],
  start: Assessment,
  beside: Changes,
  asking: Asking,
): readonly Pulling[] | undefined {
  const parts = levers.filter((lever) => lever.kind === 'part');
  const eased = parts.map((part) => demandsOfPart(start, part));
  const settle = (there: Assessment | undefined, done: readonly Pulling[]): readonly Pulling[] | undefined => {
    if (there === undefined) return undefined;
    const needs = parts.flatMap((lever): readonly Pulling[] => {
      const pulled = needOf(there, lever);
      return pulled === undefined ? [] : [{ lever, pulled }];
    });
    const all = [...done, ...needs];
    return putsRight(asking.ask(Object.assign({}, beside, ...all.map(({ pulled }) => pulled.changes)) as Changes))
      ? all
      : undefined;
  };
  const still = settle(start, []);
  if (still !== undefined) return still;
  for (const slide of levers.filter((lever) => lever.kind === 'slide'))
    for (const way of ways) {
      const [near, far] = reach(slide, way);
      const stretch =
        near > far
          ? undefined
          : stretchWhere(
              demandsIn(start, [slide]),
              near,
              far,
              (k) => [valueAt(slide, way * k)],
              (demand) => eased.some((part) => isEased(part, demand)),
            );
      if (stretch === undefined) continue;
      const pulled = slid(slide, way * stretch[0]);
      const found = settle(asking.ask({ ...beside, ...pulled.changes }), [{ lever: slide, pulled }]);
      if (found !== undefined) return found;
    }
  return undefined;
}
