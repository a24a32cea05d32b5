/** How sure an answer is, in words for a page of 80 columns. */
import type { SureCheck, Sureness } from '../choose/index.js';
import { lb, roundCapacityDown, roundLoadUp, show } from '../units/index.js';
import { remark } from './text-layout.js';

const pound = lb(1);

const rangeOf = ({ least, most }: SureCheck): string =>
  `${show(roundCapacityDown(least, pound))} to ${show(roundLoadUp(most, pound))}`;

const heads: Readonly<Record<Sureness['sure'], string>> = {
  within: 'Sure: within, whatever the inputs are inside their tolerances.',
  over: 'Sure: over, whatever the inputs are inside their tolerances.',
  'not sure': 'Not sure: inside the tolerances of the inputs the answer can change.',
};

/** One line for the whole, one for each check that is not sure or over, and what to weigh next. At most `most` of each. @example surenessText(orThrow(sureness(orThrow(assess(spec))))).startsWith('Not sure') // true */
export function surenessText({ sure, checks, weighNext, complete }: Sureness, most = 3): string {
  const open = checks.filter((check) => check.sure !== 'within');
  const left = open.length - most;
  return [
    heads[sure],
    ...open
      .slice(0, most)
      .map((check) =>
        remark(
          `${check.sure === 'over' ? 'over' : 'not sure'}: ${check.what}, ${check.kind === 'rating' ? 'reserve' : 'load'} ${rangeOf(check)}`,
        ),
      ),
    ...(left > 0 ? [remark(`and ${left} more`)] : []),
    ...weighNext
      .slice(0, most)
      .map(({ symbol, path, amount, decides }, i) =>
        remark(
          `${i === 0 ? 'weigh or measure next' : 'then'}: ${symbol} (${path}), now good to ${amount}${decides.length > 0 ? `; it alone can settle ${decides.join(', ')}` : ''}`,
        ),
      ),
    ...(complete ? [] : [remark('Too many comparisons can turn: nothing is called sure.')]),
  ].join('\n');
}

/** The same in one sentence, for a first page. @example surenessItem(orThrow(sureness(orThrow(assess(spec))))).says.startsWith('not sure') // true */
export function surenessItem({ sure, checks, weighNext }: Sureness): { readonly says: string } {
  if (sure !== 'not sure') return { says: `${sure} for sure, whatever the inputs are inside their tolerances` };
  const open = checks.filter((check) => check.sure === 'not sure');
  const [first] = open;
  const next = weighNext[0];
  const named = first === undefined ? 'nothing could be asked' : `${first.what} (${rangeOf(first)})`;
  const more = open.length > 1 ? ` and ${open.length - 1} more` : '';
  return {
    says: `not sure: ${named}${more}${next === undefined ? '' : `; weigh or measure next: ${next.symbol} (${next.path})`}`,
  };
}
