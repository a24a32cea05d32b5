/** What is wrong with a plan that types did not check: JSON from elsewhere, a program without types. */
import { aRecord, byKind, type Form, here, inShort, is, isRecord, oneOf, recordOf } from '../../units/internal.js';
import type { UnusableVariation } from '../errors.js';

/** What stands at a place, and what must stand there. */
export const unusable = (path: string, found: unknown, needed: string): UnusableVariation => ({
  chapter: 'study',
  tag: 'UnusableVariation',
  path,
  found: inShort(found),
  needed,
});

const areTexts = (value: unknown): boolean => Array.isArray(value) && value.every((text) => typeof text === 'string');
const textsOf = (count: number): Form =>
  here({
    figures: is(`${count} figures as text`, (value) => areTexts(value) && (value as unknown[]).length === count),
  });

const figure = is('a figure as text', (value) => typeof value === 'string');
const figureKinds = {
  levels: here({ texts: is('a list of figures as text', areTexts) }),
  range: here({
    from: figure,
    to: figure,
    count: is('a whole number of levels', (value) => typeof value === 'number'),
  }),
  chance: byKind(
    'shape',
    { uniform: textsOf(2), triangular: textsOf(3), normal: textsOf(2) },
    here({ shape: is('uniform, triangular or normal', () => false) }),
  ),
};

const otherKind = here({
  kind: is('levels, a range, a distribution, linked figures, added options or alternatives', () => false),
});
/** What is told of a variation that is none of these kinds: no record at all, or a record of another kind. */
const noneOf = (needed: string): Form => {
  const record = is(needed, isRecord);
  return (value, path) => record(value, path) ?? otherKind(value, path);
};

const variation = byKind(
  'kind',
  {
    ...figureKinds,
    alternatives: aRecord({
      choices: recordOf(is('a record of spec paths and what stands there', isRecord), 'a record of named alternatives'),
    }),
    added: aRecord({
      options: recordOf(is('an option with its weight and its place', isRecord), 'a record of named options'),
    }),
    linked: aRecord({
      figures: recordOf(
        byKind('kind', figureKinds, noneOf('levels or a range')),
        'a record of spec paths and what they take on',
        (_, key) => key,
      ),
    }),
  },
  noneOf('levels, a range, a distribution or alternatives'),
);

const designs = ['grid', 'one at a time', 'latin hypercube', 'monte carlo'];
const call = is('a function, or nothing', (value) => typeof value === 'function');

/** A plan; the spec itself is read later. */
const planForm = aRecord(
  {
    vary: recordOf(variation, 'a record of spec paths and what they take on', (_, key) => key),
    design: aRecord({ kind: oneOf(designs, designs.join(', ')) }, {}, `a record with its kind: ${designs.join(', ')}`),
  },
  {
    measure: call,
    onProgress: call,
    onEnd: call,
    signal: is('an AbortSignal, or nothing', isSignal),
  },
  'a record with base, vary and design',
);

/** An AbortSignal keeps `aborted` on its prototype. */
function isSignal(value: unknown): boolean {
  return isRecord(value) && typeof value['aborted'] === 'boolean';
}

/** The first thing in a plan that is not what its type says; `undefined` when all is. The spec itself is read later. */
export function planRefusal(plan: unknown): UnusableVariation | undefined {
  const misfit = planForm(plan, '');
  return (
    misfit && { chapter: 'study', tag: 'UnusableVariation', ...misfit, path: misfit.path === '' ? 'plan' : misfit.path }
  );
}
