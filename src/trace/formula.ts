/** A step as people write it: `gross weight - axle load`, `12,400 lb - 10,848.42 lb`. */
import { doubleOf } from '../units/figure.js';
import { inReaderUnits, type Quantity, type ReaderUnits, showBrief, showUnit, type Unit } from '../units/index.js';
import type { Computed, Node, Operation } from './node.js';

/** Whether a figure is smaller than one, by its double: where that is in doubt, two decimals and four print the same. */
const isBelowOne = (value: Quantity<Unit>): boolean => Math.abs(doubleOf(value)) < 1;

/** How a figure is written for reading: two decimals, four below one; in the units of the reader. */
export function figure(node: Node, units: ReaderUnits = 'us'): string {
  const value = inReaderUnits(node.value, units);
  return showBrief(value, isBelowOne(value) ? 4 : 2);
}

/** Writes a named part or a leaf: by its name in a formula, by its figure in the line of numbers. */
export interface Writer {
  readonly units: ReaderUnits;
  readonly part: (node: Node) => string;
}

export const byName = (units: ReaderUnits): Writer => ({ units, part: (node) => node.symbol ?? figure(node, units) });
export const byFigure = (units: ReaderUnits): Writer => ({ units, part: (node) => figure(node, units) });

/**
 * The context of a nested step, which decides whether it needs brackets: alone between commas, as a term of a sum, as what is
 * taken off, as a factor, as what is divided, or close to an operator that would take its last part.
 */
type Place = 'alone' | 'term' | 'taken off' | 'factor' | 'divided' | 'close';

const productsAndQuotients: readonly Operation[] = ['product', 'quotient'];
const functions: readonly Operation[] = ['least', 'greatest', 'squareRoot'];

/** The steps that need no brackets in a place. */
const bare: Readonly<Record<Exclude<Place, 'alone'>, ReadonlySet<Operation>>> = {
  term: new Set<Operation>([
    ...functions,
    ...productsAndQuotients,
    'sum',
    'difference',
    'power',
    'sine',
    'cosine',
    'tangent',
    'arcSine',
    'arcTangent',
  ]),
  'taken off': new Set<Operation>([...functions, ...productsAndQuotients, 'power']),
  factor: new Set<Operation>([...functions, 'product', 'power']),
  divided: new Set<Operation>([...functions, 'product', 'power']),
  close: new Set<Operation>(functions),
};

const isShare = ({ operation, value }: Computed): boolean => operation === 'convert' && value.unit === 'ratio';

function inside(node: Node, write: Writer, place: Place): string {
  if (node.kind !== 'computed' || node.symbol !== undefined) return write.part(node);
  // A percentage and its share of one are one figure.
  if (isShare(node)) return inside(node.of[0] as Node, write, place);
  const text = formula(node, write);
  return place === 'alone' || bare[place].has(node.operation) ? text : `(${text})`;
}

const list = (node: Computed, write: Writer): string => node.of.map((part) => inside(part, write, 'alone')).join(', ');

function rounding({ rounding: how, value }: Computed): string {
  const step = `${how?.step.toFixed()} ${showUnit(value.unit)}`.trimEnd();
  switch (how?.mode) {
    case 'nearest':
      return `rounded to the nearest ${step}`;
    case 'nearest-down':
      return `rounded to the nearest ${step}, halves down`;
    default:
      return `rounded ${how?.mode} to steps of ${step}`;
  }
}

/** Units spelled out so that `83 in in ft` reads `83 in in feet`. */
const spelled: Partial<Record<Unit, string>> = { in: 'inches', ft: 'feet' };

/** A conversion between two units that are printed as the same unit. */
const sameForReader = ({ of, value }: Computed, { units }: Writer): boolean =>
  inReaderUnits((of[0] as Node).value, units).unit === inReaderUnits(value, units).unit;

/** The right-hand side of a step; unnamed steps are written inside. */
export function formula(node: Computed, write: Writer): string {
  const part = (index: number, place: Place = 'close'): string => inside(node.of[index] as Node, write, place);
  switch (node.operation) {
    case 'sum':
      return node.of.map((term) => inside(term, write, 'term')).join(' + ');
    case 'difference':
      return `${part(0, 'term')} - ${part(1, 'taken off')}`;
    case 'product':
      return `${part(0, 'factor')} x ${part(1, 'factor')}`;
    case 'quotient':
      return `${part(0, 'divided')} / ${part(1)}`;
    case 'least':
      return `least of (${list(node, write)})`;
    case 'greatest':
      return `greatest of (${list(node, write)})`;
    case 'convert':
      return isShare(node) || sameForReader(node, write)
        ? part(0, 'alone')
        : `${part(0)} in ${spelled[node.value.unit] ?? showUnit(node.value.unit)}`;
    case 'relabel':
      return `${part(0)} as ${node.value.unit}`;
    case 'round':
      return `${part(0)} ${rounding(node)}`;
    case 'squareRoot':
      return `square root of (${part(0, 'alone')})`;
    case 'power':
      return `${part(0)} ^ ${part(1)}`;
    case 'sine':
      return `sin ${part(0)}`;
    case 'cosine':
      return `cos ${part(0)}`;
    case 'tangent':
      return `tan ${part(0)}`;
    case 'arcSine':
      return `arcsin ${part(0)}`;
    case 'arcTangent':
      return `arctan ${part(0)}`;
  }
}
