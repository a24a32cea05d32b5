import { describe, expect, it } from 'vitest';
import { assessJson as assess } from '../../src/assessment/index.js';
import { boundsFrom } from '../../src/choose/index.js';
import { lb } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';
import { proveBounds } from '../proofs/bounds.js';

describe('boundsFrom', () => {
  it('never says anything definite that the whole spec contradicts', () => {
    const { figures, against } = proveBounds(40, 61);
    expect(against).toEqual([]);
    expect(figures.definite).toBeGreaterThan(40);
    expect(figures.depends).toBeGreaterThan(4);
  });

  const tires = { designation: 'ST225/75R15 LRD', count: 2, fitment: 'single', molded: { single: '2,540 lb' } };
  it('tells of a used trailer with four tires and a gross weight that the tires suffice, wherever it stands', () => {
    const spec = {
      trailer: { hitch: 'ball', axles: [{ tires }, { tires }], sharing: 'equalised', curb: { weight: '9,500 lb' } },
    };
    const { checks, unknown, ask } = rightOf(boundsFrom(spec));
    expect(rightOf(assess(spec)).checks).toEqual([]);
    expect(checks.map(({ id, answer }) => `${id}: ${answer}`)).toEqual([
      'axle-1/weakest-part: within',
      'axle-2/weakest-part: within',
      'axle-1/tire: within',
      'axle-2/tire: within',
      'presses/tongue: within',
      'presses/axle group: within',
    ]);
    // By hand: with nothing on the tongue each of four tires carries 9,500 / 4 = 2,375 lb of 2,540 lb.
    expect(checks.find(({ id }) => id === 'axle-1/tire')!.least.value.toNumber()).toBeCloseTo(165, 5);
    expect(unknown.map(({ path }) => path)).toContain('trailer.curb.tongue');
    expect(ask).toBeUndefined();
  });
  it('names the one question where it depends', () => {
    const { front: _front, ...piece } = (tiltDeck().cargo as unknown as [Record<string, unknown>])[0];
    const { checks, ask } = rightOf(boundsFrom(changed(tiltDeck(), 'cargo.0', piece)));
    expect(checks.find(({ id }) => id === 'gvwr')?.answer).toBe('within');
    expect(checks.find(({ id }) => id === 'tow/ball-mount/tongue')?.answer).toBe('depends');
    expect(ask).toBe('cargo.0.at');
  });
  describe('where it is not told how the axles share', () => {
    const axle = (at: number) => ({ beam: '5,200 lb', at: `${at} in`, rate: '2,000 lb/in' });
    const told = { hitch: 'ball', curb: { weight: '9,000 lb', tongue: '900 lb' } };
    const answers = (trailer: object) => {
      const { checks, ask } = rightOf(boundsFrom({ trailer: { ...told, ...trailer } }));
      return [new Set(checks.map(({ answer }) => answer)), ask];
    };
    it('asks of two axles no more than of equalised ones: level they share alike', () => {
      const axles = [axle(187), axle(221)];
      expect(answers({ axles })).toEqual([new Set(['within']), undefined]);
      expect(answers({ axles, sharing: 'equalised' })).toEqual([new Set(['within']), undefined]);
    });
    it('says of three nothing that holds for equalised ones alone: independent ones need their rates', () => {
      const { rate: _rate, ...bare } = axle(255);
      const axles = [axle(187), axle(221), bare];
      expect(answers({ axles })).toEqual([new Set(['depends']), 'trailer.sharing']);
      expect(answers({ axles, sharing: 'equalised' })).toEqual([new Set(['within']), undefined]);
      expect(answers({ axles, sharing: 'independent' })).toEqual([new Set(), undefined]);
    });
    it('asks how they share where one way is over', () => {
      // Of 8,100 lb each equalised axle carries 2,700 lb; by rates of 1,000, 1,000 and 4,000 lb/in the last carries 5,400 lb.
      const by = (rate: string, at: number) => ({ ...axle(at), rate });
      const axles = [by('1,000 lb/in', 187), by('1,000 lb/in', 221), by('4,000 lb/in', 255)];
      const { checks, ask } = rightOf(boundsFrom({ trailer: { ...told, axles } }));
      const of = (id: string) => checks.find((check) => check.id === id);
      expect(of('axle-1/weakest-part')).toMatchObject({ answer: 'within', least: lb(2500), most: lb(3850) });
      expect(of('axle-3/weakest-part')).toMatchObject({ answer: 'depends', least: lb(-200), most: lb(2500) });
      expect(ask).toBe('trailer.sharing');
    });
  });
  it('takes axles whose place is not told to stand in their order', () => {
    const bounded = (...at: readonly (string | undefined)[]) =>
      boundsFrom({
        trailer: {
          hitch: 'ball',
          sharing: 'equalised',
          curb: { weight: '3,000 lb' },
          axles: at.map((one) => ({ at: one, beam: '5,200 lb' })),
        },
      });
    for (const at of [
      [undefined, '100 in'],
      ['400 in', undefined],
      ['100 in', undefined, undefined, '150 in'],
      [undefined, undefined, undefined],
    ]) {
      const { checks, ask } = rightOf(bounded(...at));
      expect(checks.filter(({ id }) => id.endsWith('/weakest-part')).map(({ answer }) => answer)).toEqual(
        at.map(() => 'within'),
      );
      expect(ask).toBeUndefined();
    }
  });
  it('is refused where what is told cannot be, itself or with what is built', () => {
    // Of wheelbases from 80 to 280 in the middle one is tried, and this ball would be ahead of its front axle.
    const neck = changed(changed(tiltDeck(), 'trailer.hitch', 'gooseneck'), 'tow.overhang', '-200 in');
    expect(assess(changed(neck, 'tow.wheelbase', '250 in'))._tag).toBe('Right');
    expect(leftOf(boundsFrom(changed(neck, 'tow.wheelbase', undefined))).tag).toBe('UndecodableSpec');
    expect(leftOf(boundsFrom({ trailer: { hitch: 'ball', axles: [{ at: '200 in' }, { at: '100 in' }] } })).tag).toBe(
      'UndecodableSpec',
    );
  });
  it('asks nothing of a spec that tells all', () => {
    const { unknown, checks, ask } = rightOf(boundsFrom(tiltDeck()));
    expect([unknown, ask]).toEqual([[], undefined]);
    expect(checks.every(({ answer }) => answer === 'within')).toBe(true);
  });
});
