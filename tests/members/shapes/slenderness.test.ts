/** What the flats of a bent channel were compared with is handed on. The figures themselves stand in the worked example. */
import { expect, it } from 'vitest';
import { channelSlenderness } from '../../../src/members/index.js';
import { inch, ksi } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';

it('hands on the ranges of what is asked, and both limits of each flat', () => {
  const { decisions, parts } = rightOf(
    channelSlenderness(
      {
        kind: 'formed channel',
        depth: inch(8),
        flangeWidth: inch(3),
        thickness: inch('0.125'),
        insideRadius: inch('0.25'),
      },
      ksi(30),
    ),
  );
  expect(decisions.slice(-4).map(({ left, comparison, right }) => [left.symbol, comparison, right.symbol])).toEqual(
    parts.flatMap(({ part }) => [
      [`flat ${part} over thickness`, '<=', 'greatest width over thickness'],
      [`flat ${part} over thickness`, '<=', 'width over thickness that counts in full'],
    ]),
  );
  expect(decisions).toHaveLength(5 + 4);
});
