/** Weights of cut lists. All trailers are invented. */
import { describe, expect, it } from 'vitest';
import { type CutLine, frameWeight, publishedSection } from '../../../src/members/index.js';
import { given } from '../../../src/trace/index.js';
import { foot, inch, lb, ratio, show } from '../../../src/units/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { cross } from '../../helpers/spaced-line.js';
import { expectReplays } from '../../helpers/working.js';

const c6 = rightOf(publishedSection('C6x8.2'));

describe('frame weight', () => {
  const list: readonly CutLine[] = [
    { name: 'rails', member: c6, length: foot(20), count: ratio(2), from: inch(48) },
    { name: 'header', member: c6, length: inch(83), count: ratio(1), at: inch(49) },
    cross,
    { name: 'coupler', weight: lb(35), at: inch(4) },
  ];
  it('weighs each line at its place and adds them up', () => {
    const frame = rightOf(frameWeight(list));
    expect(frame.lines.map(({ name, at }) => `${name} ${show(at.value)}`)).toEqual([
      'rails 168 in',
      'header 49 in',
      'crossmembers 164 in',
      'coupler 4 in',
    ]);
    expect(frame.lines.map(({ weight }) => plain(weight).toFixed(3))).toEqual([
      '328.000',
      '56.717',
      '397.017',
      '35.000',
    ]);
    expect(plain(frame.total)).toBeCloseTo(328 + (8.2 * 83) / 12 + (14 * 4.1 * 83) / 12 + 35, 10);
    expectReplays(frame.total, ...frame.lines.map(({ at }) => at), ...frame.lines.map(({ weight }) => weight));
  });
  it('hands on what it compared, the count of pieces at a spacing too', () => {
    const compared = (line: CutLine) => rightOf(frameWeight([line])).decisions.map(({ left }) => left.symbol);
    expect(compared(cross)).toEqual([
      'crossmembers length',
      'crossmembers spacing',
      'crossmembers run',
      'number of crossmembers',
    ]);
    expect(compared({ name: 'coupler', weight: lb(35), at: inch(4) })).toEqual(['coupler weight']);
  });
  it('keeps the spec paths of its lengths', () => {
    const length = given('rail length', foot(20), 'stated', 'trailer.curb.frame.0.length');
    const frame = rightOf(frameWeight([{ name: 'rails', member: c6, length, count: ratio(2), from: inch(48) }]));
    expect(JSON.stringify(frame.total.why)).toContain('trailer.curb.frame.0.length');
  });
  it.each<[string, CutLine, object]>([
    [
      'a negative spacing',
      { ...cross, spacing: inch(-16) },
      { tag: 'OutsideItsRange', what: 'crossmembers spacing', path: '0' },
    ],
    ['a spacing of zero', { ...cross, spacing: inch(0) }, { tag: 'OutsideItsRange', what: 'crossmembers spacing' }],
    ['a run of zero', { ...cross, over: inch(0) }, { tag: 'OutsideItsRange', what: 'crossmembers run' }],
    [
      'no piece between two ends',
      { ...cross, over: inch(16), rule: 'none at either end' },
      { tag: 'OutsideItsRange', what: 'number of crossmembers' },
    ],
    [
      'a length of zero',
      { name: 'rail', member: c6, length: inch(0), count: ratio(2), from: inch(0) },
      { tag: 'OutsideItsRange', what: 'rail length' },
    ],
    [
      'half a piece',
      { name: 'rail', member: c6, length: inch(9), count: ratio('1.5'), from: inch(0) },
      { tag: 'NotAWholeCount', what: 'number of rail' },
    ],
    [
      'a weight of nothing',
      { name: 'coupler', weight: lb(0), at: inch(0) },
      { tag: 'OutsideItsRange', what: 'coupler weight' },
    ],
  ])('refuses %s', (_, line, error) => expect(leftOf(frameWeight([line]))).toMatchObject(error));
  it('refuses an empty list, and a broken line says which it is by its path', () => {
    expect(leftOf(frameWeight([]))).toMatchObject({ tag: 'NothingListed' });
    const length = given('rail length', foot(-1), 'stated', 'frame.7.length');
    expect(leftOf(frameWeight([{ name: 'rail', member: c6, length, count: ratio(1), from: inch(0) }]))).toMatchObject({
      path: 'frame.7.length',
    });
  });
});
