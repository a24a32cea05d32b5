/** Single axles and tandems of a rig follow from the places of the axles, whether or not the spec says how a State rounds its groups. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, ruleFindings } from '../../../src/assessment/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

type Changes = readonly (readonly [path: string, value: unknown])[];

const run = (...changes: Changes): Assessment =>
  rightOf(assessJson(changes.reduce<unknown>((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const says = (id: string, answer: Assessment): string => {
  const found = ruleFindings(answer.rules).find((each) => each.id === id);
  return `${found?.outcome}: ${found?.answers.map(({ text }) => text).join()}`;
};
const uncounted = ['rules.axleGroups', undefined] as const;
const apart: Changes = [
  ['trailer.axles.0.at', '180 in'],
  ['trailer.axles.1.at', '228 in'],
];

describe('without a way of counting groups', () => {
  it.each([
    ['34 in apart, one axle by the rule', []],
    ['48 in apart, a tandem', apart],
    [
      '98 in apart, two single axles',
      [
        ['trailer.axles.0.at', '160 in'],
        ['trailer.axles.1.at', '258 in'],
      ],
    ],
    ['over both lines', [...apart, ['cargo.0.weight', '90,000 lb']]],
    ['with one axle in the air', [['cargo.0.front', '300 in']]],
  ] as const)('axles %s are told as with one', (_, changes) => {
    const [counted, not] = [run(...changes), run(...changes, uncounted)];
    for (const id of ['ax-single', 'ax-tandem']) expect(says(id, not)).toBe(says(id, counted));
    expect(not.rules.groups).toEqual([]);
    expect(not.notChecked.map(({ id }) => id)).not.toContain('axle-groups');
  });
  it('an axle that bears exactly nothing belongs to no group either', () => {
    // The ball stands over the rear axle, so nothing comes on or off the front.
    const bare = run(['tow.front', '0 lb'], ['tow.overhang', '0 in']);
    const known = run(['tow.front', '1 lb'], ['tow.overhang', '0 in']);
    expect(says('ax-single', bare)).toMatch(/^cannot be told/);
    expect(says('ax-single', known)).toMatch(/^kept/);
    const unasked = run(['tow.front', '0 lb'], ['tow.overhang', '0 in'], uncounted);
    expect(unasked.notChecked.map(({ id }) => id)).not.toContain('axle-groups');
    expect(unasked.attention.map(({ says: told }) => told).join()).not.toContain('axle 1 weight');
  });
  it('say so by their outcome', () => {
    expect(says('ax-tandem', run(...apart, uncounted))).toMatch(/^kept: heaviest tandem [\d,.]+ lb/);
    expect(says('ax-tandem', run(uncounted))).toBe('does not apply: heaviest tandem: none');
    expect(says('ax-single', run(uncounted, ['cargo.0.weight', '90,000 lb']))).toMatch(/^crossed/);
  });
  it('cannot be told where the spec does not tell where the ball stands', () => {
    expect(says('ax-single', run(uncounted, ['tow.overhang', undefined]))).toMatch(/^cannot be told/);
    expect(says('ax-single', run(uncounted, ['tow', undefined]))).toMatch(/^cannot be told/);
  });
});

it('a trailer axle under the truck is no group: it is left open and asks attention', () => {
  const under = run(
    ['trailer.hitch', 'gooseneck'],
    ['tow.overhang', '-100 in'],
    ['trailer.axles.0.at', '60 in'],
    ['trailer.axles.1.at', '94 in'],
    ['cargo.0.front', '10 in'],
  );
  expect(under.attention.find(({ tag }) => tag === 'OutOfRange')?.says).toMatch(/^axle groups: axle 3 position/);
  expect(under.notChecked.map(({ id }) => id)).toContain('axle-groups');
});
