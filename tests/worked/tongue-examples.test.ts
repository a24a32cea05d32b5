/** Printed examples of tongue weight, reproduced by statics. */
import { describe, expect, it } from 'vitest';
import { balance } from '../../src/load/index.js';
import { convert, foot, inch, lb, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { workingsIn } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const percentOf = (
  balanced: { tongueShare: { value: Parameters<typeof convert<'ratio', '%'>>[0] } },
  places: number,
): number => convert(balanced.tongueShare.value, '%').value.toDecimalPlaces(places).toNumber();

describe("F1: a load at 88 in, axle at 100 in (trade magazine report of an engineer's talk, grade B)", () => {
  const balanced = rightOf(
    balance(
      [
        { name: 'trailer', weight: lb(800), tongue: lb(80) },
        { name: 'load', weight: lb(1700), at: inch(88) },
      ],
      { axlesAt: inch(100) },
    ),
  );
  it('puts 284 lb of 2,500 lb on the tongue, as printed', () => {
    expectReplays(...workingsIn(balanced));
    expect([show(balanced.gross.value), show(balanced.tongue.value)]).toEqual(['2,500 lb', '284 lb']);
  });
  it('is 11.36 percent: the 11.86 in print is a misprint, and we do not repeat it', () => {
    expect(percentOf(balanced, 2)).toBe(11.36);
    expect(percentOf(balanced, 2)).not.toBe(11.86);
  });
});

describe('F2: 100 lb hung 10 ft behind the axle (web example, grade C; percentage derived)', () => {
  it('lightens a tongue of 400 lb to 316.67 lb, and the share to 8.12 percent of 3,900 lb', () => {
    const axlesAt = foot(12);
    const balanced = rightOf(
      balance(
        [
          { name: 'trailer', weight: lb(3800), tongue: lb(400) },
          { name: 'item', weight: lb(100), at: foot(22) },
        ],
        { axlesAt },
      ),
    );
    expectReplays(...workingsIn(balanced));
    expect([
      show(balanced.gross.value),
      balanced.tongue.value.value.toDecimalPlaces(2).toNumber(),
      percentOf(balanced, 2),
    ]).toEqual(['3,900 lb', 316.67, 8.12]);
  });
});
