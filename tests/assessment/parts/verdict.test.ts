/** One verdict on the whole, and the parts that are weaker than the label. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const run = (...changes: readonly [string, unknown][]): Assessment =>
  rightOf(assessJson(changes.reduce<unknown>((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const tags = ({ attention }: Assessment): string[] => attention.map(({ tag }) => tag);

const axle = { gawr: '3,500 lb', beam: '3,500 lb' };
const light = { hitch: 'ball', gvwr: '2,900 lb', axles: [{ at: '120 in', ...axle }] };
const curb = { weight: '900 lb', tongue: '110 lb' };

describe('the verdict', () => {
  it('is unchecked when no load could be held against a rating, parts within the label or not', () => {
    expect(rightOf(assessJson({ trailer: light })).verdict).toBe('unchecked');
  });
  it('is within when all that was asked is within and nothing asks attention', () => {
    const answer = rightOf(assessJson({ trailer: { ...light, curb } }));
    expect([answer.verdict, answer.attention]).toEqual(['within', []]);
  });
  it('is attention when no rating is exceeded and something is not right', () => {
    const answer = rightOf(assessJson({ trailer: { ...light, gvwr: '3,001 lb', curb } }));
    expect([answer.verdict, tags(answer)]).toEqual(['attention', ['NoBrakesTold']]);
  });
  it('is over for a check, a part or a lift, whatever else asks attention', () => {
    expect(run(['cargo.0.weight', '12,000 lb']).verdict).toBe('over');
    const lifted = rightOf(
      assessJson({ trailer: { ...light, curb }, cargo: [{ name: 'crate', weight: '500 lb', at: '220 in' }] }),
    );
    expect([lifted.verdict, lifted.uplift.lifted.map(({ what }) => what)]).toEqual(['over', ['tongue']]);
  });
});

describe('parts below the label', () => {
  it.each([
    ['trailer.coupler.gross', '13,999 lb', 'CouplerBelowLabel'],
    ['trailer.chains', { each: '6,999 lb', count: 2 }, 'ChainsBelowLabel'],
    ['trailer.chains', { each: '13,999 lb', count: 1 }, 'ChainsBelowLabel'],
    ['tow.ball', { gross: '13,999 lb' }, 'BallBelowLabel'],
  ] as const)('%s of %j asks attention, and not at the label itself', (path, value, tag) => {
    const low = run(['trailer.gvwr', '14,000 lb'], [path, value]);
    expect(tags(low)).toContain(tag);
    const at = JSON.parse(JSON.stringify(value).replace('6,999', '7,000').replace('13,999', '14,000')) as unknown;
    expect(tags(run(['trailer.gvwr', '14,000 lb'], [path, at]))).not.toContain(tag);
  });
  it('names its figures and the keys of the spec', () => {
    const found = run(['trailer.gvwr', '14,000 lb'], ['trailer.coupler.gross', '12,500 lb']).attention.find(
      ({ tag }) => tag === 'CouplerBelowLabel',
    );
    expect(found?.paths).toEqual(['trailer.gvwr', 'trailer.coupler.gross']);
    expect(found?.figures?.map(({ value }) => value.value.toNumber())).toEqual([12500, 14000]);
  });
  it('asks the axles for what the label leaves them at the low end of the band', () => {
    // 2,901 lb at 10 percent leave the axle 2,610.9 lb.
    const of = (gawr: string): string[] => {
      const trailer = { ...light, gvwr: '2,901 lb', axles: [{ at: '120 in', gawr }], curb };
      return tags(rightOf(assessJson({ trailer })));
    };
    expect([of('2,610 lb'), of('2,611 lb')]).toEqual([['AxlesBelowLabel'], []]);
  });
  it('asks them so whatever share of the tongue is stated: the label speaks for every load', () => {
    const trailer = { ...light, gvwr: '2,901 lb', axles: [{ at: '120 in', gawr: '2,610 lb' }], curb };
    expect(tags(rightOf(assessJson({ trailer, tongueShare: '14 %' })))).toContain('AxlesBelowLabel');
  });
  it('says that GAWRs above the label grant nothing', () => {
    const notes = (gawr: string): string[] => {
      const axles = [100, 134].map((at) => ({ at: `${at} in`, gawr }));
      return rightOf(assessJson({ trailer: { ...light, axles } })).notes.map(({ tag }) => tag);
    };
    expect([notes('1,450 lb'), notes('1,451 lb')].map((all) => all.includes('SumOfGawrsGrantsNothing'))).toEqual([
      false,
      true,
    ]);
  });
});
