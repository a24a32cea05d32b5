/**
 * Every shipped rule on its line, one below and one above: the answers are written out by hand, rule by rule.
 *
 * A row: rule, condition, facts that hold everything else open, the fact that moves, then three figures with what the rule
 * must say to each: + a duty applies, a limit is crossed; - a duty does not apply, a limit is kept; o the range is another's.
 */
import { describe, expect, it } from 'vitest';
import { type Facts, type FederalId, federalRule, federalRules, type Rule } from '../../../../src/rules/index.js';
import { expectReplays } from '../../../helpers/working.js';
import { ask, askRow, facts, workings } from '../../helpers.js';

const carrier = 'commercial: yes, interstate: yes, trailer GVWR: 12000 lb';
const surge = 'commercial: yes, interstate: yes, surge brakes: yes, tow vehicle gross: 5000 lb, trailer gross: 5001 lb';
const light = 'commercial: yes, interstate: yes, tow vehicle GVWR: 10001 lb';

const rows: readonly (readonly [
  id: string,
  condition: number,
  given: string,
  moved: string,
  below: string,
  on: string,
  above: string,
])[] = [
  [
    'cmv-390',
    0,
    'commercial: yes, interstate: yes, tow vehicle GVWR: 5000 lb, tow vehicle gross: 4000 lb, trailer gross: 2000 lb, label GCWR: not shown',
    'trailer GVWR',
    '5000 lb -',
    '5001 lb +',
    '5002 lb +',
  ],
  [
    'cdl-A',
    0,
    'tow vehicle GVWR: 15999 lb, label GCWR: not shown, actual weights within ratings: yes',
    'trailer GVWR',
    '10001 lb -',
    '10002 lb +',
    '10003 lb +',
  ],
  [
    'cdl-A',
    1,
    'tow vehicle GVWR: 26000 lb, label GCWR: not shown, actual weights within ratings: yes',
    'trailer GVWR',
    '9999 lb -',
    '10000 lb -',
    '10001 lb +',
  ],
  [
    'cdl-B',
    0,
    'trailer GVWR: 7000 lb, actual weights within ratings: yes',
    'tow vehicle GVWR',
    '26000 lb -',
    '26001 lb +',
    '26002 lb +',
  ],
  [
    'cdl-B',
    1,
    'tow vehicle GVWR: 33000 lb, actual weights within ratings: yes',
    'trailer GVWR',
    '9999 lb +',
    '10000 lb +',
    '10001 lb -',
  ],
  ['consp', 0, 'trailer GVWR: 14000 lb', 'overall width', '79 in -', '80 in +', '81 in +'],
  ['consp', 1, 'overall width: 102 in', 'trailer GVWR', '9999 lb -', '10000 lb -', '10001 lb +'],
  ['lamps-w', 0, '', 'overall width', '79 in -', '80 in +', '81 in +'],
  ['lamps-l', 0, '', 'overall length', '29 ft -', '30 ft +', '31 ft +'],
  ['rig', 0, '', 'trailer GVWR', '9999 lb -', '10000 lb +', '10001 lb +'],
  [
    'brake-3000-semi',
    0,
    `${light}, full trailer: no, weight on tow vehicle: 300 lb, towing axle weights: 6000 lb`,
    'trailer gross',
    '2999 lb +',
    '3000 lb +',
    '3001 lb -',
  ],
  [
    'brake-3000-semi',
    1,
    `${light}, full trailer: no, trailer gross: 3000 lb, towing axle weights: 5000 lb`,
    'weight on tow vehicle',
    '1999 lb +',
    '2000 lb +',
    '2001 lb -',
  ],
  [
    'brake-3000-full',
    0,
    `${light}, full trailer: yes, trailer axle weights: 2400 lb, towing axle weights: 9000 lb`,
    'trailer gross',
    '2999 lb +',
    '3000 lb +',
    '3001 lb -',
  ],
  [
    'brake-3000-full',
    1,
    `${light}, full trailer: yes, trailer gross: 3000 lb, towing axle weights: 5000 lb`,
    'trailer axle weights',
    '1999 lb +',
    '2000 lb +',
    '2001 lb -',
  ],
  ['surge-1', 0, `${surge}, tow vehicle GVWR: 9000 lb`, 'trailer GVWR', '11999 lb -', '12000 lb -', '12001 lb o'],
  ['surge-1', 1, `${surge}, tow vehicle GVWR: 6000 lb`, 'trailer GVWR', '10499 lb -', '10500 lb -', '10501 lb +'],
  ['surge-2', 0, `${surge}, tow vehicle GVWR: 12000 lb`, 'trailer GVWR', '11999 lb o', '12000 lb o', '12001 lb -'],
  ['surge-2', 1, `${surge}, tow vehicle GVWR: 30000 lb`, 'trailer GVWR', '20000 lb -', '20001 lb +', '20002 lb +'],
  ['surge-2', 2, `${surge}, tow vehicle GVWR: 12000 lb`, 'trailer GVWR', '14999 lb -', '15000 lb -', '15001 lb +'],
  [
    'chains-fed',
    0,
    `${carrier}, full trailer: yes, trailer gross: 12400 lb`,
    'safety device strength',
    '12399 lb +',
    '12400 lb -',
    '12401 lb -',
  ],
  ['tracking', 0, carrier, 'path deviation', '2 in -', '3 in -', '4 in +'],
  ['fmvss110', 0, '', 'trailer GVWR', '9999 lb +', '10000 lb +', '10001 lb -'],
  ['fmvss120', 0, '', 'trailer GVWR', '9999 lb -', '10000 lb -', '10001 lb +'],
  ['relabel', 0, 'trailer GVWR: 10000 lb', 'added weight', '99 lb -', '100 lb -', '101 lb +'],
  ['relabel', 1, 'added weight: 101 lb', 'trailer GVWR', '9999 lb +', '10000 lb +', '10001 lb -'],
  ['relabel', 0, 'trailer GVWR: 5000 lb', 'added weight', '74 lb -', '75 lb -', '76 lb +'],
  ['heavy-eq', 0, carrier, 'cargo article weight', '9999 lb -', '10000 lb +', '10001 lb +'],
  ['light-veh', 0, carrier, 'lightest article not tied as heavy equipment', '9999 lb +', '10000 lb +', '10001 lb -'],
  [
    'light-eq-option',
    0,
    carrier,
    'lightest article not tied as heavy equipment',
    '9999 lb +',
    '10000 lb -',
    '10001 lb -',
  ],
  ['ax-single', 0, '', 'heaviest single axle', '19999 lb -', '20000 lb -', '20001 lb +'],
  ['ax-tandem', 0, '', 'heaviest tandem', '33999 lb -', '34000 lb -', '34001 lb +'],
  ['gross-80', 0, 'tow vehicle gross: 30000 lb', 'trailer gross', '49999 lb -', '50000 lb -', '50001 lb +'],
  ['width', 0, '', 'overall width', '101 in -', '102 in -', '103 in +'],
  ['excise', 0, '', 'trailer GVWR', '25999 lb -', '26000 lb -', '26001 lb +'],
];

const conditionsOf = ({ where = [], all }: Rule) => [...where, ...all];
const said = {
  duty: { '+': 'applies', '-': 'does not apply' },
  limit: { '+': 'crossed', '-': 'kept', o: 'does not apply' },
} as const;

describe('every federal line', () => {
  it('is asked on both sides, condition by condition', () => {
    const asked = new Set(rows.map(([id, condition]) => `${id} ${condition}`));
    expect([...asked].sort()).toEqual(
      federalRules.flatMap((rule) => conditionsOf(rule).map((_, i) => `${rule.id} ${i}`)).sort(),
    );
  });

  const cases = rows.flatMap(([id, condition, given, moved, ...three]) =>
    three.map((words, i) => {
      const [digits = '', unit = '', sign = ''] = words.split(' ');
      const { kind } = federalRule(id as FederalId);
      return {
        id,
        condition,
        given,
        moved,
        figure: `${digits} ${unit}`,
        place: i - 1,
        outcome: said[kind][sign as '+'],
      };
    }),
  );
  it.each(cases)('$id: $moved $figure: $outcome', ({ id, condition, given, moved, figure, place, outcome }) => {
    const found = askRow(id, facts(`${given}${given === '' ? '' : ', '}${moved}: ${figure}`));
    expect(found.outcome).toBe(outcome);
    expectReplays(...workings(found));
    const asked = found.answers.filter(({ line }) => line !== undefined)[condition];
    expect(asked?.distance?.value.value.toNumber()).toBe(place);
    expect(asked?.text).toMatch(asked?.holds === true ? /: yes$/ : /: no$/);
    expect(found.decisions.length).toBeGreaterThan(0);
  });

  it.each(['marking', 'recheck', 'tire-marking', 'yearly-inspection'])(
    '%s: from 10,001 lb on, and to be verified',
    (id) => {
      const hauling = (gvwr: number): Facts =>
        facts(
          `commercial: yes, interstate: yes, label GCWR: not shown, actual weights within ratings: yes, tow vehicle GVWR: 5000 lb, trailer GVWR: ${gvwr} lb`,
        );
      expect([5000, 5001].map((gvwr) => ask(id, hauling(gvwr)).outcome)).toEqual(['does not apply', 'applies']);
      expect(ask(id, hauling(5001))).toMatchObject({ verify: true, rule: { grade: 'memory' } });
      expect(ask(id, facts('commercial: no, trailer GVWR: 12000 lb')).outcome).toBe('does not apply');
    },
  );
});
