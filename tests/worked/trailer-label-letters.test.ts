/**
 * Agency letters on trailer labels, read as positions: nht72-6.32 (1972-01-04), nht71-5.63 (1971), nht72-4.48 (1972-12-13),
 * nht75-5.2 (1975-05-27), nht76-3.20 (1976-01-15); and the general ones that say otherwise: aiam0613, aiam1472, nht80-2.14.
 */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../src/assessment/index.js';
import { payload } from '../../src/load/index.js';
import { checkLoad, rating, weight } from '../../src/ratings/index.js';
import { constant, difference, given, product } from '../../src/trace/index.js';
import { lb, ratio, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { workingsIn } from '../helpers/specs.js';
import { twoAxles } from '../helpers/ten-thousand.js';
import { expectReplays } from '../helpers/working.js';

const told = ({ checks }: Assessment, what: RegExp): readonly string[] =>
  checks.filter((each) => what.test(each.what)).map(({ verdict }) => verdict);

/** GVWR 7,000 lb on two axles: 6,300 lb of it on the axles when a tenth rests on the tow vehicle. */
const sevenThousand = (gawr: string): Assessment => {
  const answer = rightOf(
    assessJson({
      trailer: {
        hitch: 'ball',
        gvwr: '7,000 lb',
        sharing: 'equalised',
        axles: [
          { at: '170 in', gawr },
          { at: '190 in', gawr },
        ],
        curb: { weight: '2,000 lb', tongue: '200 lb' },
      },
      cargo: [{ name: 'freight', weight: '5,000 lb', at: '162 in' }],
      tongueShare: '10 %',
    }),
  );
  expectReplays(...workingsIn(answer));
  return answer;
};

describe('nht76-3.20: GVWR holds for the whole trailer, coupled, with the share on the tow vehicle', () => {
  it('axle-7000: 7,000 lb with a tenth on the tongue puts 6,300 lb on the axles', () => {
    const { weights: weighed } = sevenThousand('3,150 lb');
    expect(
      [weighed.gross, weighed.balance?.tongue, weighed.balance?.axleLoad].map((figure) => figure && show(figure.value)),
    ).toEqual(['7,000 lb', '700 lb', '6,300 lb']);
  });
  it('axles that add up to less than GVWR are no fault', () => {
    const answer = sevenThousand('3,150 lb');
    expect(show(answer.runningGear.group?.sumOfRatings.value ?? lb(0))).toBe('6,300 lb');
    expect([answer.verdict !== 'over', told(answer, /GVWR/), told(answer, /GAWR/)]).toEqual([
      true,
      ['within'],
      ['within', 'within'],
    ]);
    expect(answer.checks.filter(({ what }) => /axle/.test(what)).map(({ reserve }) => show(reserve.value))).toEqual([
      '0 lb',
      '0 lb',
    ]);
  });
  it('an axle load above its GAWR at GVWR is one, whatever the gross weight says', () => {
    const answer = sevenThousand('3,149 lb');
    expect([answer.verdict !== 'over', told(answer, /GVWR/), told(answer, /GAWR/)]).toEqual([
      false,
      ['within'],
      ['over', 'over'],
    ]);
  });
  it('axle-14000: 12 percent of 14,000 lb leaves 12,320 lb to the axles', () => {
    const gross = given('GVWR', lb(14000), 'label');
    const axles = difference('axle load', gross, product('tongue load', gross, constant(ratio('0.12'))));
    expectReplays(axles);
    expect(show(axles.value)).toBe('12,320 lb');
    const bound = (group: number): string =>
      show(
        rightOf(
          payload(given('curb', lb(3000)), { low: constant(ratio('0.12')), high: constant(ratio('0.12')) }, [
            { name: 'axles', on: 'axles', limit: given('axles', lb(group)) },
          ]),
        ).anywhere!.weight.value,
      );
    expect([bound(12320), bound(11440)]).toEqual(['11,000 lb', '10,000 lb']);
  });
});

describe('nht75-5.2, nht71-5.63: GVWR is the trailer and its rated cargo, without regard to a tow vehicle', () => {
  it('counts all of the gross weight, though part of it rests on the tow vehicle', () => {
    const { checks, weights: weighed } = sevenThousand('3,150 lb');
    const gross = checks.find(({ kind }) => kind === 'GVWR');
    expect(gross?.load.value).toEqual(weighed.gross?.value);
    expect(show(gross?.load.value ?? lb(0))).toBe('7,000 lb');
  });
  it('lets GVWR stand well above the axles: the payload is the lesser of the two answers', () => {
    const { payload: carry } = rightOf(
      assessJson(twoAxles({ gvwr: '20,000 lb', gawr: '7,000 lb', tongueShare: '25 %' })),
    );
    expect(
      carry?.anywhere?.limits.map(({ name, limit }) => [name, limit.value.value.toDecimalPlaces(2).toNumber()]),
    ).toEqual([
      ['GVWR', 17550],
      ['GAWR', 16216.67],
    ]);
    expect(carry?.anywhere?.governing.map(({ name }) => name)).toEqual(['GAWR']);
  });
});

describe('nht72-6.32: a GAWR may be above the axle load, and the tongue load relieves it', () => {
  it('a GAWR above what lies on it grants nothing beyond GVWR', () => {
    const { payload: carry, checks } = rightOf(
      assessJson(twoAxles({ gvwr: '10,000 lb', gawr: '7,000 lb', cargo: '7,551 lb' })),
    );
    expect(carry?.anywhere?.governing.map(({ name }) => name)).toEqual(['GVWR']);
    expect(checks.map(({ what, verdict }) => [what, verdict])).toEqual([
      ['gross against GVWR', 'over'],
      ['axle load against axle 1 GAWR', 'within'],
      ['axle load against axle 2 GAWR', 'within'],
    ]);
  });
});

describe('nht72-4.48: each axle has its own GAWR, identical ones too', () => {
  it('checks each by itself', () => {
    expect(
      sevenThousand('3,150 lb')
        .checks.filter(({ kind }) => kind === 'GAWR')
        .map(({ part: of }) => of),
    ).toEqual(['axle 1', 'axle 2']);
  });
});

describe('aiam0613, aiam1472, nht80-2.14 ask that GAWRs add up to GVWR: they speak of vehicles on their own axles', () => {
  it('with nothing on a tongue that follows from the axle check; with a tongue it does not', () => {
    const gvwr = given('GVWR', lb(7000), 'label');
    const axles = rating('axle group', lb(6300));
    const alone = checkLoad(axles, weight('axle group load', gvwr));
    const coupled = checkLoad(
      axles,
      weight('axle group load', difference('axle load', gvwr, product(null, gvwr, constant(ratio('0.1'))))),
    );
    expectReplays(...workingsIn([alone, coupled]));
    expect([alone.verdict, coupled.verdict]).toEqual(['over', 'within']);
  });
});
