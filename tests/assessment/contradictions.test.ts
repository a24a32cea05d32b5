/** Two statements that cannot both be so are refused with their places. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const problems = (...changes: readonly (readonly [string, unknown])[]): readonly string[] => {
  const error = leftOf(assess(changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
  return error.tag === 'UndecodableSpec'
    ? error.problems.map(({ path, got, needed }) => `${path}: ${got}; ${needed}`)
    : [error.tag];
};

describe('contradictions', () => {
  it('are tires that do not fit both sides of an axle', () => {
    expect(problems(['trailer.axles.0.tires.count', 4], ['trailer.axles.0.wheels.count', 4])).toEqual([
      'trailer.axles.0.tires.count: 4 tires, single; 2 tires when single, or the fitment "dual"',
    ]);
    expect(problems(['trailer.axles.1.tires.fitment', 'dual'])).toEqual([
      'trailer.axles.1.tires.count: 2 tires, dual; 4 or 8 tires when dual, or the fitment "single"',
    ]);
  });
  it('are tires without wheels', () => {
    expect(problems(['trailer.axles.0.wheels.count', 4])).toEqual([
      'trailer.axles.0.wheels.count: 4 wheels for 2 tires; a wheel for each tire',
    ]);
  });
  it('are all named at once', () => {
    expect(
      problems(['trailer.axles.0.wheels.count', 3], ['trailer.axles.1.wheels.count', 1], ['cargo.0.at', '180 in']),
    ).toHaveLength(3);
  });
  it('are not four tires that run dual on four wheels', () => {
    const axle = {
      at: '200 in',
      wheels: { each: '3,000 lb', count: 4 },
      tires: {
        designation: 'LT235/85R16 LRE',
        count: 4,
        fitment: 'dual',
        molded: { dual: '2,778 lb', pressure: '80 psi' },
        pressure: '80 psi',
      },
    };
    const spec = changed(changed(tiltDeck(), 'trailer.axles', [axle]), 'trailer.sharing', undefined);
    expect(rightOf(assess(spec)).axleLoads).toHaveLength(1);
  });
});
