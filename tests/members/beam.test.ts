/** The beam: what it refuses, what it says, what must hold of every one. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  allowableStress,
  type BeamMember,
  beam,
  type Load,
  ownWeight,
  publishedSection,
  type Spans,
  statedAllowable,
} from '../../src/members/index.js';
import { given, weightAsForce } from '../../src/trace/index.js';
import { foot, inch, inch3, inch4, ksi, lb, lbf, lbfPerFt, psi, show } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { expectReplays } from '../helpers/working.js';

const member: BeamMember = {
  E: ksi(29000),
  I: inch4('13.1'),
  S: inch3('4.35'),
  allowable: rightOf(allowableStress('ASD 1989, non-compact, braced', 'A36')),
};
const spans: Spans = { leftOverhang: inch(0), span: foot(10), rightOverhang: foot(2) };
const load: Load = { kind: 'point', name: 'wheel', force: lbf(2000), at: foot(5) };

describe('refusals', () => {
  it.each<[string, Spans, readonly Load[], Partial<BeamMember>, object]>([
    ['a span of zero', { ...spans, span: inch(0) }, [load], {}, { tag: 'OutsideItsRange', what: 'span' }],
    [
      'a negative overhang',
      { ...spans, leftOverhang: inch(-1) },
      [load],
      {},
      { tag: 'OutsideItsRange', what: 'left overhang' },
    ],
    ['no loads', spans, [], {}, { tag: 'NothingListed' }],
    [
      'a load past the end',
      spans,
      [{ ...load, at: foot(13) } as Load],
      {},
      { tag: 'OutsideItsRange', what: 'wheel place' },
    ],
    [
      'a load before the start',
      spans,
      [{ ...load, at: inch(-1) } as Load],
      {},
      { tag: 'OutsideItsRange', what: 'wheel place' },
    ],
    [
      'a spread load without length',
      spans,
      [{ kind: 'spread', name: 'deck', perLength: lbfPerFt(50), from: foot(3), to: foot(3) }],
      {},
      { tag: 'OutsideItsRange', what: 'deck end' },
    ],
    ['an I of zero', spans, [load], { I: inch4(0) }, { tag: 'OutsideItsRange', what: 'I' }],
    ['an E of zero', spans, [load], { E: psi(0) }, { tag: 'OutsideItsRange', what: 'modulus of elasticity' }],
    ['an S below zero', spans, [load], { S: inch3(-1) }, { tag: 'OutsideItsRange', what: 'S' }],
    ['a place off the beam', spans, [load], { alsoAt: [foot(20)] }, { tag: 'OutsideItsRange', what: 'place 1' }],
    ['a place before the beam', spans, [load], { alsoAt: [foot(-1)] }, { tag: 'OutsideItsRange', what: 'place 1' }],
  ])('%s', (_, on, loads, part, error) => {
    const read = beam(on, loads, { ...member, ...part });
    expect(leftOf(read)).toMatchObject(error);
    if (isLeft(read))
      expect(describeError(read.left)).toMatch(/^(.+ is .+; it must be .+|the list of loads on the beam is empty; .+)/);
  });
  it('an allowable stress of nothing, stated or put together by hand', () => {
    expect(leftOf(statedAllowable(psi(0), 'nobody'))).toMatchObject({ tag: 'OutsideItsRange' });
    const none = { ...member.allowable, stress: given('allowable', psi(0)) };
    expect(leftOf(beam(spans, [load], { ...member, allowable: none }))).toMatchObject({
      tag: 'OutsideItsRange',
      what: 'allowable bending stress',
    });
  });
});

describe('what it says', () => {
  it('over is an answer: the bending check, with its basis', () => {
    const over = rightOf(beam(spans, [{ ...load, force: lbf(20000) } as Load], member));
    expect(over.bending.verdict).toBe('over');
    expect(over.bending.allowable.basis).toBe(
      'ASD 1989, non-compact, braced: 0.60 Fy for A36 (AISC ASD 1989 eq. F1-5, secondary copy)',
    );
    expect(plain(over.bending.reserve)).toBeCloseTo(21600 - 600000 / 4.35, 6);
  });
  it('a stress that just meets its allowable is within', () => {
    const tie = rightOf(beam({ ...spans, rightOverhang: inch(0) }, [{ ...load, force: lbf(3132) } as Load], member));
    expect(show(tie.bending.stress.value)).toBe('21,600 psi');
    expect(tie.bending.verdict).toBe('within');
  });
  it('50 ksi steel allows more', () => {
    expect(plain(rightOf(allowableStress('ASD 1989, compact, braced', 'grade 50')).stress)).toBe(33000);
    expect(plain(rightOf(allowableStress('AISC 360 ASD, omega 1.67', 'A36')).stress)).toBe(21560);
    expect(plain(rightOf(statedAllowable(ksi(15), 'set by the engineer of record')).stress)).toBe(15000);
  });
  it('always says what it is not, and names a hold-down', () => {
    const tip = rightOf(beam(spans, [{ ...load, at: foot(12) } as Load], member));
    expect(tip.notes[0]?.says).toContain('A licensed engineer decides');
    expect(tip.notes[1]).toMatchObject({
      tag: 'HoldDown',
      says: 'The left support is pulled up: it must hold the beam down.',
    });
    expect(rightOf(beam(spans, [load], member)).notes.map(({ tag }) => tag)).toEqual(['StaticCheckOnly']);
  });
  it('takes weights through the bridge from lb to lbf', () => {
    const c6 = rightOf(publishedSection('C6x8.2'));
    const weighed = rightOf(
      beam(
        spans,
        [
          ownWeight(c6, inch(0), foot(12)),
          { kind: 'point', name: 'machine', force: weightAsForce('machine', given('machine', lb(1000))), at: foot(5) },
        ],
        member,
      ),
    );
    expect(plain(weighed.reactions.left) + plain(weighed.reactions.right)).toBeCloseTo(1000 + 12 * 8.2, 9);
    expectReplays(weighed.reactions.left, weighed.bending.stress);
  });
  it('a support does not give way, and the working says no more than that', () => {
    const { stations } = rightOf(beam({ ...spans, leftOverhang: inch('7.3') }, [load], member));
    const held = stations.filter(({ name }) => name.includes('support'));
    expect(held.map(({ deflection: { value, why } }) => [show(value), why.symbol])).toEqual([
      ['0 in', 'no deflection at a support'],
      ['0 in', 'no deflection at a support'],
    ]);
  });
  it('merges places that coincide into one station', () => {
    const { stations } = rightOf(beam({ ...spans, rightOverhang: inch(0) }, [load], member));
    expect(stations.map(({ name }) => name)).toEqual([
      'left end, left support',
      'midspan, wheel',
      'right support, right end',
    ]);
  });
  it('a load called like a support still bends the beam', () => {
    const { stations } = rightOf(beam(spans, [{ ...load, name: 'left support', at: foot(4) } as Load], member));
    expect(plain(stations.find(({ at }) => plain(at) === 48)!.deflection)).toBeGreaterThan(0);
  });
});

describe('laws', () => {
  const place = fc.integer({ min: 0, max: 240 });
  const loads = fc.array(
    fc.oneof(
      fc.record({ kind: fc.constant('point' as const), force: fc.integer({ min: -5000, max: 5000 }), at: place }),
      fc.record({
        kind: fc.constant('spread' as const),
        force: fc.integer({ min: -500, max: 500 }),
        at: fc.integer({ min: 0, max: 120 }),
        length: fc.integer({ min: 1, max: 120 }),
      }),
    ),
    { minLength: 1, maxLength: 5 },
  );
  const on: Spans = { leftOverhang: inch(36), span: inch(150), rightOverhang: inch(54) };
  const asLoad = (each: { kind: 'point' | 'spread'; force: number; at: number; length?: number }, i: number): Load =>
    each.kind === 'point'
      ? { kind: 'point', name: `load ${i}`, force: lbf(each.force), at: inch(each.at) }
      : {
          kind: 'spread',
          name: `load ${i}`,
          perLength: lbfPerFt(each.force),
          from: inch(each.at),
          to: inch(each.at + (each.length ?? 1)),
        };

  it('reactions balance the loads, the far end carries neither shear nor moment, stations run left to right', () => {
    fc.assert(
      fc.property(loads, (list) => {
        const solved = rightOf(beam(on, list.map(asLoad), member));
        const total = list.reduce(
          (sum, each) => sum + (each.kind === 'point' ? each.force : (each.force * each.length) / 12),
          0,
        );
        expect(plain(solved.reactions.left) + plain(solved.reactions.right)).toBeCloseTo(total, 6);
        const last = solved.stations.at(-1)!;
        expect(plain(last.shearRight)).toBeCloseTo(0, 6);
        expect(plain(last.moment)).toBeCloseTo(0, 5);
        const places = solved.stations.map(({ at }) => plain(at));
        expect(places).toEqual([...places].sort((a, b) => a - b));
        expectReplays(
          solved.reactions.left,
          solved.greatestMoment.moment,
          ...solved.stations.map(({ shearLeft }) => shearLeft),
        );
      }),
      { numRuns: 40 },
    );
  });
  it('several loads deflect as far as each of them added up', () => {
    const loads: readonly Load[] = [
      load,
      { kind: 'point', name: 'other wheel', force: lbf(1500), at: foot(8) },
      { kind: 'spread', name: 'deck', perLength: lbfPerFt(120), from: foot(1), to: foot(12) },
    ];
    const bent = (some: readonly Load[]): number =>
      plain(
        rightOf(beam(spans, some, { ...member, alsoAt: [foot(4)] })).stations.find(({ at }) => plain(at) === 48)!
          .deflection,
      );
    expect(bent(loads)).toBeCloseTo(
      loads.reduce((sum, one) => sum + bent([one]), 0),
      12,
    );
  });
  it('twice the loads deflect twice as far', () => {
    fc.assert(
      fc.property(loads, (list) => {
        const once = rightOf(beam(on, list.map(asLoad), member));
        const twice = rightOf(
          beam(
            on,
            list.map((each, i) => asLoad({ ...each, force: 2 * each.force }, i)),
            member,
          ),
        );
        for (const [i, { deflection }] of once.stations.entries())
          expect(plain(twice.stations[i]!.deflection)).toBeCloseTo(2 * plain(deflection), 9);
      }),
      { numRuns: 25 },
    );
  });
});
