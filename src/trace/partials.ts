/** How one recorded step answers to each of its parts: the rules of differentiation, in decimals. */
import { compareDecimals, Decimal, powerOf, workedOut } from '../units/internal.js';
import type { Computed } from './node.js';
import { decimalReading } from './reading.js';

const one = new Decimal(1);
const none = new Decimal(0);
const degree = workedOut('acos', new Decimal(-1)).div(180);

/** The first of the best takes it all; the others are asked only in a tie. */
function pick(figures: readonly Decimal[], sign: 1 | -1): readonly Decimal[] {
  let best = 0;
  for (let i = 1; i < figures.length; i += 1)
    if (compareDecimals(figures[i] as Decimal, figures[best] as Decimal) * sign < 0) best = i;
  return figures.map((_, i) => (i === best ? one : none));
}

const powerRule = (a: Decimal, b: Decimal): readonly Decimal[] => [
  b.isZero() ? none : b.times(powerOf(a, b.minus(1))),
  a.isZero() ? none : powerOf(a, b).times(workedOut('ln', a)),
];

/**
 * The partial derivative of a step by each of its parts, at the figures recorded.
 *
 * Through a rounding it is one: what is rounded moves on average as what it came from. Angles are degrees.
 */
export function partialsOf(node: Computed): readonly Decimal[] {
  const figures = node.of.map(({ value }) => value.value);
  const [a, b] = figures as [Decimal, Decimal];
  switch (node.operation) {
    case 'sum':
      return figures.map(() => one);
    case 'difference':
      return [one, one.negated()];
    case 'product':
      return [b, a];
    case 'quotient':
      return [one.div(b), a.div(b.times(b)).negated()];
    case 'least':
      return pick(figures, 1);
    case 'greatest':
      return pick(figures, -1);
    case 'convert':
      return [decimalReading.convert(one, node.factor as NonNullable<Computed['factor']>)];
    case 'relabel':
    case 'round':
      return [one];
    case 'power':
      return powerRule(a, b);
    case 'squareRoot':
      return [one.div(node.value.value.times(2))];
    case 'sine':
      return [decimalReading.cosine(a).times(degree)];
    case 'cosine':
      return [decimalReading.sine(a).times(degree).negated()];
    case 'tangent':
      return [one.plus(node.value.value.pow(2)).times(degree)];
    case 'arcSine':
      return [one.div(one.minus(a.times(a)).sqrt().times(degree))];
    case 'arcTangent':
      return [one.div(one.plus(a.times(a)).times(degree))];
  }
}

/** The parts of a least or a greatest that are as good as the one taken, that one first. */
export function tiedParts(node: Computed): readonly Computed['of'][number][] {
  return node.of.filter(({ value }) => compareDecimals(value.value, node.value.value) === 0);
}
