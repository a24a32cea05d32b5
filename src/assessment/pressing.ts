/** Loads that must press down: where one is below zero, the ball, an axle or a side has left what it stood on, and no rating speaks of that. */
import { constant, decide, type Decision, type Derived } from '../trace/index.js';
import { lb } from '../units/index.js';
import type { AttitudePart } from './attitude.js';
import type { TowPart } from './tow.js';
import type { Weighed } from './weigh.js';

export interface Pressing {
  readonly what: string;
  readonly load: Derived<'lb'>;
}

/** Every load that must press, those of them that lift, and the comparisons with zero. */
export interface Pressed {
  readonly mustPress: readonly Pressing[];
  readonly lifted: readonly Pressing[];
  readonly decisions: readonly Decision[];
}

const nothing = constant(lb(0));

/** Asks the tongue, the tow vehicle's axles as hitched, both sides, and each axle off level, as far as they are known. */
export function pressed({ balance }: Weighed, { hitched }: TowPart, { sides, offLevel }: AttitudePart): Pressed {
  const mustPress: readonly Pressing[] = [
    ...(balance ? [{ what: 'tongue', load: balance.tongue }] : []),
    ...(hitched
      ? [
          { what: 'tow vehicle front axle', load: hitched.front },
          { what: 'tow vehicle rear axle', load: hitched.rear },
        ]
      : []),
    ...(sides
      ? [
          { what: 'left side', load: sides.left },
          { what: 'right side', load: sides.right },
        ]
      : []),
    ...(offLevel ? offLevel.loads.map((load, i) => ({ what: `axle ${i + 1} off level`, load })) : []),
  ];
  const decisions = mustPress.map(({ load }) => decide(load, '>=', nothing));
  return { mustPress, lifted: mustPress.filter((_, i) => decisions[i]?.holds === false), decisions };
}
