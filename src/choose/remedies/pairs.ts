/** Two levers together, where neither does it alone. */
import type { Assessment } from '../../assessment/index.js';
import { type Asking, type Changes, putsRight } from './asking.js';
import { demandsIn } from './demands.js';
import type { AnyLever, Choice, Part, Slide } from './lever.js';
import { demandsOfPart, isEased, needOf } from './part.js';
import { type Pulled, pull, slid } from './pull.js';
import { firstWhere, reach, stretchWhere, valueAt } from './slide.js';

/** The levers in the order in which they are pulled, and what each does. */
export interface Both {
  readonly levers: readonly [AnyLever, AnyLever];
  readonly pulled: readonly [Pulled, Pulled];
}

/** Where two levers start: the rig with what has been changed already. */
interface From {
  readonly start: Assessment;
  readonly beside: Changes;
  readonly asking: Asking;
}

const ways = [1, -1] as const;

/** Two figures: the second moves as little as lets the first find a place. */
function twoSlides(first: Slide, second: Slide, { start, beside, asking }: From): Both | undefined {
  const demands = demandsIn(start, [first, second]);
  for (const b of ways)
    for (const a of ways) {
      const [nearA, farA] = reach(first, a);
      const [nearB, farB] = reach(second, b);
      if (nearA > farA || nearB > farB) continue;
      const placeAt = (k: number) =>
        stretchWhere(demands, nearA, farA, (j) => [valueAt(first, a * j), valueAt(second, b * k)]);
      if (placeAt(farB) === undefined) continue;
      const k = firstWhere(nearB, farB, (step) => placeAt(step) !== undefined);
      const [j] = placeAt(k) as readonly [number, number];
      const pulled = [slid(first, a * j), slid(second, b * k)] as const;
      if (putsRight(asking.ask({ ...beside, ...pulled[0].changes, ...pulled[1].changes })))
        return { levers: [first, second], pulled };
    }
  return undefined;
}

/** A figure moves until only what the part can ease is short; then the part is asked what it needs. */
function slideAndPart(slide: Slide, part: Part, { start, beside, asking }: From): Both | undefined {
  const eased = demandsOfPart(start, part);
  const demands = demandsIn(start, [slide]);
  for (const way of ways) {
    const [near, far] = reach(slide, way);
    const stretch =
      near > far
        ? undefined
        : stretchWhere(
            demands,
            near,
            far,
            (k) => [valueAt(slide, way * k)],
            (demand) => isEased(eased, demand),
          );
    if (stretch === undefined) continue;
    const moved = slid(slide, way * stretch[0]);
    const there = asking.ask({ ...beside, ...moved.changes });
    const need = there && needOf(there, part);
    if (need !== undefined && putsRight(asking.ask({ ...beside, ...moved.changes, ...need.changes })))
      return { levers: [slide, part], pulled: [moved, need] };
  }
  return undefined;
}

/** One lever first, the other on what is left. */
function after(first: AnyLever, done: Pulled, other: AnyLever, { beside, asking }: From): Both | undefined {
  const changes = { ...beside, ...done.changes };
  const there = asking.ask(changes);
  const then = there && pull(other, there, changes, asking);
  return then && { levers: [first, other], pulled: [done, then] };
}

function choiceAnd(choice: Choice, other: AnyLever, from: From): Both | undefined {
  for (const option of choice.options.slice(0, 2)) {
    const both = after(choice, option, other, from);
    if (both !== undefined) return both;
  }
  return undefined;
}

function partAnd(part: Part, other: Part, from: From): Both | undefined {
  const need = needOf(from.start, part);
  return need && after(part, need, other, from);
}

/** The least pull of two levers together that puts the rig right; undefined when none does. `start` is the rig with the changes in `beside` made. */
export function pullBoth(
  a: AnyLever,
  b: AnyLever,
  start: Assessment,
  beside: Changes,
  asking: Asking,
): Both | undefined {
  const from = { start, beside, asking };
  if (a.kind === 'choice') return choiceAnd(a, b, from);
  if (b.kind === 'choice') return choiceAnd(b, a, from);
  if (a.kind === 'slide') return b.kind === 'slide' ? twoSlides(a, b, from) : slideAndPart(a, b, from);
  return b.kind === 'slide' ? slideAndPart(b, a, from) : partAnd(a, b, from);
}
