/** Remedies as buttons: each says what it does, does it, and can be undone. */

import { isLeft } from 'fp-ts/lib/Either.js';
import { type Changes, type Remedies, remedies } from '../../src/choose/index.js';
import { wordsFor } from '../../src/errors.js';
import type { SpecInput } from '../../src/spec/index.js';
import { byId, fill, h } from './dom.js';
import { textFor } from './spec-of.js';

/** Takes the changes of a remedy. */
export type Apply = (edits: Readonly<Record<string, string>>) => void;

const editsOf = (changes: Changes): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(changes).map(([path, value]) => [path, textFor(value)]));

const button = (says: string, changes: Changes, apply: Apply): HTMLElement => {
  const made = h('button', { type: 'button' }, says);
  made.addEventListener('click', () => apply(editsOf(changes)));
  return h('p', {}, made);
};

function proposals(
  { isWithin, anyhow, anyhowChanges, single, together }: Remedies,
  apply: Apply,
): readonly HTMLElement[] {
  if (isWithin) return [h('p', {}, 'Nothing needs putting right.')];
  const all = [...single, ...together];
  const also = anyhow.map(({ says }) => says);
  if (all.length === 0 && also.length === 0) return [h('p', {}, 'Nothing that was tried puts it right.')];
  if (all.length === 0) return [h('p', {}, 'In any case:'), button(also.join('; and '), anyhowChanges, apply)];
  return all.map(({ steps, changes }) =>
    button([...steps.map(({ says }) => says), ...also].join('; and '), changes, apply),
  );
}

/** Asks for remedies and lists them. */
export function showRemedies(spec: unknown, apply: Apply): void {
  const found = remedies(spec as SpecInput);
  fill(byId('proposals'), ...(isLeft(found) ? [h('p', {}, wordsFor(found.left))] : proposals(found.right, apply)));
}

/** Proposals for another state than the one that is shown are taken away. */
export const forgetRemedies = (): void => fill(byId('proposals'));
