/** Two statements that cannot both be so are refused with their places. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { contradictionsIn, decodeSpec } from '../../src/spec/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const problems = (...changes: readonly (readonly [string, unknown])[]): readonly string[] => {
  const spec = changes.reduce((so, [path, value]) => changed(so, path, value), tiltDeck());
  const read = decodeSpec(spec);
  return isLeft(read) ? read.left.problems.map(({ path, got, needed }) => `${path}: ${got}; ${needed}`) : [];
};

const paths = (...changes: readonly (readonly [string, unknown])[]): readonly string[] =>
  problems(...changes).map((told) => told.split(':')[0] as string);

describe('contradictions at their keys', () => {
  it.each(['beam', 'springs', 'hubs'])('a GAWR above its %s is told at both', (part) => {
    const at = `trailer.axles.1.${part}`;
    expect(problems([at, '6,999 lb'])).toEqual([
      `trailer.axles.1.gawr: 7,000 lb; at most 6,999 lb, the rating of its ${part}`,
      `${at}: 6,999 lb for the axle; at least 7,000 lb, the GAWR on the label`,
    ]);
    expect(problems([at, '7,000 lb'])).toEqual([]);
  });
  it('a GAWR above its wheels, its molded load, its designation', () => {
    expect(paths(['trailer.axles.0.wheels.each', '3,499 lb'])).toEqual([
      'trailer.axles.0.gawr',
      'trailer.axles.0.wheels.each',
    ]);
    expect(paths(['trailer.axles.0.tires.molded.single', '3,499 lb'])).toEqual([
      'trailer.axles.0.gawr',
      'trailer.axles.0.tires.molded.single',
    ]);
    expect(paths(['trailer.axles.0.tires', { designation: 'ST205/75R15 LRC', count: 2, fitment: 'single' }])).toEqual([
      'trailer.axles.0.gawr',
      'trailer.axles.0.tires.designation',
    ]);
  });
  it('all parts of all axles, and what cannot be read besides', () => {
    expect(
      paths(
        ['trailer.axles.0.beam', '6,000 lb'],
        ['trailer.axles.0.hubs', '6,500 lb'],
        ['trailer.axles.1.springs', '6,900 lb'],
        ['trailer.gvwr', '14000'],
        ['trailer.axles.1.hubs', 'heavy'],
      ),
    ).toEqual([
      'trailer.axles.1.hubs',
      'trailer.gvwr',
      'trailer.axles.0.gawr',
      'trailer.axles.0.beam',
      'trailer.axles.0.gawr',
      'trailer.axles.0.hubs',
      'trailer.axles.1.gawr',
      'trailer.axles.1.springs',
    ]);
  });
  it('says whether two figures may be equal', () => {
    expect(problems(['trailer.axles.0.at', '221 in'])).toEqual([
      'trailer.axles.0.at: 221 in; less than 221 in, where axle 2 stands; list the axles from the front',
      'trailer.axles.1.at: 221 in; more than 221 in, where axle 1 stands',
    ]);
    expect(problems(['cargo.0.balancePoint', '169 in'])).toEqual([
      'cargo.0.balancePoint: 169 in; at most 168 in, its length',
      'cargo.0.length: 168 in; at least 169 in, its balance point',
    ]);
  });
  it('axles out of order, and two at one place', () => {
    const both = ['trailer.axles.0.at', 'trailer.axles.1.at'];
    expect(paths(['trailer.axles.0.at', '222 in'])).toEqual(both);
    expect(paths(['trailer.axles.0.at', '221 in'])).toEqual(both);
    expect(paths(['trailer.axles.0.at', '18\' 5"'])).toEqual(both);
    expect(paths(['trailer.axles.0.at', '220.99 in'])).toEqual([]);
  });
  it('a tongue heavier than its trailer, a deck, a band and a setting turned round', () => {
    expect(paths(['trailer.curb.tongue', '3,651 lb'])).toEqual(['trailer.curb.tongue', 'trailer.curb.weight']);
    expect(paths(['trailer.deck.front', '302 in'])).toEqual(['trailer.deck.front', 'trailer.deck.rear']);
    const band = { low: '15 %', high: '10 %', source: 'a manual' };
    expect(paths(['trailer.guideline', band])).toEqual(['trailer.guideline.low', 'trailer.guideline.high']);
    const setting = { width: '18 in', margin: '1 in', closest: '71 in', widest: '70 in' };
    expect(paths(['trailer.ramps.setting', setting])).toEqual([
      'trailer.ramps.setting.closest',
      'trailer.ramps.setting.widest',
    ]);
  });
  it('a balance point behind its machine, and a line that grows and is not there', () => {
    expect(paths(['cargo.0.balancePoint', '169 in'])).toEqual(['cargo.0.balancePoint', 'cargo.0.length']);
    expect(problems(['trailer.curb.grows.1', 'side rail'])).toEqual([
      'trailer.curb.grows.1: "side rail"; the name of a line of frame or deck: "side rails", "main rails", "tongue rails"',
    ]);
  });
  it('a rating and a sidewall that cannot be read; an axle without a rating is none', () => {
    expect(paths(['trailer.axles.1', { at: '221 in' }])).toEqual([]);
    expect(paths(['trailer.axles.1', { at: '221 in', gawr: 'heavy' }])).toEqual(['trailer.axles.1.gawr']);
    expect(paths(['trailer.axles.0.tires.designation', 'ST235/80'])).toEqual(['trailer.axles.0.tires.designation']);
  });
  it('decide what they are told by, for studies', () => {
    const { decisions } = contradictionsIn(rightOf(decodeSpec(tiltDeck())));
    expect(decisions.map(({ comparison }) => comparison)).toEqual(['<', '<=', '<', '<=', '<=']);
    expect(decisions.every(({ holds }) => holds)).toBe(true);
  });
});

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
      paths(['trailer.axles.0.wheels.count', 3], ['trailer.axles.1.wheels.count', 1], ['cargo.0.at', '180 in']),
    ).toEqual(['trailer.axles.0.wheels.count', 'trailer.axles.1.wheels.count', 'cargo.0.at', 'cargo.0.front']);
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
