/** What can be changed on one rig, by whom, and how far. */
import type { Assessment } from '../../assessment/index.js';
import type { ChooseError } from '../errors.js';
import { moreTiedowns, pressure, rearLegs, tires } from './choices.js';
import { type AnyLever, type Choice, leverWords } from './lever.js';
import { parts } from './parts.js';
import { bars, moves, unloading } from './slides.js';

/** What has to be done whatever else is: legs while loading, tiedowns. Nothing else in a rig depends on them. */
export const neededAnyhow = (assessment: Assessment, base: unknown): readonly Choice[] => [
  ...rearLegs(assessment),
  ...moreTiedowns(assessment, base),
];

/** Every other lever of a rig, the one that makes least trouble first. */
export function leversOf({ spec }: Assessment): readonly AnyLever[] {
  const all: readonly AnyLever[] = [
    ...moves(spec),
    ...pressure(spec),
    ...bars(spec),
    ...unloading(spec),
    ...parts,
    ...tires(spec),
  ];
  return [...all].sort((a, b) => a.cost - b.cost);
}

/** The error for a lever that is asked for and is none. */
export const noSuchLever = (levers: readonly string[], place: number): ChooseError => ({
  chapter: 'choose',
  tag: 'UnusableFigure',
  path: `levers.${place}`,
  found: String(levers[place]).slice(0, 40),
  needed: `a lever: ${leverWords.join(', ')}`,
});
