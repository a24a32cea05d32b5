/** Agency letters nht95-2.54 (conspicuity) and nht93-4.12 (overall width). */
import { describe, expect, it } from 'vitest';
import { ask, facts } from '../rules/helpers.js';

describe('conspicuity, letter nht95-2.54', () => {
  it.each([
    ['10001 lb', 'applies'],
    ['10000 lb', 'does not apply'],
  ])('80 in and %s: %s', (gvwr, outcome) => {
    expect(ask('consp', facts(`overall width: 80 in, trailer GVWR: ${gvwr}`)).outcome).toBe(outcome);
  });
  it('a 14,000 lb trailer of 79 in needs none: both conditions are asked', () => {
    expect(ask('consp', facts('overall width: 79 in, trailer GVWR: 14000 lb')).outcome).toBe('does not apply');
  });
});

describe('overall width, letter nht93-4.12', () => {
  it('counts rigid fenders: a 78 in box that is 80.5 in over its fenders needs the lamps', () => {
    expect(ask('lamps-w', facts('overall width: 80.5 in')).outcome).toBe('applies');
    expect(ask('lamps-w', facts('overall width: 78 in')).outcome).toBe('does not apply');
    expect(ask('lamps-w', facts('overall width: 80.5 in')).caution).toMatch(/Rigid fenders count/);
  });
});
