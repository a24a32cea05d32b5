/** The remark on axles that a lever of a study moves under a trailer that was weighed. */
import { describe, expect, it } from 'vitest';
import { axlesMovedByLevers } from '../../../src/assessment/parts/axles-moved.js';
import { type Given, given } from '../../../src/trace/index.js';
import { inch, lb } from '../../../src/units/index.js';

const leavesOf = (...paths: readonly string[]): ReadonlyMap<string, Given> =>
  new Map(
    paths.map((path) => [
      path,
      given(path, path.endsWith('at') ? inch(200) : lb(500), 'scale', path).why as unknown as Given,
    ]),
  );
const axle = 'trailer.axles.0.at';
const group = 'trailer.axleGroup.at';
const weighed = ['trailer.curb.weight', 'trailer.curb.tongue'];
const keys = (leaves: ReadonlyMap<string, Given>, ...levers: readonly (readonly string[])[]) =>
  axlesMovedByLevers(leaves, levers).map(({ paths, says }) => ({
    paths,
    kept: says.includes('Its tongue load is kept as it was weighed'),
  }));

describe('axles moved by a lever', () => {
  const leaves = leavesOf(...weighed, axle, 'trailer.axles.1.at', 'cargo.0.weight');
  it('are told with the keys that move them and the tongue load, once', () => {
    const tongue = 'trailer.curb.tongue';
    expect(keys(leaves, [axle])).toEqual([{ paths: [axle, tongue], kept: true }]);
    expect(keys(leaves, [axle, 'trailer.axles.1.at'], ['cargo.0.weight'])).toEqual([
      { paths: [axle, 'trailer.axles.1.at', tongue], kept: true },
    ]);
    expect(keys(leaves, [axle], [axle])).toEqual([{ paths: [axle, tongue], kept: true }]);
  });
  it('need no remark where no axle moves, or the lever tells the tongue load too', () => {
    expect(keys(leaves)).toEqual([]);
    expect(keys(leaves, ['cargo.0.weight'], ['trailer.axles.0.gawr'], ['trailer.axles.0.at.x'])).toEqual([]);
    for (const told of ['trailer.curb.tongue', 'trailer.curb.tongueByLever.load', 'trailer.curb', 'trailer'])
      expect(keys(leaves, [axle, told]), told).toEqual([]);
    // Another lever that tells it does not answer for this one.
    expect(keys(leaves, [axle], ['trailer.curb.tongue'])).toHaveLength(1);
  });
  it('need none under a trailer that was not weighed, or whose tongue load is not told', () => {
    expect(keys(leavesOf('trailer.curb.tongue', axle), [axle])).toEqual([]);
    expect(keys(leavesOf('trailer.curb.weight', axle), [axle])).toEqual([]);
    expect(keys(leavesOf('trailer.curbside', 'trailer.curb.tongue', axle), [axle])).toEqual([]);
  });
  it('have their tongue load worked out where the group is moved from the places of its axles', () => {
    expect(keys(leavesOf(...weighed, axle, group), [group])[0]?.kept).toBe(false);
    expect(keys(leavesOf(...weighed, group), [group])[0]?.kept).toBe(true);
    expect(keys(leavesOf(...weighed, axle), [axle])[0]?.kept).toBe(true);
  });
});
