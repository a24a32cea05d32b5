import { describe, expect, it } from 'vitest';
import { auditSheet } from '../../src/choose/index.js';
import { sheetText } from '../../src/print/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { proveSheets } from '../proofs/sheet.js';

describe('auditSheet', () => {
  it('raises no alarm over sheets that agree; finds every planted error, in smallest sets that all hold it', () => {
    const { figures, against } = proveSheets(500, 41);
    expect(against).toEqual([]);
    expect(figures['of them without alarm']).toBe(500);
    expect(figures['of them found, smallest sets only']).toBe(500);
  });

  it('answers the question of the counter: 14,000, 3,650 and 10,500', () => {
    const { conflicts } = rightOf(auditSheet({ gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,500 lb' }));
    expect(conflicts.map(({ arithmetic }) => arithmetic)).toEqual([
      [
        'empty weight and payload make the GVWR: empty weight 3,650 lb + payload 10,500 lb = 14,150 lb must be GVWR 14,000 lb',
      ],
    ]);
    const agrees = auditSheet({ gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,350 lb' });
    expect(rightOf(agrees).conflicts).toEqual([]);
  });
  it('joins relations: no GVWR is printed, and empty weight with payload is more than the axles bear', () => {
    const { conflicts } = rightOf(
      auditSheet({ emptyWeight: '3,650 lb', payload: '10,500 lb', axles: ['5,200 lb', '5,200 lb'] }),
    );
    expect(conflicts[0]?.figures.map(({ path }) => path)).toEqual(['emptyWeight', 'payload', 'axles.0', 'axles.1']);
  });
  it('finds an empty weight above the GVWR', () => {
    const { conflicts } = rightOf(auditSheet({ gvwr: '3,000 lb', emptyWeight: '3,650 lb', coupler: '5,000 lb' }));
    expect(conflicts[0]?.figures.map(({ path }) => path)).toEqual(['gvwr', 'emptyWeight']);
  });
  it('takes what is not printed for nothing at the least, and not for less', () => {
    // 3,001.5 lb at the least against 3,000.5 lb at the most, and no payload is below zero.
    expect(
      rightOf(auditSheet({ gvwr: '3,000 lb', emptyWeight: '3,002 lb', coupler: '5,000 lb' })).conflicts,
    ).toHaveLength(1);
    expect(rightOf(auditSheet({ gvwr: '3,000 lb', emptyWeight: '3,001 lb', coupler: '5,000 lb' })).conflicts).toEqual(
      [],
    );
  });
  it('lists the smallest sets first', () => {
    const sheet = { gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,500 lb', coupler: '12,500 lb' };
    expect(rightOf(auditSheet(sheet)).conflicts.map(({ figures }) => figures.length)).toEqual([2, 3, 3]);
  });
  it('prints a conflict with its arithmetic', () => {
    const text = sheetText(rightOf(auditSheet({ gvwr: '14,000 lb', coupler: '12,500 lb' })));
    expect(text).toContain('cannot all be true: GVWR 14,000 lb, coupler gross rating 12,500 lb');
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
  it.each([
    [{ gvwr: '14,000 lb', emptyWeight: '3,650 lb' }, 'NothingToAnswer'],
    [{}, 'NothingToAnswer'],
    [{ gvwr: '14,000', payload: '9,000 lb', emptyWeight: '5,000 lb' }, 'UnusableFigure'],
    [{ gvwr: '20 ft' }, 'UnusableFigure'],
    [{ gvwr: { text: '14,000 lb', rounding: '-5 lb' } }, 'UnusableFigure'],
    [{ gvwr: '14,000 lb', tongueShareMost: '130 %' }, 'UnusableFigure'],
  ])('refuses %j', (sheet, tag) => expect(leftOf(auditSheet(sheet)).tag).toBe(tag));
});
