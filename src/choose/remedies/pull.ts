/** One lever pulled as far as needed, on top of the changes made already. */
import type { Assessment } from '../../assessment/index.js';
import { type Asking, type Changes, putsRight } from './asking.js';
import type { AnyLever, Choice, Part, Slide } from './lever.js';
import { needOf } from './part.js';
import { changeAt, slideEitherWay, valueAt } from './slide.js';

/** A lever pulled: what was changed, in words and as changes of the spec. */
export interface Pulled {
  readonly says: string;
  readonly changes: Changes;
}

export const slid = (slide: Slide, steps: number): Pulled => ({
  says: slide.says(valueAt(slide, steps)),
  changes: changeAt(slide, steps),
});

function pullChoice({ options }: Choice, beside: Changes, asking: Asking): Pulled | undefined {
  return options.find(({ changes }) => putsRight(asking.ask({ ...beside, ...changes })));
}

/** Twice, as a part that is strong enough may bring a limit forward that was behind it. */
function pullPart(part: Part, start: Assessment, beside: Changes, asking: Asking): Pulled | undefined {
  const first = needOf(start, part);
  if (first === undefined) return undefined;
  const there = asking.ask({ ...beside, ...first.changes });
  if (putsRight(there)) return first;
  const more = there === undefined ? undefined : needOf(there, part);
  if (more === undefined) return undefined;
  const changes = { ...first.changes, ...more.changes };
  return putsRight(asking.ask({ ...beside, ...changes })) ? { says: more.says, changes } : undefined;
}

/** The least pull of one lever that puts the rig right; undefined when none does. `start` is the rig with the changes in `beside` made. */
export function pull(lever: AnyLever, start: Assessment, beside: Changes, asking: Asking): Pulled | undefined {
  switch (lever.kind) {
    case 'slide': {
      const steps = slideEitherWay(lever, start, beside, asking);
      return steps === undefined ? undefined : slid(lever, steps);
    }
    case 'part':
      return pullPart(lever, start, beside, asking);
    case 'choice':
      return pullChoice(lever, beside, asking);
  }
}
