/** Why: how a figure came about, where it is from, and what changes it most. */
import type { Check } from '../../src/ratings/index.js';
import { derivatives, explain, type Given } from '../../src/trace/index.js';
import { showBrief } from '../../src/units/index.js';
import { byId, fill, h } from './dom.js';

/** A step of each input that somebody might take: an inch, a hundred pounds. */
const stepOf = (unit: string): { readonly size: number; readonly words: string } => {
  switch (unit) {
    case 'in':
      return { size: 1, words: 'an inch' };
    case 'lb':
      return { size: 100, words: '100 lb' };
    case 'kg':
      return { size: 50, words: '50 kg' };
    case 'ft':
      return { size: 1, words: 'a foot' };
    default:
      return { size: 1, words: `one ${unit}` };
  }
};

/** The three inputs that move what is left most, each by a step that somebody might take. */
function movers({ reserve }: Check): readonly string[] {
  return derivatives(reserve)
    .slopes.flatMap(({ leaf, slope }) => {
      if (leaf.kind !== 'given') return [];
      const { size, words } = stepOf(leaf.value.unit);
      return [{ leaf: leaf as Given, words, by: slope.toNumber() * size }];
    })
    .sort((a, b) => Math.abs(b.by) - Math.abs(a.by))
    .slice(0, 3)
    .map(
      ({ leaf, words, by }) =>
        `${words} more at ${leaf.symbol}: ${by < 0 ? 'takes' : 'gives'} ${Math.abs(by).toFixed(1)} lb`,
    );
}

/** Opens the drawer for a check. */
export function showWhy(check: Check): void {
  const drawer = byId('why');
  fill(
    byId('why-text'),
    h('h3', {}, check.what),
    h('p', {}, `${check.verdict === 'over' ? 'Over' : 'Within'}: ${showBrief(check.reserve.value)} left.`),
    h('h4', {}, 'What changes it most'),
    h('ul', {}, ...movers(check).map((line) => h('li', {}, line))),
    h('h4', {}, 'Working'),
    h('pre', { tabindex: '0', role: 'region', 'aria-label': `Working of ${check.what}` }, explain(check.reserve)),
  );
  drawer.removeAttribute('hidden');
}

/** Shows the working of the same check after a change. */
export function followWhy(checks: readonly Check[], id: string | undefined): void {
  const check = checks.find((each) => each.id === id);
  if (check !== undefined && !byId('why').hasAttribute('hidden')) showWhy(check);
}
