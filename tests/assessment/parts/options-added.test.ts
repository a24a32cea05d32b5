/** Options on a weighed trailer, axles moved together, and what is wider than the deck. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { show } from '../../../src/units/index.js';
import { plain, rightOf } from '../../helpers/either.js';

const axles = [184, 216].map((at) => ({ at: `${at} in`, gawr: '7,000 lb' }));
const run = (trailer: object, rest: object = {}): Assessment =>
  rightOf(
    assessJson({
      trailer: {
        hitch: 'ball',
        gvwr: '14,000 lb',
        sharing: 'equalised',
        axles,
        curb: { weight: '3,600 lb', tongue: '500 lb' },
        ...trailer,
      },
      ...rest,
    }),
  );
const noted = ({ notes }: Assessment): readonly string[] => notes.map(({ tag }) => tag);

describe('options on a weighed trailer (statics)', () => {
  const added = [{ name: 'winch', weight: '80 lb', at: '40 in' }];
  it('add their weight, and their share of it to the tongue: 80 x (200 - 40) / 200 = 64 lb', () => {
    const answer = run({ curb: { weight: '3,600 lb', tongue: '500 lb', added } });
    expect([plain(answer.weights.curb!), plain(answer.weights.balance!.tongue)]).toEqual([3680, 564]);
    const told = answer.notes.find(({ tag }) => tag === 'OptionsAdded');
    expect(told?.figures?.map(({ why, value }) => `${why.symbol} ${show(value)}`)).toEqual([
      'trailer weight 3,600 lb',
      'trailer weight with options 3,680 lb',
      'trailer tongue load 500 lb',
      'trailer tongue load with options 564 lb',
    ]);
  });
  it('move the place at which a trailer that is built up acts', () => {
    const items = [{ name: 'frame', weight: '3,000 lb', at: '190 in' }];
    const { weights } = run({ curb: { items, added } });
    // 3,000 (1 - 190 / 200) + 80 (1 - 40 / 200)
    expect(plain(weights.curb!)).toBe(3080);
    expect(plain(weights.balance!.tongue)).toBeCloseTo(150 + 64, 9);
  });
  it('hand on whether a capacity figure is shown, and whether they are more than the line', () => {
    const turned = (gvwr: string) =>
      run({ gvwr, curb: { weight: '3,600 lb', tongue: '500 lb', added } }).decisions.flatMap(
        ({ left, comparison, right, holds }) =>
          right.symbol?.startsWith('line of weight added') === true || right.symbol === 'added weight limit'
            ? [`${show(left.value)} ${comparison} ${show(right.value)}: ${holds}`]
            : [],
      );
    expect(turned('10,001 lb')).toEqual(['10,001 lb <= 10,000 lb: false']);
    expect(turned('10,000 lb')).toEqual(['10,000 lb <= 10,000 lb: true', '80 lb > 100 lb: false']);
  });
  it('of more than 100 lb meet the line of the label rule, on a trailer that shows a capacity figure (GVWR up to 10,000 lb)', () => {
    const of = (weight: string, gvwr: string) =>
      noted(run({ gvwr, curb: { weight: '3,600 lb', tongue: '500 lb', added: [{ ...added[0], weight }] } }));
    const asked = [of('100 lb', '10,000 lb'), of('101 lb', '10,000 lb'), of('101 lb', '10,001 lb')];
    const lines = asked.map((tags) => tags.filter((tag) => /LabelLine$/.test(tag)).join());
    expect(lines).toEqual(['AddedWithinLabelLine', 'AddedAboveLabelLine', '']);
    const within = run({ gvwr: '5,000 lb', curb: { weight: '2,000 lb', tongue: '300 lb', added } }).notes;
    const line = within.find(({ tag }) => tag === 'AddedAboveLabelLine');
    // 80 lb against 1.5 % of 5,000 lb = 75 lb
    expect(line?.figures?.map(({ value }) => show(value))).toEqual(['80 lb', '75 lb']);
  });
  it('take their weight off the payload', () => {
    const payload = (answer: Assessment): number => plain(answer.payload!.best!.weight);
    const without = payload(run({}));
    expect(without - payload(run({ curb: { weight: '3,600 lb', tongue: '500 lb', added } }))).toBeCloseTo(80, 10);
  });
});

describe('all axles moved together (statics)', () => {
  it('stand about their new middle; the trailer acts where it did: 3,600 lb at 172.22 in', () => {
    const answer = run({ axleGroup: { at: '210 in' } });
    expect(plain(answer.runningGear.group!.at)).toBe(210);
    expect(plain(answer.weights.balance!.tongue)).toBeCloseTo(3600 - (3600 * (200 * (3600 - 500))) / 3600 / 210, 8);
    expect(noted(answer)).toContain('AxlesMovedUnderWeighedTongue');
  });
  it('to where they are change nothing', () => {
    const answer = run({ axleGroup: { at: '200 in' } });
    expect(plain(answer.weights.balance!.tongue)).toBeCloseTo(500, 10);
  });
});

describe('the width of a piece', () => {
  const of = (deck: object, width: string): readonly string[] =>
    run(
      { deck: { front: '20 in', rear: '260 in', ...deck } },
      { cargo: [{ name: 'loader', weight: '900 lb', at: '150 in', width }] },
    ).attention.map(({ tag }) => tag);
  it('is held against the deck and the room between the fenders', () => {
    expect(of({ width: '82 in' }, '82 in')).not.toContain('PieceTooWide');
    expect(of({ width: '82 in' }, '83 in')).toContain('PieceTooWide');
    expect(of({ betweenFenders: '80 in' }, '81 in')).toContain('PieceTooWide');
    expect(of({ betweenFenders: '80 in', overFenders: true }, '81 in')).not.toContain('PieceTooWide');
  });
});
