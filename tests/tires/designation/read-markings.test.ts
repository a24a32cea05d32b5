/** Letters before and behind a size, and the load range in the ways people write it. */
import { describe, expect, it } from 'vitest';
import { readTireDesignation, showDesignation } from '../../../src/tires/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

const shown = (text: string): string => showDesignation(rightOf(readTireDesignation(text)));

describe('the letters of the family', () => {
  it.each([
    ['LT7.00-15', '7.00-15LT', 'LT-numeric'],
    ['ST4.80-12', '4.80-12ST', 'ST-numeric'],
    ['7.00-15LT', '7.00-15LT', 'LT-numeric'],
  ])('%s is %s: before or behind a numeric size they say the same', (text, as, family) => {
    expect([shown(text), rightOf(readTireDesignation(text)).family]).toEqual([as, family]);
  });
  it('a radial letter size is shown with its R, a bias one without', () => {
    expect(['H78-15ST', 'HR78-15ST', 'HR78R15ST'].map(shown)).toEqual(['H78-15ST', 'HR78-15ST', 'HR78-15ST']);
  });
});

describe('the load range', () => {
  it.each(['LRE', 'LR E', 'LR-E', 'LR:E', 'load range E', 'Load Range: E', 'load range - E'])(
    'may be written "%s"',
    (range) => {
      expect(rightOf(readTireDesignation(`ST225/75R15 ${range}`)).range).toMatchObject({ letter: 'E', plyRating: 10 });
    },
  );
  it('that is none is shown at its letter', () => {
    expect(leftOf(readTireDesignation('ST225/75R15 LRZ'))).toMatchObject({
      fault: 'UnknownLoadRange',
      at: 14,
      found: '"Z"',
    });
    expect(leftOf(readTireDesignation('ST225/75R15 LR Z'))).toMatchObject({ fault: 'UnknownLoadRange', at: 15 });
  });
  it.each(['10PR', '10 PR', '10-ply', '10 ply', '10 ply rating', '10-ply rated', '10PR OWL', '10 PR M+S'])(
    'may be told by its ply rating, "%s"',
    (plies) => {
      expect(rightOf(readTireDesignation(`LT235/85R16 ${plies}`)).range).toMatchObject({ letter: 'E', plyRating: 10 });
    },
  );
  it('has one mark before its letter, not two', () => {
    expect(leftOf(readTireDesignation('ST225/75R15 LR:-E'))).toMatchObject({ fault: 'UnknownLoadRange' });
  });
});

describe('mud and snow', () => {
  it('is set aside, with a plus or a slash', () => {
    for (const text of ['LT235/85R16 M+S', 'LT235/85R16 M/S', 'LT235/85R16 m+s LRE'])
      expect(rightOf(readTireDesignation(text)).setAside).toEqual(['M+S']);
    expect(leftOf(readTireDesignation('LT235/85R16 M+X'))).toMatchObject({ fault: 'UnexpectedText' });
    expect(leftOf(readTireDesignation('LT235/85R16 M-S'))).toMatchObject({ tag: 'UnreadableDesignation' });
  });
});
