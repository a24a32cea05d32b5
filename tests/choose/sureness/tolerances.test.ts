/** How far each figure of a spec may be off: by what it rests on, by what the spec itself says, or as told for it alone. */
import { describe, expect, it } from 'vitest';
import { unsureInputs } from '../../../src/choose/sureness/tolerances.js';
import { decodeSpec } from '../../../src/spec/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

type Spec = Parameters<typeof changed>[0];
const read = (spec: Spec) => rightOf(decodeSpec(spec));
const offs = (spec: Spec, tolerances: Parameters<typeof unsureInputs>[1] = {}) =>
  new Map(
    rightOf(unsureInputs(read(spec), tolerances)).map(({ path, amount, between: { low, high } }) => [
      path,
      `${amount}: ${low} to ${high}`,
    ]),
  );

describe('the usual tolerances', () => {
  const usual = offs(tiltDeck());
  it.each([
    ['trailer.curb.weight', '20 lb: 3630 to 3670'], // on a scale
    ['tow.rear', '20 lb: 3630 to 3670'],
    ['cargo.0.weight', '3 %: 8730 to 9270'], // stated
    ['cargo.0.front', '1 in: 121 to 123'],
    ['cargo.0.balancePoint', '2 in: 58 to 62'], // as the spec says
  ])('%s: %s', (path, off) => expect(usual.get(path)).toBe(off));
  it.each(['trailer.gvwr', 'trailer.axles.0.gawr', 'cargo.0.uncertainty'])('%s counts as exact', (path) =>
    expect(usual.has(path)).toBe(false),
  );
});

describe('what is told', () => {
  it('of a scale is the division of its tickets, for weights alone', () => {
    const pass = { steer: '5,000 lb', drive: '5,240 lb', trailer: '11,270 lb' };
    const ticketed = changed(tiltDeck(), 'tickets', { division: '25 lb', barsOff: pass });
    const placed = changed(ticketed, 'trailer.axles.0.at', { text: '187 in', basis: 'scale' });
    const found = offs(placed);
    expect(found.get('trailer.curb.weight')).toBe('25 lb: 3625 to 3675');
    expect(found.get('cargo.0.weight')).toBe('3 %: 8730 to 9270');
    expect(found.get('trailer.axles.0.at')).toBe('0.25 in: 186.75 to 187.25');
  });
  it('of a basis outranks the usual, and of one figure outranks all', () => {
    const byBasis = [{ basis: 'stated', dimension: 'mass', amount: '100 lb', source: 'told' }] as const;
    const found = offs(tiltDeck(), { byBasis, byPath: { 'cargo.0.balancePoint': '5 in', 'cargo.0.front': '0 in' } });
    expect(found.get('cargo.0.weight')).toBe('100 lb: 8900 to 9100');
    expect(found.get('cargo.0.balancePoint')).toBe('5 in: 55 to 65');
    expect(found.has('cargo.0.front')).toBe(false);
    expect(found.get('trailer.axles.0.at')).toBe('1 in: 186 to 188');
  });
  it('never takes a figure out of the range it can be in', () => {
    expect(offs(tiltDeck(), { byPath: { 'cargo.0.weight': '9,500 lb' } }).get('cargo.0.weight')).toBe(
      '9,500 lb: 0 to 18500',
    );
  });
});
