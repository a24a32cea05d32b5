/** Which keys of a spec are missing for a question: those that would answer it, and none that are told. */
import { describe, expect, it } from 'vitest';
import {
  axleName,
  unbalanced,
  unbalancedEmpty,
  ungrouped,
  unhitched,
  unplaced,
  unplacedPiece,
  unweighed,
  wantingOf,
  wantingOfAxles,
  wantingOfCargo,
  withoutTongue,
} from '../../../src/assessment/parts/wanting-keys.js';
import type { DecodedSpec } from '../../../src/spec/index.js';

/** Only whether a key is there is asked. */
const told = 'told';
const specOf = (trailer: object, more: object = {}): DecodedSpec =>
  ({ trailer: { axles: [], ...trailer }, ...more }) as unknown as DecodedSpec;
const axles = (...list: readonly object[]) => ({ axles: list });

describe('keys of a record', () => {
  it('are those it lacks, all of them where there is no record', () => {
    expect(wantingOf('tow', { front: told }, 'front', 'rear')).toEqual(['tow.rear']);
    expect(wantingOf('tow', undefined, 'front', 'rear')).toEqual(['tow.front', 'tow.rear']);
  });
  it('are asked of each axle and of each piece by its place in the list', () => {
    expect(axleName(1)).toEqual({ of: 'axle 2', id: 'axle-2', path: 'trailer.axles.1' });
    expect(wantingOfAxles(specOf(axles({ at: told }, { gawr: told })).trailer, 'at', 'gawr')).toEqual([
      'trailer.axles.0.gawr',
      'trailer.axles.1.at',
    ]);
    expect(wantingOfCargo(specOf({}, { cargo: [{ at: told }, {}] }), 'at')).toEqual(['cargo.1.at']);
    expect(wantingOfCargo(specOf({}), 'at')).toEqual([]);
  });
});

describe('the place of a piece', () => {
  const piece = (keys: object) => unplacedPiece(keys as never, 3);
  it('is its balance point, or its front and how far that is from it', () => {
    expect(piece({ at: told })).toEqual([]);
    expect(piece({ front: told, balancePoint: told })).toEqual([]);
    expect(piece({ front: told })).toEqual(['cargo.3.at', 'cargo.3.balancePoint']);
    expect(piece({ balancePoint: told })).toEqual(['cargo.3.at', 'cargo.3.front']);
    expect(piece({})).toEqual(['cargo.3.at', 'cargo.3.front', 'cargo.3.balancePoint']);
  });
  it('is asked of all, or of all but one', () => {
    const spec = specOf({}, { cargo: [{ front: told }, { at: told }, { front: told }] });
    expect(unplaced(spec)).toEqual(['cargo.0.at', 'cargo.0.balancePoint', 'cargo.2.at', 'cargo.2.balancePoint']);
    expect(unplaced(spec, 0)).toEqual(['cargo.2.at', 'cargo.2.balancePoint']);
    expect(unplaced(specOf({}))).toEqual([]);
  });
});

describe('the empty trailer', () => {
  it('is weighed, or built up from one of its lists', () => {
    const asks = ['trailer.curb.weight', 'trailer.curb.items'];
    expect(unweighed(specOf({}))).toEqual(asks);
    expect(unweighed(specOf({ curb: { items: [], frame: [] } }))).toEqual(asks);
    expect(unweighed(specOf({ curb: { weight: told } }))).toEqual([]);
    for (const list of ['items', 'frame', 'deck'])
      expect(unweighed(specOf({ curb: { [list]: [told] } })), list).toEqual([]);
  });
  it('that was weighed has its tongue weighed too, or by lever', () => {
    expect(withoutTongue(specOf({ curb: { weight: told } }))).toEqual([
      'trailer.curb.tongue',
      'trailer.curb.tongueByLever',
    ]);
    for (const curb of [{ weight: told, tongue: told }, { weight: told, tongueByLever: told }, { items: [told] }, {}])
      expect(withoutTongue(specOf({ curb }))).toEqual([]);
    expect(withoutTongue(specOf({}))).toEqual([]);
  });
});

describe('where axles act together', () => {
  const at = { at: told };
  const group = (sharing: string | undefined, ...list: readonly object[]) =>
    ungrouped(specOf({ ...axles(...list), sharing }));
  it('is asked by their places and, of two and more, by how they share', () => {
    expect(group(undefined, at)).toEqual([]);
    expect(group(undefined, {})).toEqual(['trailer.axles.0.at']);
    expect(group(undefined, at, at)).toEqual(['trailer.sharing']);
    expect(group(undefined, at, {})).toEqual(['trailer.sharing', 'trailer.axles.1.at']);
  });
  it('is asked by the rates of three and more that are independent', () => {
    expect(group('independent', at, at)).toEqual([]);
    expect(group('equalised', at, at, at)).toEqual([]);
    expect(group('independent', at, { ...at, rate: told }, at)).toEqual([
      'trailer.axles.0.rate',
      'trailer.axles.2.rate',
    ]);
  });
  it('is part of what a balance needs, empty and laden', () => {
    const spec = specOf(axles({}, {}), { cargo: [{ front: told, balancePoint: told }, {}] });
    const empty = [
      'trailer.curb.weight',
      'trailer.curb.items',
      'trailer.sharing',
      'trailer.axles.0.at',
      'trailer.axles.1.at',
    ];
    expect(unbalancedEmpty(spec)).toEqual(empty);
    expect(unbalanced(spec)).toEqual([...empty, 'cargo.1.at', 'cargo.1.front', 'cargo.1.balancePoint']);
    expect(unbalancedEmpty(specOf({ ...axles(at), curb: { weight: told } }))).toEqual([
      'trailer.curb.tongue',
      'trailer.curb.tongueByLever',
    ]);
  });
});

it('an overhang that is said to be unknown is asked for', () => {
  const tow = { front: told, overhang: 'unknown' };
  expect(unhitched(specOf({}, { tow }), 'front', 'rear', 'overhang')).toEqual(['tow.rear', 'tow.overhang']);
  expect(unhitched(specOf({}, { tow: { ...tow, overhang: '48 in' } }), 'front', 'overhang')).toEqual([]);
  expect(unhitched(specOf({}), 'wheelbase')).toEqual(['tow.wheelbase']);
});
