/** Which facts of weight and place a spec leaves open, and between which bounds of what is built each is taken. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { unknownFacts } from '../../../src/choose/bounds/fill.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const namesOf = (spec: unknown): readonly string[] => unknownFacts(rightOf(assessJson(spec))).map(({ what }) => what);
const open = (spec: unknown): readonly string[] =>
  unknownFacts(rightOf(assessJson(spec))).map(({ path, from, to, unit }) => `${path}: ${from} to ${to} ${unit}`);
const bare = { hitch: 'ball', axles: [{}, { at: '200 in' }] };
const machine = { name: 'machine', weight: '5,000 lb' };

describe('what is open', () => {
  it('of a trailer of which nothing is told', () => {
    expect(open({ trailer: bare })).toEqual([
      'trailer.curb.weight: 300 to 14000 lb',
      'trailer.curb.tongue: 0 to 7000 lb',
      'trailer.axles.0.at: 48 to 200 in',
    ]);
  });
  it('of axles: each between those that are told ahead of it and behind it', () => {
    const places = (...at: readonly (string | undefined)[]) =>
      open({
        trailer: {
          hitch: 'ball',
          curb: { weight: '3,000 lb', tongue: '400 lb' },
          axles: at.map((one) => ({ at: one })),
        },
      });
    expect(places(undefined, undefined)).toEqual([
      'trailer.axles.0.at: 48 to 480 in',
      'trailer.axles.1.at: 48 to 480 in',
    ]);
    expect(places('150 in', undefined, undefined, '250 in', undefined)).toEqual([
      'trailer.axles.1.at: 150 to 250 in',
      'trailer.axles.2.at: 150 to 250 in',
      'trailer.axles.4.at: 250 to 480 in',
    ]);
    expect(places(undefined, '40 in')).toEqual(['trailer.axles.0.at: 0 to 40 in']);
    expect(places('500 in', undefined)).toEqual(['trailer.axles.1.at: 500 to 620 in']);
  });
  it('is named in shop words, axles by their number', () => {
    expect(namesOf({ trailer: { hitch: 'ball', axles: [{}, {}] } })).toEqual([
      'weight of the empty trailer',
      'tongue load of the empty trailer',
      'place of axle 1',
      'place of axle 2',
    ]);
  });
  it('of one whose empty weight is told: half of it on the tongue at most', () => {
    expect(open({ trailer: { ...bare, curb: { weight: '3,000 lb' } } })).toEqual([
      'trailer.curb.tongue: 0 to 1500 lb',
      'trailer.axles.0.at: 48 to 200 in',
    ]);
  });
  it('of cargo: on the deck, or behind a front face that is told', () => {
    const deck = { front: '60 in', rear: '300 in' };
    const trailer = { hitch: 'ball', axles: [{ at: '200 in' }], curb: { weight: '3,000 lb', tongue: '400 lb' } };
    const at = (piece: object, more: object = {}): readonly string[] =>
      open({ trailer: { ...trailer, ...more }, cargo: [{ ...machine, ...piece }] });
    expect(at({})).toEqual(['cargo.0.at: 0 to 600 in']);
    expect(at({}, { deck })).toEqual(['cargo.0.at: 60 to 300 in']);
    expect(at({ front: '90 in' }, { deck })).toEqual(['cargo.0.balancePoint: 0 to 240 in']);
    expect(at({ front: '90 in', length: '100 in' }, { deck })).toEqual(['cargo.0.balancePoint: 0 to 100 in']);
    expect(at({ at: '150 in' }, { deck })).toEqual([]);
  });
  it('of a tow vehicle, with its ball behind or ahead of the rear axle', () => {
    const told = { ...tiltDeck(), tow: {} };
    expect(open(told)).toEqual([
      'tow.front: 1000 to 12000 lb',
      'tow.rear: 800 to 15000 lb',
      'tow.wheelbase: 80 to 280 in',
      'tow.overhang: 12 to 120 in',
    ]);
    expect(open(changed(told, 'trailer.hitch', 'gooseneck'))).toContain('tow.overhang: -60 to 24 in');
    expect(open(changed(tiltDeck(), 'tow.overhang', 'unknown'))).toEqual(['tow.overhang: 12 to 120 in']);
    expect(open(tiltDeck())).toEqual([]);
  });
});
