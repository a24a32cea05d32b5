/** Loads that must not be negative: a negative value means uplift of the ball, an axle or a side, which no rating check detects. */
import { constant, type Decision, type Derived, decide, difference, over } from '../../trace/index.js';
import { lb } from '../../units/index.js';
import type { StancePart } from './stance-part.js';
import type { OffLevelHitch, TowPart } from './tow-part.js';
import type { Weighed } from './weights.js';

export interface Pressing {
  /** What presses: the tongue, the axles, an axle, a side, in shop words. */
  readonly what: string;
  /** What it presses with, in lb; below zero it lifts. */
  readonly load: Derived<'lb'>;
}

export interface Uplift {
  /** The tongue, the tow vehicle's axles, the sides, in every way of standing: loads that must not be below zero. */
  readonly mustPress: readonly Pressing[];
  /** Those of them that are: the ball, an axle or a side leaves what it stood on. */
  readonly lifted: readonly Pressing[];
}

const nothing = constant(lb(0));

const axlesOf = (
  { front, rear }: { readonly front: Derived<'lb'>; readonly rear: Derived<'lb'> },
  how = '',
): readonly Pressing[] => [
  { what: `tow vehicle front axle${how}`, load: front },
  { what: `tow vehicle rear axle${how}`, load: rear },
];

/** Off level each side loses half of what the tongue takes. */
function sidesOffLevel({ sides, offLevel }: StancePart): readonly Pressing[] {
  const change = offLevel?.tongueChange;
  if (sides === undefined || change === undefined) return [];
  const lost = over(change, 2);
  return [
    { what: 'left side off level', load: difference('left side, off level', sides.left, lost) },
    { what: 'right side off level', load: difference('right side, off level', sides.right, lost) },
  ];
}

/** What bars restore of a front axle's loss never lifts the rear axle as long as the tongue load is the one they were set for. */
const underBars = ({ barsOn }: OffLevelHitch): readonly Pressing[] =>
  barsOn ? [{ what: 'tow vehicle rear axle bars on and off level', load: barsOn.rear }] : [];

/** Asks the tongue, the tow vehicle's axles as hitched, both sides, and each axle, in every way of standing that may lift it, as far as they are known. */
export function upliftPart(
  { balance }: Weighed,
  { hitched, offLevel: hitch }: TowPart,
  stance: StancePart,
): { readonly uplift: Uplift; readonly decisions: readonly Decision[] } {
  const { sides, offLevel } = stance;
  const mustPress: readonly Pressing[] = [
    ...(balance
      ? [
          { what: 'tongue', load: balance.tongue },
          { what: 'axle group', load: balance.axleLoad },
        ]
      : []),
    ...(hitched ? axlesOf(hitched) : []),
    ...(sides
      ? [
          { what: 'left side', load: sides.left },
          { what: 'right side', load: sides.right },
        ]
      : []),
    ...(offLevel ? offLevel.loads.map((load, i) => ({ what: `axle ${i + 1} off level`, load })) : []),
    ...(hitch ? [{ what: 'tongue off level', load: hitch.tongue }] : []),
    ...(hitch?.hitched ? axlesOf(hitch.hitched, ' off level') : []),
    ...sidesOffLevel(stance),
    ...(hitch ? underBars(hitch) : []),
  ];
  const decisions = mustPress.map(({ load }) => decide(load, '>=', nothing, 'a remark'));
  const lifted = mustPress.filter((_, i) => decisions[i]?.holds === false);
  return { uplift: { mustPress, lifted }, decisions };
}
