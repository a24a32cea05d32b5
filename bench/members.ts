/** A frame of 60 members weighed with its working, against the same sum written by hand in decimal.js without any. */
import { Decimal } from 'decimal.js';
import { orThrow } from '../dist/errors.js';
import { frameWeight, publishedSection } from '../dist/members.js';
import { inch, ratio } from '../dist/units.js';
import { compare } from './harness.js';

const Digits = Decimal.clone({ defaults: true, precision: 34 });
const [none, inchesInAFoot, two] = [new Digits(0), new Digits(12), new Digits(2)];

interface HandLine {
  readonly weight: Decimal;
  readonly at: Decimal;
}
interface HandPiece {
  readonly perFoot: Decimal;
  readonly length: Decimal;
  readonly count: Decimal;
  readonly from: Decimal;
}

const members = ['C6x8.2', 'C3x4.1', 'W8x10', 'L2x2x1/4', 'HSS 3x2x3/16'].map((name) =>
  orThrow(publishedSection(name)),
);
const list = Array.from({ length: 60 }, (_, i) => ({
  name: `member ${i + 1}`,
  member: members[i % 5]!,
  length: inch(60 + i),
  count: ratio(2),
  from: inch(10 * i),
}));
const pieces: readonly HandPiece[] = list.map(({ member, length, from }) => ({
  perFoot: new Digits(member.weightPerFoot.value.value.toFixed()),
  length: new Digits(length.value.toFixed()),
  count: two,
  from: new Digits(from.value.toFixed()),
}));

/** Each line's weight and place, and the total; refused where a length is not above zero or a count is not whole, as `frameWeight` does. */
function byHand(): { readonly lines: readonly HandLine[]; readonly total: Decimal } {
  let total = none;
  const lines = pieces.map(({ perFoot, length, count, from }) => {
    if (!length.gt(none) || !count.gt(none) || !count.isInteger())
      throw new RangeError('a length above zero and a whole count');
    const weight = perFoot.times(length.div(inchesInAFoot)).times(count);
    total = total.plus(weight);
    return { weight, at: from.plus(length.div(two)) };
  });
  return { lines, total };
}

export function benchMembers(): void {
  compare('A frame of 60 members: weight and place of each, and the total', [
    {
      name: 'decimal.js by hand, no working',
      run: () => {
        const { lines, total } = byHand();
        return [total.toNumber(), lines[59]!.weight.toNumber(), lines[59]!.at.toNumber()];
      },
    },
    {
      name: 'frameWeight, full working',
      run: () => {
        const { lines, total } = orThrow(frameWeight(list));
        return [total, lines[59]!.weight, lines[59]!.at].map(({ value }) => value.value.toNumber());
      },
    },
  ]);
}
