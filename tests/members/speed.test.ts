/** A frame of 60 members with its working, against the same sum written by hand in decimal.js. The ratio is printed. */
import { Decimal } from 'decimal.js';
import { expect, it } from 'vitest';
import { frameWeight, type Member, section } from '../../src/members/index.js';
import { inch, ratio } from '../../src/units/index.js';
import { answer } from '../helpers/answers.js';

const Exact = Decimal.clone({ defaults: true, precision: 34 });
const members = ['C6x8.2', 'C3x4.1', 'W8x10', 'L2x2x1/4', 'HSS 3x2x3/16'].map((name) => answer(section(name)));
const list = Array.from({ length: 60 }, (_, i) => ({ name: `member ${i}`, member: members[i % 5] as Member, length: inch(60 + i), count: ratio(2), from: inch(10 * i) }));
const bare = list.map(({ member, length, from }) => ({ w: new Exact(member.weightPerFoot.value.value.toFixed()), l: new Exact(length.value.toFixed()), from: new Exact(from.value.toFixed()) }));

function byHand(): Decimal {
  let total = new Exact(0);
  let moment = new Exact(0);
  for (const { w, l, from } of bare) {
    const weight = w.times(l.div(12)).times(2);
    total = total.plus(weight);
    moment = moment.plus(weight.times(from.plus(l.div(2))));
  }
  return moment.isZero() ? moment : total;
}

/** Milliseconds for 50 rounds, the best of seven. */
function best(work: () => unknown): number {
  const times = Array.from({ length: 7 }, () => {
    const start = performance.now();
    for (let i = 0; i < 50; i += 1) work();
    return performance.now() - start;
  });
  return Math.min(...times);
}

it('weighs the same, within a small multiple of the time', () => {
  expect(answer(frameWeight(list)).total.value.value.toFixed(20)).toBe(byHand().toFixed(20));
  const share = best(() => frameWeight(list)) / best(byHand);
  console.info(`frame of 60 members: ${share.toFixed(1)} times the sum by hand`);
  expect(share).toBeLessThan(20);
});
