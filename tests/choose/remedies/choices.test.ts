/** Ready-made changes are offered where they can do something, with the figures that they write. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { moreTiedowns, pressure, rearLegs, tires } from '../../../src/choose/remedies/choices.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const spec = (...changes: readonly (readonly [string, unknown])[]) =>
  changes.reduce((so, [path, value]) => changed(so, path, value), tiltDeck());
const assessed = (...changes: readonly (readonly [string, unknown])[]) => rightOf(assessJson(spec(...changes)));
const [run, molded] = [
  (i: number) => `trailer.axles.${i}.tires.pressure`,
  (i: number) => `trailer.axles.${i}.tires.molded.pressure`,
];

describe('tire pressure', () => {
  const changes = (...edits: readonly (readonly [string, unknown])[]) =>
    pressure(assessed(...edits).spec).map(({ options }) => options[0]?.changes);
  const both = [
    [molded(0), '80 psi'],
    [molded(1), '80 psi'],
  ] as const;
  it('is brought to what is molded, on the axles that run with less', () => {
    expect(changes(...both, [run(0), '70 psi'], [run(1), '80 psi'])).toEqual([{ [run(0)]: '80 psi' }]);
    expect(changes(...both, [run(0), '70 psi'], [run(1), '79 psi'])).toEqual([
      { [run(0)]: '80 psi', [run(1)]: '80 psi' },
    ]);
  });
  it('stays where it is as molded, or where one of the two is not told', () => {
    expect(changes(...both, [run(0), '80 psi'], [run(1), '80 psi'])).toEqual([]);
    expect(changes(...both, [run(0), undefined], [run(1), undefined])).toEqual([]);
    expect(changes([molded(0), undefined], [molded(1), undefined], [run(0), '50 psi'], [run(1), '50 psi'])).toEqual([]);
  });
});

describe('tires of the next load ranges', () => {
  const designations = (designation: string) => {
    const [choice] = tires(
      assessed(
        ['trailer.axles.0.tires', { designation, count: 2, fitment: 'single' }],
        ['trailer.axles.1.tires', undefined],
        ['trailer.axles.0.gawr', undefined],
        ['trailer.axles.1.gawr', undefined],
      ).spec,
    );
    return choice?.options.map(({ changes }) => Object.entries(changes));
  };
  it('are all that follow, on every axle that has tires', () => {
    expect(designations('ST225/75R15 LRF')).toEqual([
      [['trailer.axles.0.tires', { designation: 'ST225/75R15 LRG', count: 2, fitment: 'single' }]],
      [['trailer.axles.0.tires', { designation: 'ST225/75R15 LRH', count: 2, fitment: 'single' }]],
    ]);
    expect(designations('ST225/75R15 LRC')).toHaveLength(5);
  });
  it('are none of a sidewall without a load range at its end', () => {
    expect(designations('ST225/75R15')).toBeUndefined();
  });
});

describe('more tiedowns', () => {
  const few = ['cargo.0.tiedowns', [{ marked: '1,000 lb', runs: 'direct' }]] as const;
  it('are like the last one, one to four more', () => {
    const [choice] = moreTiedowns(assessed(few), spec(few));
    const last = choice?.options.at(-1);
    expect(choice?.options.map(({ says }) => says)).toEqual([
      'tie excavator down with 1 more of the last kind: 2 in all',
      'tie excavator down with 2 more of the last kind: 3 in all',
      'tie excavator down with 3 more of the last kind: 4 in all',
      'tie excavator down with 4 more of the last kind: 5 in all',
    ]);
    expect(last?.changes['cargo.0.tiedowns']).toEqual(Array.from({ length: 5 }, () => few[1][0]));
  });
  it('are offered only where tiedowns ask attention', () => {
    expect(moreTiedowns(assessed(), spec())).toEqual([]);
    expect(moreTiedowns(assessed(few), {})).toEqual([]);
  });
});

describe('legs under the tail', () => {
  it('are rated for what they bear, to the next 50 lb', () => {
    const lifts = assessed(['trailer.rearLegs', undefined]);
    const needed = lifts.loading.tailLift?.legs.value.value.toNumber() ?? 0;
    expect(needed).toBeGreaterThan(50);
    const [choice] = rearLegs(lifts);
    const [written] = Object.values(choice?.options[0]?.changes ?? {});
    const rated = Number.parseInt(String(written), 10);
    expect([rated % 50, rated >= needed, rated - 50 < needed]).toEqual([0, true, true]);
    expect(choice?.options[0]?.says).toContain(`${rated.toLocaleString('en-US')} lb together`);
  });
  it('are not offered where the ball is pressed, nothing is loaded, or they stand already', () => {
    expect(rearLegs(assessed(['cargo.0.weight', '500 lb']))).toEqual([]);
    expect(rearLegs(assessed(['cargo', undefined]))).toEqual([]);
    expect(rearLegs(assessed(['trailer.rearLegs', '12,000 lb']))).toEqual([]);
  });
});
