/** The answer on the page: verdict, first page, figures, the table of all checks. */
import type { Assessment } from '../../src/assessment/index.js';
import {
  lengthsFrom,
  payloadByLength,
  payloadByShare,
  placementBar,
  ratingBars,
  sharesFrom,
  sideView,
} from '../../src/figures/index.js';
import { convert, kg, lb, type Quantity, roundCapacityDown, roundLoadUp, show } from '../../src/units/index.js';
import { byId, figure, fill, h } from './dom.js';
import { drawInto } from './drawn-later.js';
import { briefFor, type Told } from './words.js';

type Units = 'us' | 'metric';

const verdicts = {
  over: 'Over',
  attention: 'Attention',
  within: 'Within',
  unchecked: 'Unchecked',
} as const;

const loadText = (load: Quantity<'lb'>, units: Units): string =>
  show(units === 'metric' ? roundLoadUp(convert(load, 'kg'), kg(1)) : roundLoadUp(load, lb(1)));
const capacityText = (limit: Quantity<'lb'>, units: Units): string =>
  show(units === 'metric' ? roundCapacityDown(convert(limit, 'kg'), kg(1)) : roundCapacityDown(limit, lb(1)));

/** Widths of the places, asked once: to ask makes the browser lay the page out. */
let widths = new WeakMap<HTMLElement, number>();

/** The page has another width: ask again. */
export const forgetWidths = (): void => {
  widths = new WeakMap();
};

/** Width to draw for: that of the element a figure is in. */
function widthOf(place: HTMLElement): number {
  const known = widths.get(place);
  if (known !== undefined) return known;
  const wide = place.clientWidth;
  if (wide > 0) widths.set(place, Math.max(320, wide));
  return Math.max(320, wide || 640);
}

/** A figure in its place, drawn for the width it has there. */
function put(id: string, draw: (width: number) => string): void {
  const place = byId(id);
  drawInto(place, () => fill(place, figure(draw(widthOf(place)))));
}

/** The table behind the bars: every check with its figures and a button that asks why. */
function table({ checks }: Assessment, units: Units): readonly HTMLElement[] {
  return checks.map(({ id, what, load, limit, reserve, verdict }) =>
    h(
      'tr',
      {},
      h('th', { scope: 'row' }, what),
      h('td', {}, loadText(load.value, units)),
      h('td', {}, capacityText(limit.value, units)),
      h('td', {}, capacityText(reserve.value, units)),
      h('td', {}, verdict),
      h('td', {}, h('button', { type: 'button', 'data-why': id, 'aria-label': `why: ${what}` }, 'why')),
    ),
  );
}

/** The verdict in a line: for the heading, and for the region that reads it aloud. */
function verdictLine({ verdict }: Assessment, told: readonly Told[]): string {
  const first = told.find(({ label }) => label === 'Verdict')?.items.join('; ') ?? '';
  return `${verdicts[verdict]}: ${first.replace(/^[A-Z]+: /, '').replace(/:$/, '')}`;
}

/** The table is written when it is looked at. */
export function showTable(assessment: Assessment, units: Units): void {
  if (byId('checks').hasAttribute('open')) fill(byId('table'), ...table(assessment, units));
}

/** Everything that follows from an assessment; gives back the verdict in a line. */
export function showAnswer(assessment: Assessment, units: Units): string {
  const told = briefFor(assessment, units);
  const line = verdictLine(assessment, told);
  byId('answer').dataset['verdict'] = assessment.verdict;
  byId('verdict').textContent = line;
  fill(
    byId('brief'),
    ...told
      .filter(({ label }) => label !== 'Verdict' && label !== 'Rules')
      .flatMap(({ label, items }) => [h('dt', {}, label), ...items.map((item) => h('dd', {}, item))]),
  );
  byId('rules').textContent = told.find(({ label }) => label === 'Rules')?.items.join('; ') ?? 'none that is known';
  put('side', (width) => sideView(assessment, { units, width, idPrefix: 'side' }));
  put('bars', (width) => ratingBars(assessment, { units, width, idPrefix: 'bars' }));
  const [shares, lengths] = [sharesFrom(assessment), lengthsFrom(assessment)];
  byId('carries').hidden = shares === undefined;
  if (shares !== undefined) put('shares', (width) => payloadByShare(shares, { units, width, idPrefix: 'shares' }));
  byId('longer').hidden = lengths === undefined;
  if (lengths !== undefined) put('lengths', (width) => payloadByLength(lengths, { units, width, idPrefix: 'lengths' }));
  put('place', (width) => placementBar(assessment, { units, width, idPrefix: 'place' }));
  showTable(assessment, units);
  return line;
}
