/** What a change costs a page that shows the answer: assess, first page and two figures, as a share of a frame at 60 Hz. */
import { readFileSync } from 'node:fs';
import { assessJson } from '../dist/assessment.js';
import { orThrow } from '../dist/errors.js';
import { ratingBars, sideView } from '../dist/figures.js';
import { brief } from '../dist/print.js';
import { cpuTime, judge, median } from './harness.js';

const frame = 1_000_000 / 60;
const spec = JSON.parse(readFileSync(new URL('../examples/tilt-deck.json', import.meta.url), 'utf8')) as {
  readonly cargo: readonly [object];
};

/** One change, as somebody who drags a machine makes it: another place, everything drawn anew. */
function change(step: number): number {
  const moved = { ...spec, cargo: [{ ...spec.cargo[0], front: `${120 + (step % 40) / 8} in` }] };
  const answer = orThrow(assessJson(moved));
  return brief(answer).length + sideView(answer).length + ratingBars(answer).length;
}

export function benchPage(): void {
  let drawn = 0;
  for (let i = 0; i < 200; i += 1) drawn += change(i);
  const each = Array.from({ length: 60 }, (_, i) => {
    const begun = cpuTime();
    drawn += change(i);
    return (cpuTime() - begun) / frame;
  });
  const share = median(each);
  console.log(
    `\nA change on the page: ${(100 * share).toFixed(0)} % of a frame at 60 Hz (median; ${drawn} letters drawn)`,
  );
  judge('a change on the page, recomputed and redrawn, in frames at 60 Hz', share, 1, ' frames');
}
