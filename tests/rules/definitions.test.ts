/** What the combination functions refuse. */
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  addedWeightLimit,
  brakeException,
  type CombinationWeights,
  commercialByWeight,
  gcwrByDefinition,
  largestRatedCargo,
  licenceGroup,
  placardLoadLeft,
  type RulesError,
  weightClassFor,
  wordsForRules,
} from '../../src/rules/index.js';
import { inch, kg, lb, show } from '../../src/units/index.js';
import { leftOf, orFail } from './helpers.js';

describe('combinations that are refused', () => {
  const pair: CombinationWeights = {
    powerUnit: { gvwr: lb(11000), gross: lb(9000) },
    towed: [{ gvwr: lb(14000), gross: 'not above GVWR' }],
    labelGcwr: 'not shown',
  };
  const refused: readonly (readonly [string, Partial<CombinationWeights>, object])[] = [
    [
      'label below the GVWR',
      { labelGcwr: lb(10999) },
      { tag: 'ContradictoryFacts', found: ['10,999 lb', '11,000 lb'] },
    ],
    ['label of nothing', { labelGcwr: lb(0) }, { tag: 'OutOfRange', what: 'label GCWR' }],
    [
      'truck without rating',
      { powerUnit: { gvwr: lb(0), gross: 'not above GVWR' } },
      { tag: 'OutOfRange', what: 'tow vehicle GVWR' },
    ],
    [
      'truck without weight',
      { powerUnit: { gvwr: lb(9000), gross: lb(-1) } },
      { tag: 'OutOfRange', what: 'tow vehicle gross' },
    ],
    [
      'trailer without rating',
      { towed: [{ gvwr: lb(0), gross: 'not above GVWR' }] },
      { tag: 'OutOfRange', what: 'trailer GVWR' },
    ],
    [
      'second trailer without weight',
      {
        towed: [
          { gvwr: lb(7000), gross: 'not above GVWR' },
          { gvwr: lb(7000), gross: lb(0) },
        ],
      },
      { tag: 'OutOfRange', what: 'trailer 2 gross' },
    ],
    [
      'a length for a weight',
      { powerUnit: { gvwr: inch(9000) as never, gross: 'not above GVWR' } },
      { tag: 'OutOfRange', found: '9,000 in' },
    ],
  ];
  it.each(refused)('%s', (_, change, error) => {
    for (const run of [gcwrByDefinition, commercialByWeight, licenceGroup])
      expect(leftOf<unknown>(run({ ...pair, ...change }))).toMatchObject({ chapter: 'rules', ...error });
  });
  it('takes a label equal to the GVWR, and kilograms', () => {
    expect(show(orFail(gcwrByDefinition({ ...pair, labelGcwr: lb(11000) })).gcwr.value)).toBe('25,000 lb');
    expect(
      orFail(
        licenceGroup({ ...pair, towed: [{ gvwr: kg(4536), gross: 'not above GVWR' }] }),
      ).distances[1].value.value.toFixed(2),
    ).toBe('0.17');
  });
  it('refuses figures that are not weights above zero everywhere', () => {
    const refusals: readonly (readonly [RulesError, string])[] = [
      [leftOf(addedWeightLimit(lb(0))), 'trailer GVWR'],
      [leftOf(largestRatedCargo({ gvwr: lb(0), unloaded: lb(1), seats: 0 })), 'GVWR'],
      [leftOf(largestRatedCargo({ gvwr: lb(9), unloaded: lb(0), seats: 0 })), 'unloaded weight'],
      [leftOf(placardLoadLeft(lb(0), [])), 'placard load'],
      [leftOf(placardLoadLeft(lb(900), [lb(150), lb(0)])), 'occupant 2'],
      [
        leftOf(
          brakeException({
            kind: 'semitrailer',
            gross: lb(900),
            weightOnTowVehicle: inch(9) as never,
            towingAxleWeights: lb(900),
          }),
        ),
        'weight on tow vehicle',
      ],
      [
        leftOf(
          brakeException({
            kind: 'full trailer',
            gross: lb(900),
            trailerAxleWeights: lb(0),
            towingAxleWeights: lb(900),
          }),
        ),
        'trailer axle weights',
      ],
    ];
    for (const [error, what] of refusals) expect(error).toMatchObject({ tag: 'OutOfRange', what });
  });
});

describe('words', () => {
  it('says what is missing and where a table ends', () => {
    expect(
      describeError({ chapter: 'rules', tag: 'MissingFacts', asked: 'the step of x', missing: ['trailer gross'] }),
    ).toBe('the step of x cannot be told; give trailer gross');
    const closed = {
      id: 'x',
      topic: 'x',
      jurisdiction: 'y',
      test: 'trailer gross',
      operator: '<=',
      unit: 'lb',
      steps: [{ class: 'a', upTo: '10' }],
      effective: '',
      clause: '',
      source: '',
      grade: 'A',
      read: '',
    } as const;
    expect(wordsForRules(leftOf(weightClassFor(closed, lb(11))) as RulesError)).toBe(
      'the weight for x is 11 lb; it must be within the last step, 10 lb',
    );
    expect(wordsForRules({ chapter: 'rules', tag: 'UnknownRule', found: 'z', known: ['cdl', 'rig'] })).toBe(
      'there is no rule "z"; write one of cdl, rig',
    );
    expect(
      wordsForRules({ chapter: 'rules', tag: 'WrongRuleUnit', fact: 'trailer GVWR', found: 'in', needed: 'mass' }),
    ).toBe('trailer GVWR is in in; it must be in a unit of mass');
  });
});
