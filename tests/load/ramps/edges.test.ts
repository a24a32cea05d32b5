/** Which edges a machine drives over. */
import { describe, expect, it } from 'vitest';
import { crestClearance, crestsOf } from '../../../src/load/index.js';
import { degree, inch, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';

describe('crestsOf', () => {
  const turns = (of: ReturnType<typeof crestsOf>): string[] =>
    rightOf(of).crests.map(({ name, turns: angle }) => `${name} ${show(angle.value)}`);
  it('a straight deck has one edge, a dovetail two', () => {
    expect(turns(crestsOf(degree(20), 'straight deck', inch(50)))).toEqual(['deck edge 20 deg']);
    expect(turns(crestsOf(degree(20), { angle: degree(8), length: inch(60) }, inch(50)))).toEqual([
      'deck to dovetail 8 deg',
      'dovetail to ramp 12 deg',
    ]);
  });
  it('a wheelbase longer than the dovetail gets the edge that stands above both', () => {
    const long = crestsOf(degree(20), { angle: degree(8), length: inch(48) }, inch(80));
    expect(turns(long)[2]).toBe('both edges at once 20 deg');
    expect(rightOf(long).notes[0]?.tag).toBe('StraddlesDovetail');
  });
  it('checks both edges of a dovetail', () => {
    const { crests } = rightOf(crestsOf(degree(24), { angle: degree(6), length: inch(60) }, inch(50)));
    const answer = rightOf(
      crestClearance(inch(50), [{ name: 'belly', behindFrontAxle: inch(25), height: inch(3) }], crests),
    );
    expect(answer.checks.map(({ crest, verdict }) => [crest, verdict])).toEqual([
      ['deck to dovetail', 'clears'],
      ['dovetail to ramp', 'touches'],
    ]);
  });
  it('refuses a dovetail steeper than the ramp', () => {
    expect(leftOf(crestsOf(degree(10), { angle: degree(12), length: inch(60) }, inch(50))).tag).toBe('OutsideItsRange');
  });
});
