/** What is wrong with a plan that types did not check: JSON from elsewhere, a program without types. */
import { inShort, isRecord } from '../../units/internal.js';
import type { UnusableVariation } from '../errors.js';

type Loose = Readonly<Record<string, unknown>>;

/** What stands at a place, and what must stand there. */
export const unusable = (path: string, found: unknown, needed: string): UnusableVariation => ({
  chapter: 'study',
  tag: 'UnusableVariation',
  path,
  found: inShort(found),
  needed,
});

const areTexts = (value: unknown): boolean => Array.isArray(value) && value.every((text) => typeof text === 'string');

const designs = ['grid', 'one at a time', 'latin hypercube', 'monte carlo'];
const shapes: Readonly<Record<string, number>> = { uniform: 2, triangular: 3, normal: 2 };

/** What a figure's variation lacks, by its kind. */
function figuresRefusal(path: string, variation: Loose): UnusableVariation | undefined {
  const { kind, texts, from, to, count, shape, figures } = variation;
  switch (kind) {
    case 'levels':
      return areTexts(texts) ? undefined : unusable(path, texts, 'a list of figures as text');
    case 'range':
      if (typeof from !== 'string') return unusable(path, from, 'a figure as text');
      if (typeof to !== 'string') return unusable(path, to, 'a figure as text');
      return typeof count === 'number' ? undefined : unusable(path, count, 'a whole number of levels');
    case 'chance': {
      const needed = typeof shape === 'string' && Object.hasOwn(shapes, shape) ? shapes[shape] : undefined;
      if (needed === undefined) return unusable(path, shape, 'uniform, triangular or normal');
      return areTexts(figures) && (figures as readonly string[]).length === needed
        ? undefined
        : unusable(path, figures, `${needed} figures as text`);
    }
    default:
      return unusable(path, kind, 'levels, a range, a distribution, linked figures, added options or alternatives');
  }
}

function alternativesRefusal(path: string, { choices }: Loose): UnusableVariation | undefined {
  if (!isRecord(choices)) return unusable(`${path}.choices`, choices, 'a record of named alternatives');
  const bad = Object.entries(choices).find(([, changes]) => !isRecord(changes));
  return bad && unusable(`${path}.choices.${bad[0]}`, bad[1], 'a record of spec paths and what stands there');
}

function addedRefusal(path: string, { options }: Loose): UnusableVariation | undefined {
  if (!isRecord(options)) return unusable(`${path}.options`, options, 'a record of named options');
  const bad = Object.entries(options).find(([, option]) => !isRecord(option));
  return bad && unusable(`${path}.options.${bad[0]}`, bad[1], 'an option with its weight and its place');
}

function linkedRefusal(path: string, { figures }: Loose): UnusableVariation | undefined {
  if (!isRecord(figures)) return unusable(`${path}.figures`, figures, 'a record of spec paths and what they take on');
  for (const [inner, each] of Object.entries(figures)) {
    const refused = isRecord(each) ? figuresRefusal(inner, each) : unusable(inner, each, 'levels or a range');
    if (refused !== undefined) return refused;
  }
  return undefined;
}

function variationRefusal(path: string, variation: unknown): UnusableVariation | undefined {
  if (!isRecord(variation)) return unusable(path, variation, 'levels, a range, a distribution or alternatives');
  switch (variation['kind']) {
    case 'alternatives':
      return alternativesRefusal(path, variation);
    case 'added':
      return addedRefusal(path, variation);
    case 'linked':
      return linkedRefusal(path, variation);
    default:
      return figuresRefusal(path, variation);
  }
}

/** The first thing in a plan that is not what its type says; `undefined` when all is. The spec itself is read later. */
export function planRefusal(plan: unknown): UnusableVariation | undefined {
  if (!isRecord(plan)) return unusable('plan', plan, 'a record with base, vary and design');
  const { vary, design, measure, onProgress, onEnd, signal } = plan;
  if (!isRecord(vary)) return unusable('vary', vary, 'a record of spec paths and what they take on');
  for (const [path, variation] of Object.entries(vary)) {
    const refused = variationRefusal(path, variation);
    if (refused !== undefined) return refused;
  }
  if (!isRecord(design)) return unusable('design', design, `a record with its kind: ${designs.join(', ')}`);
  if (typeof design['kind'] !== 'string' || !designs.includes(design['kind']))
    return unusable('design.kind', design['kind'], designs.join(', '));
  for (const [name, call] of Object.entries({ measure, onProgress, onEnd }))
    if (call !== undefined && typeof call !== 'function') return unusable(name, call, 'a function, or nothing');
  return signal === undefined || isSignal(signal)
    ? undefined
    : unusable('signal', signal, 'an AbortSignal, or nothing');
}

const isSignal = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && typeof (value as Loose)['aborted'] === 'boolean';
