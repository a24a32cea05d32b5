/** A yard's sum six ways: a trailer in lb, a machine in kg, a tongue share, two axles, what is left of one axle's rating. */
import { Decimal } from 'decimal.js';
import Qty from 'js-quantities';
import { all, create } from 'mathjs';
import { constant, converted, difference, given, product, quotient, sum } from '../dist/trace.js';
import { add, convert, kg, lb, multiply, ratio, scale, subtract } from '../dist/units.js';
import { compare } from './harness.js';

const math = create(all!);
const Digits = Decimal.clone({ defaults: true, precision: 34 });

/** Gross, tongue load, load on each axle, reserve of an axle; all in lb. */
type Answer = readonly [gross: number, tongue: number, each: number, reserve: number];

function bareNumbers(): Answer {
  const gross = 3650 + 4150 / 0.45359237;
  const tongue = gross * 0.12;
  const each = (gross - tongue) / 2;
  return [gross, tongue, each, 7000 - each];
}

function bareDecimals(): Answer {
  const gross = new Digits(3650).plus(new Digits(4150).div('0.45359237'));
  const tongue = gross.times('0.12');
  const each = gross.minus(tongue).div(2);
  return [gross.toNumber(), tongue.toNumber(), each.toNumber(), new Digits(7000).minus(each).toNumber()];
}

function withUnits(): Answer {
  const gross = add(lb(3650), convert(kg(4150), 'lb'));
  const tongue = multiply(gross, ratio('0.12'));
  const each = scale(subtract(gross, tongue), '0.5');
  return [
    gross.value.toNumber(),
    tongue.value.toNumber(),
    each.value.toNumber(),
    subtract(lb(7000), each).value.toNumber(),
  ];
}

function withWorking(): Answer {
  const gross = sum('gross', [
    given('trailer', lb(3650), 'scale'),
    converted('machine in lb', given('machine', kg(4150)), 'lb'),
  ]);
  const tongue = product('tongue load', gross, given('tongue share', ratio('0.12')));
  const each = quotient('each axle', difference('axle load', gross, tongue), constant(ratio(2)));
  const reserve = difference('reserve', given('axle rating', lb(7000), 'label'), each);
  return [gross, tongue, each, reserve].map(({ value }) => value.value.toNumber()) as unknown as Answer;
}

function withMathjs(): Answer {
  const gross = math.add(math.unit(3650, 'lbm'), math.unit(4150, 'kg'));
  const tongue = math.multiply(gross, 0.12) as typeof gross;
  const each = math.divide(math.subtract(gross, tongue), 2) as typeof gross;
  const reserve = math.subtract(math.unit(7000, 'lbm'), each);
  return [gross.toNumber('lbm'), tongue.toNumber('lbm'), each.toNumber('lbm'), reserve.toNumber('lbm')];
}

function withQuantities(): Answer {
  const gross = new Qty(3650, 'lbs').add(new Qty(4150, 'kg'));
  const tongue = gross.mul(0.12);
  const each = gross.sub(tongue).div(2);
  const reserve = new Qty(7000, 'lbs').sub(each);
  return [gross.to('lbs').scalar, tongue.to('lbs').scalar, each.to('lbs').scalar, reserve.to('lbs').scalar];
}

export function benchUnits(): void {
  compare('Units arithmetic: 7 steps with one conversion (mathjs, js-quantities and bare numbers are binary floats)', [
    { name: 'bare decimal.js, no units', run: bareDecimals },
    { name: 'our figures with units', run: withUnits },
    { name: 'our figures with their working', run: withWorking },
    { name: 'mathjs units', run: withMathjs },
    { name: 'js-quantities', run: withQuantities },
    { name: 'bare numbers, no units', run: bareNumbers },
  ]);
}
