/** Lines that must not compile: each is under an expectation, and the type check fails when one is accepted. */
import { expect, it } from 'vitest';
import { converted, type Derived, difference, given, greatestOf, leastOf, product, quotient, sum } from '../../src/trace/index.js';
import {
  add, compare, convert, divide, foot, inch, kg, lb, lbf, lbPerFt, least, multiply, parseQuantity, psi, type Quantity, quantity, roundLoadUp, subtract, weightToForce,
} from '../../src/units/index.js';

/** Never called: the compiler reads it, nobody runs it. */
export function mustNotCompile(weightOfMachine: Quantity<'lb'>, working: Derived<'lb'>): void {
  // @ts-expect-error pounds plus feet
  add(weightOfMachine, foot(1));
  // @ts-expect-error pounds minus kilograms: convert by name first
  subtract(weightOfMachine, kg(1));
  // @ts-expect-error pounds of weight are not pounds of force
  add(weightOfMachine, lbf(1));
  // @ts-expect-error a comparison across units
  compare(weightOfMachine, kg(1));
  // @ts-expect-error the least across units
  least(weightOfMachine, lb(1), kg(1));
  // @ts-expect-error a bare number is not a weight
  add(weightOfMachine, 3200);
  // @ts-expect-error nor is text
  add(weightOfMachine, '3200 lb');
  // @ts-expect-error a rounding step has the unit of the figure
  roundLoadUp(weightOfMachine, kg(1));
  // @ts-expect-error a weight does not become a length
  convert(weightOfMachine, 'in');
  // @ts-expect-error pounds of weight become force only through weightToForce
  convert(weightOfMachine, 'lbf');
  // @ts-expect-error the bridge takes pounds
  weightToForce(kg(1));
  // @ts-expect-error pounds times pounds is not in the table
  multiply(weightOfMachine, lb(1));
  // @ts-expect-error pounds per foot times inches is not in the table: convert first
  multiply(lbPerFt(1), inch(12));
  // @ts-expect-error pounds over psi is not in the table
  divide(weightOfMachine, psi(1));
  // @ts-expect-error the product is in pounds, not in feet
  const length: Quantity<'ft'> = multiply(lbPerFt(1), foot(1));
  // @ts-expect-error a record that looks like a figure is not one
  const forged: Quantity<'lb'> = { unit: 'lb', value: weightOfMachine.value };
  // @ts-expect-error a parameter in pounds takes no kilograms
  takesPounds(kg(1));
  // @ts-expect-error figures are read-only
  weightOfMachine.unit = 'lb';
  // @ts-expect-error no such unit
  quantity(1, 'stone');
  // @ts-expect-error nor when reading
  parseQuantity('1 stone', 'stone');

  // @ts-expect-error a working in feet is not one in pounds
  const wrong: Derived<'lb'> = given('length', foot(1));
  // @ts-expect-error a sum with feet in it is none at all
  sum('s', [working, given('length', foot(1))]);
  // @ts-expect-error differences too
  difference('d', working, given('length', foot(1)));
  // @ts-expect-error nor is there a least of pounds and kilograms
  leastOf('l', [working, given('mass', kg(1))]);
  // @ts-expect-error nor a greatest
  greatestOf('g', [working, given('mass', kg(1))]);
  // @ts-expect-error a figure without a working is not a recorded one
  difference('d', working, lb(1));
  // @ts-expect-error pounds times pounds
  product('p', working, working);
  // @ts-expect-error pounds over psi
  quotient('q', working, given('pressure', psi(1)));
  // @ts-expect-error another dimension
  converted('c', working, 'in');
  // @ts-expect-error a share is not a weight
  const share: Derived<'lb'> = quotient('q', working, working);
  void [length, forged, wrong, share];
}

const takesWorking = (working: Derived<'lb'>): Derived<'lb'> => working;
const takesPounds = (weight: Quantity<'lb'>): Quantity<'lb'> => weight;

it('and the lines beside them do compile', () => {
  expect(takesPounds(add(lb(1), lb(2))).unit).toBe('lb');
  expect(convert(kg(1), 'lb').unit).toBe('lb');
  expect(takesWorking(sum('s', [given('a', lb(1)), given('b', lb(2))])).value.unit).toBe('lb');
});
