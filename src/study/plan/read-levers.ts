/** The varied figures of a plan as levers: one figure each, or several that move together. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { Given } from '../../trace/index.js';
import { editDistance, nearestKeys } from '../../units/internal.js';
import type { StudyError } from '../errors.js';
import { type Factor, factorOf } from './factors.js';
import type { Axis } from './planned.js';
import type { Chance, Levels, Range, Variation } from './vary.js';

export interface Levers {
  readonly axes: readonly Axis[];
  readonly factors: readonly Factor[];
}

type Figures = Levels | Range | Chance;
type Leaves = ReadonlyMap<string, Given>;

const unusable = (path: string, found: string, needed: string): Either<StudyError, never> =>
  left({ chapter: 'study', tag: 'UnusableVariation', path, found, needed });

/** The paths of a variation and the figures of each. */
function figuresOf(name: string, variation: Variation): readonly (readonly [path: string, figures: Figures])[] {
  switch (variation.kind) {
    case 'linked':
      return Object.entries(variation.figures);
    case 'added':
    case 'alternatives':
      return [];
    default:
      return [[name, variation]];
  }
}

function readFactor(path: string, figures: Figures, leaves: Leaves, axis: number): Either<StudyError, Factor> {
  const leaf = leaves.get(path);
  if (leaf !== undefined) return factorOf(path, figures, leaf, axis);
  const nearest = nearestKeys([...leaves.keys()], (other) => editDistance(path, other));
  return left({ chapter: 'study', tag: 'UnknownPath', path, nearest });
}

/** Reads the varied figures of a plan against the leaves of its spec. */
export function readLevers(
  vary: readonly (readonly [name: string, variation: Variation])[],
  leaves: Leaves,
): Either<StudyError, Levers> {
  const axes: Axis[] = [];
  const factors: Factor[] = [];
  for (const [name, variation] of vary) {
    const figures = figuresOf(name, variation);
    if (variation.kind === 'linked' && figures.length === 0)
      return unusable(name, 'an empty list', 'at least one path that moves');
    for (const [path, each] of figures) {
      if (factors.some((other) => other.path === path)) return unusable(path, 'a path varied twice', 'each path once');
      const factor = readFactor(path, each, leaves, axes.length);
      if (isLeft(factor)) return factor;
      factors.push(factor.right);
    }
    const moved = factors.filter(({ axis }) => axis === axes.length);
    const [first, ...others] = moved.map(({ levels }) => levels);
    if (first === undefined) continue;
    const other = others.find((levels) => levels !== first);
    if (other !== undefined)
      return unusable(name, `${first} levels beside ${other}`, 'as many levels of each path that moves');
    axes.push({ name, levels: first });
  }
  return right({ axes, factors });
}
