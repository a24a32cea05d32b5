/** Warnings that are not rating checks are in the first lines of the report, with the count of checks. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../../src/assessment/index.js';
import { report } from '../../../src/print/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

/** The example with some of it changed. */
const example = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  rightOf(assess(changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
/** The same behind a truck whose rear axle holds the ball down while the machine comes on. */
const change = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  example(['tow.rear', '7,000 lb'], ['tow.gvwr', '14,000 lb'], ...changes);
const flat = (assessment: Assessment): string => report(assessment).replace(/\s+/g, ' ');
const tags = ({ attention }: Assessment): readonly string[] => attention.map(({ tag }) => tag);
const chain = { chain: { size: '1/4', grade: '30' }, runs: 'direct' };

describe('attention', () => {
  it('is called to nothing in the example on a heavy truck, where the machine stands inside its window', () => {
    const { attention, placement: place } = change();
    expect([attention, place.pieces[0]?.now?.breaks, plain(place.pieces[0]!.now!.at)]).toEqual([[], [], 182]);
    expect(report(change()).replace(/\s+/g, ' ')).toMatch(
      /WITHIN: \d+ checks made, each within its limit; 1 question open/,
    );
    expect(report(change())).toMatch(/now at, balance point \.+ +15' 2"\s+\(?inside/);
  });
  it.each([
    [
      'a tongue too light',
      [
        ['cargo.0.front', '140 in'],
        ['trailer.deck.rear', '330 in'],
      ],
      ['TongueOutsideGuideline', 'OutsideWindow'],
    ],
    [
      'a machine that stands over the end of the deck, though every rating holds',
      [['cargo.0.length', '190 in']],
      ['NoPlace', 'PieceOffDeck'],
    ],
    [
      'a machine that stands over the front of the deck',
      [
        ['cargo.0.balancePoint', '120 in'],
        ['cargo.0.front', '61 in'],
        ['cargo.0.length', '238 in'],
      ],
      ['OutsideWindow', 'PieceOffDeck'],
    ],
    ['tiedowns that are too weak', [['cargo.0.tiedowns', [chain, chain, chain, chain]]], ['Tiedowns']],
    ['tiedowns that are too few', [['cargo.0.tiedowns', [tiltDeckTie(), tiltDeckTie(), tiltDeckTie()]]], ['Tiedowns']],
    [
      'a machine that hangs up',
      [
        ['cargo.0.wheelbase', '100 in'],
        ['cargo.0.lowPoint', { behindFrontAxle: '50 in', height: '1 in' }],
      ],
      ['HangsUp'],
    ],
  ] as const)('is called to %s', (_, changes, expected) => {
    const assessment = change(...changes);
    expect(tags(assessment)).toEqual(expected);
    expect(assessment.verdict !== 'over').toBe(true);
    expect(flat(assessment)).toMatch(/ATTENTION: none of \d+ checks? is over, but something is not right: Attention /);
  });
});

describe('the pull on the ball while the machine comes on (statics)', () => {
  // T0 - P (xe - a) / a against D b / (b + o), D the truck's rear axle alone.
  const [pull, holds] = [520 - (9000 * (302 - 204)) / 204, (3650 * 176) / (176 + 54)];
  it('stands in the first lines where it lifts the truck: the example says so, though every rating holds', () => {
    const answer = example();
    expect([answer.verdict !== 'over', tags(answer), answer.loading.tailLift?.verdict]).toEqual([
      true,
      ['LoadingLiftsTruck'],
      'lifts the truck',
    ]);
    expect(answer.attention[0]!.figures!.map((figure) => plain(figure))).toEqual([
      expect.closeTo(pull, 6),
      expect.closeTo(holds, 6),
    ]);
    expect(flat(answer)).toContain(
      'ATTENTION: none of 42 checks is over, but something is not right: Attention loading lifts the truck (load at the ball -3,803.5 lb; what the truck holds down 2,793 lb)',
    );
    expect(flat(answer)).not.toMatch(/WITHIN/);
  });
  it('lets the truck hold exactly what pulls', () => {
    const just = (weight: string): string | undefined =>
      example(
        ['cargo.0.weight', weight],
        ['tow.rear', '2,300 lb'],
        ['tow.wheelbase', '100 in'],
        ['tow.overhang', '15 in'],
        ['trailer.deck.rear', '306 in'],
      ).loading.tailLift?.verdict;
    // 2,300 x 100 / 115 = 2,000 lb held; at 306 in the edge stands half of 204 in behind the axles: P = 2 (520 + 2,000).
    expect([just('5,040 lb'), just('5,040.1 lb')]).toEqual(['held by the truck', 'lifts the truck']);
  });
  it.each([
    ['no tow vehicle', [['tow', undefined]]],
    ['a tow vehicle of unknown overhang', [['tow.overhang', undefined]]],
  ] as const)('with %s speaks of no truck that is lifted', (_, changes) => {
    const answer = example(...changes);
    expect([answer.loading.tailLift?.verdict, tags(answer)]).toEqual(['pulls the ball up', ['LoadingPullsBallUp']]);
    expect(plain(answer.loading.tailLift!.ball)).toBeCloseTo(pull, 6);
    expect(flat(answer)).not.toContain('lifts the truck');
    expect(flat(answer)).toContain(
      'loading pulls the ball up, and what the tow vehicle holds down is not known (load at the ball -3,803.5 lb)',
    );
  });
});

function tiltDeckTie(): unknown {
  return { chain: { size: '3/8', grade: '70' }, runs: 'direct' };
}

describe('several pieces of cargo', () => {
  const bucket = { name: 'bucket', weight: '500 lb', at: '100 in', length: '40 in' };
  const excavator = (): object => tiltDeck().cargo?.[0] as object;
  it('lets the heaviest climb, in whatever order they are written', () => {
    const [first, last] = [change(['cargo', [bucket, excavator()]]), change(['cargo', [excavator(), bucket]])];
    expect(plain(first.loading.tailLift!.ball)).toBe(plain(last.loading.tailLift!.ball));
    // T0 - P (xe - a) / a, with the bucket's 500 lb at 100 in on the tongue already (statics).
    expect(plain(first.loading.tailLift!.ball)).toBeCloseTo(
      520 + (500 * (204 - 100)) / 204 - (9000 * (302 - 204)) / 204,
      6,
    );
    expect(first.checks.find(({ kind }) => kind === 'ramp pair, machine')?.load.value.value.toNumber()).toBe(9000);
  });
  it('of one name are pieces all the same', () => {
    const twin = { ...bucket, name: 'excavator' };
    expect(plain(change(['cargo', [excavator(), twin]]).loading.tailLift!.ball)).toBe(
      plain(change(['cargo', [excavator(), bucket]]).loading.tailLift!.ball),
    );
    expect(change(['cargo', [excavator(), twin]]).placement.pieces[0]?.window).toBeDefined();
  });
  it('leave the climb open when the place of another is not known', () => {
    const { loading, notChecked } = change(['cargo', [excavator(), { name: 'bucket', weight: '500 lb' }]]);
    expect([loading.tailLift, notChecked.map(({ what, missing }) => `${what}: ${missing}`)]).toEqual([
      undefined,
      expect.arrayContaining(['lifting the tongue while excavator climbs: places of the other cargo']),
    ]);
  });
});
