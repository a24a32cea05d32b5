/** Which shares and reserves a block has to look at: equal ones once, and those that another is always above last. */
import { describe, expect, it } from 'vitest';
import {
  distinctReserves,
  distinctShares,
  type Guarded,
  isSettled,
  nameOfTie,
  ranked,
  type Share,
} from '../../../src/study/run/shares.js';
import type { Operand } from '../../../src/study/tape/steps.js';

const share = (place: number, at: Operand, more: Partial<Share> = {}): Share =>
  ({
    named: [{ place, name: `check ${place}` }],
    at,
    times: -1,
    plus: 1,
    line: undefined,
    ...more,
  }) as unknown as Share;
const names = (shares: readonly Share[]): readonly string[] => shares.map((each) => nameOfTie([each]));
const onColumn = (times: number, plus: number, column = 0) => ({ line: { column, times, plus } });

describe('equal checks', () => {
  it('are one share under all their names, by column and slope or by their number', () => {
    const found = distinctShares([
      share(0, { column: 3 }),
      share(1, { column: 4 }),
      share(2, { column: 3 }),
      share(3, { column: 3 }, { times: -2 }),
      share(4, { value: 3 }),
      share(5, { value: 3 }),
      share(6, { value: 4 }),
    ]);
    expect(names(found)).toEqual(['check 0 = check 2', 'check 1', 'check 3', 'check 4 = check 5', 'check 6']);
  });
  it('that tie are named in the order of the checks', () => {
    expect(nameOfTie([share(2, { column: 0 }), share(0, { column: 1 }), share(1, { column: 2 })])).toBe(
      'check 0 = check 1 = check 2',
    );
  });
  it('have one reserve a column', () => {
    const reserve = (at: Operand, edge: number): Guarded => ({ at, edge }) as unknown as Guarded;
    const all = [reserve({ column: 1 }, 1), reserve({ column: 2 }, 2), reserve({ column: 1 }, 3)];
    expect(distinctReserves(all).map(({ edge }) => edge)).toEqual([1, 2]);
  });
});

describe('a share that another is always above', () => {
  const order = (shares: readonly Share[], low = -10, high = 10) => {
    const found = ranked(shares, [{ column: 0, low, high }]);
    expect(found.names).toEqual(names(found.shares));
    return { first: found.names.slice(0, found.ranked), below: found.names.slice(found.ranked) };
  };
  const flat = share(0, { column: 1 }, onColumn(0, 0.5));
  const steep = share(1, { column: 2 }, onColumn(0.1, 0.4));
  it('comes last: on the column as far as its bounds go', () => {
    // 0.1 x + 0.4 is above 0.5 where x is above one.
    expect(order([flat, steep], 2, 9)).toEqual({ first: ['check 1'], below: ['check 0'] });
    expect(order([flat, steep], -9, 0)).toEqual({ first: ['check 0'], below: ['check 1'] });
    expect(order([flat, steep], 0, 9)).toEqual({ first: ['check 0', 'check 1'], below: [] });
    expect(order([flat, steep], 1, 9)).toEqual({ first: ['check 0', 'check 1'], below: [] });
  });
  it('may be a parallel of it; the same line is not', () => {
    const lower = share(2, { column: 3 }, onColumn(0.1, 0.3));
    const same = share(3, { column: 4 }, onColumn(0.1, 0.4 + 1e-13));
    expect(order([lower, steep])).toEqual({ first: ['check 1'], below: ['check 2'] });
    expect(order([steep, same])).toEqual({ first: ['check 1', 'check 3'], below: [] });
  });
  it('is on the same column: of others nothing is known', () => {
    const other = share(4, { column: 5 }, onColumn(0, 0.1, 1));
    const fixed = share(5, { value: 0.1 });
    expect(order([flat, other, fixed]).first).toEqual(['check 0', 'check 4', 'check 5']);
  });
});

it('a reserve is settled where its line is above zero between the bounds', () => {
  const settled = (times: number, plus: number, low: number): boolean =>
    isSettled(onColumn(times, plus) as unknown as Guarded, [{ column: 0, low, high: 9 }]);
  expect([settled(1, 0, 1), settled(1, 0, 0), settled(1, 0, -1), settled(-1, 10, 0), settled(-1, 9, 0)]).toEqual([
    true,
    false,
    false,
    true,
    false,
  ]);
  expect(isSettled({ line: undefined } as unknown as Guarded, [])).toBe(false);
});
