import { describe, expect, it } from 'vitest';
import { couplerClass, hitchTestForces, towingTables } from '../../../src/towing/index.js';
import { lb, show } from '../../../src/units/index.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

describe('coupler classes', () => {
  it('include their upper end and nothing above it', () => {
    const classes = ['1', '2000', '2000.01', '3500', '3500.01', '5000', '5000.01', '10000'].map(
      (gross) => rightOf(couplerClass(lb(gross))).couplerClass,
    );
    expect(classes.join(' ')).toBe('1 1 2 2 3 3 4 4');
    expect(leftOf(couplerClass(lb('10000.01')))).toMatchObject({
      tag: 'NotTabulated',
      asked: '10,000.01 lb',
      instead: 'no open class table reaches above 10,000 lb: read the rating stamped on the coupler',
    });
    expect(leftOf(couplerClass(lb(0))).tag).toBe('NotAboveZero');
  });
  it('hand on the limits that were compared, up to the first that is not passed', () => {
    const { decisions } = rightOf(couplerClass(lb(3000)));
    expect(decisions.map(({ comparison, right, holds }) => [comparison, right.symbol, holds])).toEqual([
      ['>', undefined, true],
      ['<=', 'class 1 limit', false],
      ['<=', 'class 2 limit', true],
    ]);
  });
  it('print forces to class 3 and factors in class 4', () => {
    const three = rightOf(couplerClass(lb(4000)));
    expect(
      [three.tension, three.transverse, three.verticalCompression, three.chainEach, three.ball!].map(({ value }) =>
        show(value),
      ),
    ).toEqual(['15,000 lbf', '4,000 lbf', '7,000 lbf', '5,000 lb', '2 in']);
    const four = rightOf(couplerClass(lb(7000)));
    expect(
      [
        four.tension,
        four.compression,
        four.transverse,
        four.verticalTension,
        four.verticalCompression,
        four.chainEach,
      ].map(({ value }) => show(value)),
    ).toEqual(['21,000 lbf', '21,000 lbf', '7,000 lbf', '9,100 lbf', '9,800 lbf', '7,000 lb']);
    expect(four.ball).toBeUndefined();
    expectReplays(four.tension, four.verticalTension, three.tension, four.chainEach);
  });
});

describe('hitch test forces', () => {
  it('follow slope and intercept', () => {
    const { forces, moment } = rightOf(hitchTestForces(lb(5000), 'weight carrying'));
    expect(
      forces.map(({ step, component, direction, force }) => `${step} ${component} ${direction} ${show(force.value)}`),
    ).toEqual([
      '1 vertical down 2,830 lbf',
      '1 longitudinal compressive 2,830 lbf',
      '2 longitudinal tensile 2,680 lbf',
      '2 vertical down 750 lbf',
      '3 longitudinal compressive 2,680 lbf',
      '3 vertical down 750 lbf',
      '4 transverse left 1,500 lbf',
      '5 transverse right 1,500 lbf',
    ]);
    expect(moment).toBeUndefined();
    expectReplays(...forces.map(({ force }) => force));
  });
  it('add a bar moment for a weight distributing hitch', () => {
    const { forces, moment } = rightOf(hitchTestForces(lb(10000), 'weight distributing'));
    expect(forces).toHaveLength(7);
    expect([show(forces[0]!.force.value), show(moment!.value)]).toEqual(['2,100 lbf', '51,000 lbf\u00b7in']);
    expectReplays(...forces.map(({ force }) => force));
  });
  it('refuse a rating of nothing', () => {
    expect(leftOf(hitchTestForces(lb(0), 'weight carrying')).tag).toBe('NotAboveZero');
  });
});

it('lists its tables', () => {
  expect(towingTables.map(({ name }) => name)).toEqual(['coupler classes', 'hitch test forces']);
});
