/** Why: how a figure was calculated, for a learner, with the inputs that change it most. */
import { lesson } from '../../src/print/index.js';
import type { Check } from '../../src/ratings/index.js';
import { byId, fill, h } from './dom.js';

/** Opens the drawer for a check. */
export function showWhy({ what, reserve, clause }: Check, units: 'us' | 'metric'): void {
  const text = lesson(reserve, { units, roundedAs: 'capacity', question: `How much is left: ${what}?` });
  fill(
    byId('why-text'),
    h('pre', { tabindex: '0', role: 'region', 'aria-label': `Working of ${what}` }, text),
    ...(clause === undefined ? [] : [h('p', { class: 'note' }, `The limit: ${clause.title}.`)]),
  );
  byId('why').removeAttribute('hidden');
}

/** Shows the working of the same check after a change. */
export function followWhy(checks: readonly Check[], id: string | undefined, units: 'us' | 'metric'): void {
  const check = checks.find((each) => each.id === id);
  if (check !== undefined && !byId('why').hasAttribute('hidden')) showWhy(check, units);
}
