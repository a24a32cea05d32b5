/** What the axles and the coupler carry. */
import { describe, expect, it } from 'vitest';
import { balance, type Item } from '../../../src/load/index.js';
import { inch, lb, show, toWire } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { workingsIn } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

describe('balance', () => {
  const trailer: Item = { name: 'trailer', weight: lb(3200), tongue: lb(480) };
  const machine = (at: number): Item => ({ name: 'machine', weight: lb(9200), at: inch(at) });
  const axlesAt = inch(190);

  it('puts a machine on the axles and the coupler (case R1 of the notes, plain statics)', () => {
    const result = rightOf(balance([trailer, machine(171)], { axlesAt }));
    expectReplays(...workingsIn(result));
    expect([result.gross, result.tongue, result.axleLoad].map(({ value }) => show(value))).toEqual([
      '12,400 lb',
      '1,400 lb',
      '11,000 lb',
    ]);
    expect(result.lines.map(({ name, moment }) => [name, show(moment.value)])).toEqual([
      ['trailer', '516,800 lb·in'],
      ['machine', '1,573,200 lb·in'],
    ]);
    expect(result.tongueShare.value.value.times(12400).toDecimalPlaces(20).toNumber()).toBe(1400);
  });
  it('moves 48.42 lb to the tongue for an inch forward (case R1)', () => {
    const [here, ahead] = [171, 170].map(
      (at) => rightOf(balance([trailer, machine(at)], { axlesAt })).tongue.value.value,
    );
    expect(
      ahead
        ?.minus(here ?? 0)
        .toDecimalPlaces(2)
        .toNumber(),
    ).toBe(48.42);
  });
  it('of a machine over the axles leaves the tongue as it was', () => {
    expect(show(rightOf(balance([trailer, machine(190)], { axlesAt })).tongue.value)).toBe('480 lb');
  });
  it('answers a lifted tongue with a negative load: loading from the rear does that', () => {
    const result = rightOf(balance([trailer, machine(290)], { axlesAt }));
    expect(result.tongue.value.value.toDecimalPlaces(2).toNumber()).toBe(-4362.11);
    expect(result.axleLoad.value.value.gt(result.gross.value.value)).toBe(true);
  });
  it('takes a trailer all on its tongue, and refuses a tongue heavier than its trailer', () => {
    expect(show(rightOf(balance([{ ...trailer, tongue: lb(3200) }], { axlesAt })).axleLoad.value)).toBe('0 lb');
    expect(leftOf(balance([{ ...trailer, tongue: lb('3200.01') }], { axlesAt }))).toMatchObject({
      tag: 'TongueAboveWeight',
      of: 'trailer',
      weight: toWire(lb(3200)),
    });
  });
  it('needs axles behind the coupler', () => {
    expect(rightOf(balance([trailer], { axlesAt: inch('0.001') })).gross.value).toEqual(lb(3200));
    for (const at of [0, -1])
      expect(leftOf(balance([trailer], { axlesAt: inch(at) }))).toMatchObject({
        tag: 'AxlesNotBehindCoupler',
        axlesAt: toWire(inch(at)),
      });
  });
  it('needs a weight', () => {
    expect(leftOf(balance([], { axlesAt }))).toMatchObject({ tag: 'NothingWeighed' });
    expect(leftOf(balance([{ name: 'air', weight: lb(0), at: inch(10) }], { axlesAt }))).toMatchObject({
      tag: 'NothingWeighed',
      gross: toWire(lb(0)),
    });
  });
  it('hands back what it compared', () => {
    const { decisions } = rightOf(balance([trailer, machine(171)], { axlesAt }));
    expect(
      decisions.map(
        ({ left, comparison, right }) => `${left.symbol} ${comparison} ${right.symbol ?? right.value.value.toFixed()}`,
      ),
    ).toEqual(['axle position > 0', 'trailer tongue load <= trailer weight', 'gross weight > 0']);
  });
});
