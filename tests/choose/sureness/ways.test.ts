/** Where a comparison of an assessment may turn, the spec is assessed on the other side too, as often as may be. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { unsureInputs } from '../../../src/choose/sureness/tolerances.js';
import { waysOf } from '../../../src/choose/sureness/ways.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

/** The ways of the example with one other figure that may be so much off, and nothing else. */
function waysWith(path: string, figure: string, off: string, most?: number) {
  const assessment = rightOf(assessJson(changed(tiltDeck(), path, figure)));
  const inputs = rightOf(unsureInputs(assessment.spec, { byPath: { [path]: off } }));
  return waysOf(
    assessment,
    inputs.filter((input) => input.path === path),
    most,
  );
}

describe('a tongue that may lift', () => {
  // The tongue is 520 + 9,000 (204 - 60 - 155) / 204 = 35 lb, and 44 lb less for each inch rearward.
  const lifting = (off: string, most?: number) => waysWith('cargo.0.front', '155 in', off, most);
  it('is assessed pressing and lifting: another question is asked when it lifts', () => {
    const { ways, refused, complete } = lifting('2 in');
    expect(complete).toBe(true);
    expect(refused).toEqual([]);
    expect(ways).toHaveLength(2);
    const [pressing, lifted] = ways.map(({ questions }) => questions.map(({ id }) => id));
    expect(pressing).not.toEqual(lifted);
  });
  it('stays one way where it cannot lift', () => {
    expect(lifting('0.5 in', 0)).toMatchObject({ complete: true, ways: [{}] });
  });
  it('takes an assessment for each end of the range, and no more than it may', () => {
    const counts = [0, 1, 2].map((most) => lifting('2 in', most));
    expect(counts.map(({ ways, complete }) => [ways.length, complete])).toEqual([
      [1, false],
      [2, false],
      [2, true],
    ]);
  });
});

describe('a comparison', () => {
  const mayTurn = (path: string, figure: string, off: string): boolean => !waysWith(path, figure, off, 0).complete;
  it('with a fixed figure may turn where the figure may reach it', () => {
    // At 10,000 lb a machine is held by other rules.
    expect(['999 lb', '1,000 lb', '1,001 lb'].map((off) => mayTurn('cargo.0.weight', '9,000 lb', off))).toEqual([
      false,
      true,
      true,
    ]);
    expect(['99 lb', '100 lb'].map((off) => mayTurn('cargo.0.weight', '10,100 lb', off))).toEqual([false, true]);
  });
  it('of two figures that are the same may turn as soon as one of them may be off', () => {
    expect(mayTurn('trailer.coupler.gross', '14,000 lb', '1 lb')).toBe(true);
    expect(['999 lb', '1,001 lb'].map((off) => mayTurn('trailer.coupler.gross', '15,000 lb', off))).toEqual([
      false,
      true,
    ]);
  });
  it('with what the spec is refused for is told with the refusal', () => {
    // With less on the axles' labels than on the trailer's the spec contradicts itself.
    const { refused, complete, ways } = waysWith('trailer.axles.0.gawr', '6,950 lb', '100 lb');
    expect([refused.map(({ tag }) => tag), complete, ways.length]).toEqual([['UndecodableSpec'], true, 1]);
  });
});
