/** One step of a working, done again in fractions: its figure and its unit from those of its operands. */
import { dimensionOf, isUnit, type Unit } from '../../units/index.js';
import { products } from '../../units/products.js';
import { unitList } from '../../units/unit-list.js';
import type { ExactFigure } from './figures-read.js';
import type { ComputedNode } from './node-shape.js';
import { over, type Rational, rationalOf, snappedMinus, times } from './rational.js';
import { arcSine, arcTangent, cosine, power, sine, squareRoot, tangent } from './rational-functions.js';
import { greatest, least, rounded, snappedSum } from './rational-steps.js';

type Operands = readonly [ExactFigure, ...ExactFigure[]];

const row = (first: Unit, second: Unit): Unit | undefined =>
  products.find(([a, b]) => (a === first && b === second) || (a === second && b === first))?.[2];

function unitOfProduct(a: Unit, b: Unit): Unit | undefined {
  if (b === 'ratio') return a;
  return a === 'ratio' ? b : row(a, b);
}

/** The unit that makes the dividend's when it is multiplied by the divisor's. */
function unitOfQuotient(a: Unit, b: Unit): Unit | undefined {
  if (a === b) return 'ratio';
  if (b === 'ratio') return a;
  const found = products.find(([x, y, made]) => made === a && (x === b || y === b));
  return found === undefined ? undefined : found[found[0] === b ? 1 : 0];
}

const rootUnits: Partial<Record<Unit, Unit>> = { in2: 'in', ft2: 'ft', m2: 'm', ratio: 'ratio' };

/** The size of a unit in the base unit of its dimension, by the definitions. */
function sizeOf(unit: Unit): Rational {
  const [, size, per] = unitList[unit];
  return over(rationalOf(size) as Rational, rationalOf(per) as Rational);
}

const inUnit = (value: Rational | undefined, unit: Unit | undefined): ExactFigure | undefined =>
  value === undefined || unit === undefined ? undefined : { value, unit };

/** Terms of one unit; undefined for a list of several. */
function ofOneUnit(terms: Operands, read: (values: readonly [Rational, ...Rational[]]) => Rational) {
  const [{ unit }] = terms;
  const values = terms.map(({ value }) => value) as readonly Rational[] as readonly [Rational, ...Rational[]];
  return terms.every((term) => term.unit === unit) ? { value: read(values), unit } : undefined;
}

function converted({ value, unit }: ExactFigure, target: string): ExactFigure | undefined {
  if (!isUnit(target) || dimensionOf(unit) !== dimensionOf(target)) return undefined;
  return { value: over(times(value, sizeOf(unit)), sizeOf(target)), unit: target };
}

function withTwo(is: ComputedNode['is'], a: ExactFigure, b: ExactFigure): ExactFigure | undefined {
  switch (is) {
    case 'difference':
      return a.unit === b.unit ? { value: snappedMinus(a.value, b.value), unit: a.unit } : undefined;
    case 'product':
      return inUnit(times(a.value, b.value), unitOfProduct(a.unit, b.unit));
    case 'quotient':
      return b.value.top === 0n ? undefined : inUnit(over(a.value, b.value), unitOfQuotient(a.unit, b.unit));
    case 'power':
      return a.unit === 'ratio' && b.unit === 'ratio' ? inUnit(power(a.value, b.value), 'ratio') : undefined;
    default:
      return undefined;
  }
}

/** A function of a figure in one unit that gives a figure in another. */
const functions = {
  sine: ['deg', sine, 'ratio'],
  cosine: ['deg', cosine, 'ratio'],
  tangent: ['deg', tangent, 'ratio'],
  arcSine: ['ratio', arcSine, 'deg'],
  arcTangent: ['ratio', arcTangent, 'deg'],
} as const satisfies Partial<Record<ComputedNode['is'], readonly [Unit, (a: Rational) => Rational | undefined, Unit]>>;

function withOne({ is, rounding }: ComputedNode, a: ExactFigure, unit: string): ExactFigure | undefined {
  switch (is) {
    case 'convert':
      return converted(a, unit);
    case 'relabel':
      return a.unit === 'lb' ? { value: a.value, unit: 'lbf' } : undefined;
    case 'squareRoot':
      return inUnit(squareRoot(a.value), rootUnits[a.unit]);
    case 'round': {
      const step = rationalOf(rounding?.step ?? '');
      return step === undefined || step.top <= 0n
        ? undefined
        : inUnit(rounded(a.value, step, rounding?.mode ?? ''), a.unit);
    }
    case 'sine':
    case 'cosine':
    case 'tangent':
    case 'arcSine':
    case 'arcTangent': {
      const [from, read, to] = functions[is];
      return a.unit === from ? inUnit(read(a.value), to) : undefined;
    }
    default:
      return undefined;
  }
}

/**
 * The figure of a step from its operands; undefined where the step cannot be done with them.
 *
 * @param unit the unit the node says its figure is in: a conversion asks for it
 */
export function stepOf(node: ComputedNode, operands: Operands, unit: string): ExactFigure | undefined {
  switch (node.is) {
    case 'sum':
      return ofOneUnit(operands, snappedSum);
    case 'least':
      return ofOneUnit(operands, least);
    case 'greatest':
      return ofOneUnit(operands, greatest);
    default: {
      const [a, b, ...others] = operands;
      if (others.length > 0) return undefined;
      return b === undefined ? withOne(node, a, unit) : withTwo(node.is, a, b);
    }
  }
}
