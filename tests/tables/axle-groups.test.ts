/**
 * 67 Pa. Code 185.3, axle weights for registered weights over 73,280 lb: 106 printed cells, length in ft and limit in lb.
 * `t` marks a cell whose unrounded figure is exactly halfway (this table rounds those up), `x` one that prints the two-tandem
 * exception. The cells at 8 ft mean a little more than 8 ft: at 8 ft or less the group is a tandem.
 */
import { isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { axleGroupLimit, type AxleGroupLimit, type TieRule } from '../../src/rules/index.js';
import { foot, type Quantity, show } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';

const printed: Readonly<Record<number, string>> = {
  2: `5:35000 6:36000 7:37000 8:38000 9:39000 10:40000`,
  3: `8:42000 9:43000t 10:43500 12:45000 13:46000t 15:47500t 16:48000 17:49000t 18:49500 19:50500t 21:52000t 22:52500
    23:53500t 24:54000 26:55500 27:56500t 28:57000 29:58000t 30:58500 31:59500t`,
  4: `12:50000 13:50500 15:52000 16:52500 18:54000 19:54500 20:55500 21:56000 23:57500 24:58000 25:58500 27:60000
    30:62000 31:62500 32:63500 33:64000 34:64500 36:68000x 37:68000x 38:68000x 39:68000 42:70000 43:70500 45:72000`,
  5: `16:58000 18:59500t 19:60000 20:60500 21:61000 22:62000t 23:62500 24:63000 27:65000 28:65500 30:67000t 31:67500
    33:68500 34:69500t 36:70500 37:71000 38:72000t 39:72500 40:73000 41:73500 42:74500t 43:75000 44:75500 45:76000
    46:77000t 47:77500`,
  6: `20:66000 22:67000 24:68500 25:69000 26:69500 27:70000 28:71000 29:71500 30:72000 31:72500 32:73000 33:74000
    34:74500 35:75000 36:75500 37:76000 38:77000 39:77500 40:78000 41:78500 43:80000`,
  7: `24:74000 25:74500 26:75000 27:76000t 28:76500 29:77000 30:77500 31:78000 32:78500`,
};

interface Cell { axles: number; length: number; limit: string; tie: boolean; exception: boolean }
const cells: readonly Cell[] = Object.entries(printed).flatMap(([axles, row]) => row.split(/\s+/).map((cell) => {
  const [, length = '', limit = '', marks = ''] = /^(\d+):(\d+)([tx]*)$/.exec(cell) ?? [];
  return { axles: Number(axles), length: Number(length), limit, tie: marks.includes('t'), exception: marks.includes('x') };
}));

const ask = ({ axles, exception }: Cell, length: Quantity<'ft'>, tie: TieRule): AxleGroupLimit => {
  const answer = axleGroupLimit({ count: axles, length, twoTandems: exception }, { tie, lengthRounding: 'none' });
  if (!isRight(answer)) throw new Error('refused');
  return answer.right;
};

describe('67 Pa. Code 185.3, cell by cell', () => {
  it('has 106 cells', () => {
    expect(cells.length).toBe(106);
    expect(cells.filter(({ tie }) => tie).length).toBe(18);
  });
  it.each(cells)('$axles axles, $length ft: $limit lb', (cell) => {
    const found = ask(cell, foot(cell.length), 'up');
    const lb = `${cell.limit} lb`.replace(/(\d)(?=(\d{3})+ )/g, '$1,');
    if (found.kind === 'tandem') {
      // Two axles at 5 to 8 ft, and the 8 ft column: the cap on a tandem stands below the printed formula figure.
      expect(cell.length).toBeLessThanOrEqual(8);
      expect(show(found.limit.value)).toBe('34,000 lb');
      expect(show((found.byFormula as NonNullable<typeof found.byFormula>).value)).toBe(lb);
    } else expect(show(found.limit.value)).toBe(lb);
    expectReplays(found.limit);
  });
  it.each(cells.filter(({ tie }) => tie))('$axles axles, $length ft is a tie: 500 lb less when ties go down', (cell) => {
    const [up, down] = [ask(cell, foot(cell.length), 'up'), ask(cell, foot(cell.length), 'down')].map(({ byFormula }) => Number(byFormula?.value.value.toFixed()));
    expect((up as number) - (down as number)).toBe(500);
  });
  it.each(cells.filter(({ tie, exception }) => !tie && !exception))('$axles axles, $length ft is no tie: both rules agree', (cell) => {
    expect(show(ask(cell, foot(cell.length), 'down').limit.value)).toBe(show(ask(cell, foot(cell.length), 'up').limit.value));
  });
});
