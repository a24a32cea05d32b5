/** The weakest part of a tiedown says what it may pull. */
import { describe, expect, it } from 'vitest';
import { tiedownWll } from '../../../src/load/index.js';
import { lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const tags = (notes: readonly { tag: string }[]): string[] => notes.map(({ tag }) => tag);

describe('tiedownWll', () => {
  it('lets a marking outrank the table, and says that they differ', () => {
    const marked = rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: '70', marked: lb(6000) }]));
    expect([show(marked.wll.value), tags(marked.notes)]).toEqual(['6,000 lb', ['MarkingDiffersFromTable']]);
    expect(rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: '70', marked: lb(6600) }])).notes).toEqual([]);
  });
  it('needs no table row for marked gear', () => {
    expect(show(rightOf(tiedownWll([{ part: 'webbing', width: '5', marked: lb(5000) }])).wll.value)).toBe('5,000 lb');
  });
  it('names every weakest part', () => {
    const tied = rightOf(
      tiedownWll([
        { part: 'webbing', width: '3' },
        { part: 'wire rope', diameter: '3/8' },
        { part: 'chain', size: '1/4', grade: 'unmarked', marked: lb(4000) },
      ]),
    );
    expect(tied.weakest).toEqual(['3 in webbing', '3/8 in wire rope']);
  });
  it('says when chain is taken as grade 30', () => {
    expect(tags(rightOf(tiedownWll([{ part: 'chain', size: '3/8', grade: 'unmarked' }])).notes)).toEqual([
      'UnmarkedChain',
    ]);
  });
  it('refuses no parts, a marking of nothing, an unprinted size', () => {
    expect(leftOf(tiedownWll([])).tag).toBe('NothingGiven');
    expect(leftOf(tiedownWll([{ part: 'other', name: 'binder', marked: lb(0) }])).tag).toBe('OutsideItsRange');
    expect(leftOf(tiedownWll([{ part: 'chain', size: '9/32', grade: '70' }])).tag).toBe('NotTabulated');
  });
});
