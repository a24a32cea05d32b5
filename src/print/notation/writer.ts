/** Writes a recorded step in some notation: the notation gives the look of each operation, this file puts the brackets. */
import type { Computed, Node } from '../../trace/index.js';
import { showUnit } from '../../units/index.js';
import { digitsAndUnit, type Notation, roundingInWords, unitInWords } from './notation.js';

/** How firmly a written piece holds together, from loose to firm. */
const firmness = { loose: 0, sum: 1, quotient: 2, product: 3, power: 4, atom: 5 } as const;
type Firmness = keyof typeof firmness;

/** A piece of a formula, and how firmly it holds together. */
export interface Written {
  readonly text: string;
  readonly holds: Firmness;
}

const enclosed = ({ text, holds }: Written, least: Firmness, { brackets }: Notation): string =>
  firmness[holds] < firmness[least] ? brackets(text) : text;

const functionWords = {
  least: 'least of',
  greatest: 'greatest of',
  sine: 'sin',
  cosine: 'cos',
  tangent: 'tan',
  arcSine: 'arcsin',
  arcTangent: 'arctan',
} as const;

type Part = (index: number, least: Firmness) => string;

/** A step whose operation has two sides or one. */
function operationIn(node: Computed, part: Part, notation: Notation): Written {
  switch (node.operation) {
    case 'difference':
      return { text: notation.difference(part(0, 'sum'), part(1, 'quotient')), holds: 'sum' };
    case 'product':
      return { text: notation.product(part(0, 'product'), part(1, 'product')), holds: 'product' };
    case 'quotient':
      return notation.bar
        ? { text: notation.quotient(part(0, 'loose'), part(1, 'loose')), holds: 'product' }
        : { text: notation.quotient(part(0, 'product'), part(1, 'power')), holds: 'quotient' };
    case 'power':
      return { text: notation.power(part(0, 'atom'), part(1, notation.bar ? 'loose' : 'atom')), holds: 'power' };
    case 'squareRoot':
      return { text: notation.root(part(0, 'loose')), holds: 'atom' };
    case 'convert':
      // A percentage and its share of one are one figure.
      return node.value.unit === 'ratio'
        ? { text: part(0, 'power'), holds: 'power' }
        : { text: notation.remarked(part(0, 'power'), `in ${unitInWords(node.value.unit)}`), holds: 'loose' };
    case 'relabel':
      return { text: notation.remarked(part(0, 'power'), `as ${showUnit(node.value.unit)}`), holds: 'loose' };
    default:
      return { text: notation.remarked(part(0, 'power'), roundingInWords(node)), holds: 'loose' };
  }
}

/** The right-hand side of a step; what has no name of its own is written inside it. */
export function formulaIn(node: Computed, notation: Notation, leaf: (node: Node) => Written): Written {
  const written = (of: Node): Written =>
    of.kind === 'computed' && of.symbol === undefined ? formulaIn(of, notation, leaf) : leaf(of);
  const part: Part = (index, least) => enclosed(written(node.of[index] as Node), least, notation);
  const every = (least: Firmness): readonly string[] => node.of.map((_, index) => part(index, least));
  switch (node.operation) {
    case 'sum':
      return { text: notation.sum(every('sum')), holds: 'sum' };
    case 'least':
    case 'greatest':
    case 'sine':
    case 'cosine':
    case 'tangent':
    case 'arcSine':
    case 'arcTangent':
      return { text: notation.called(functionWords[node.operation], every('loose')), holds: 'atom' };
    default:
      return operationIn(node, part, notation);
  }
}

/** A part by its figure; a figure below zero is written in brackets behind an operator. */
export const byFigureIn =
  (notation: Notation) =>
  (node: Node): Written => {
    const [digits, unit] = digitsAndUnit(node);
    const text = notation.figure(digits, unit);
    return { text, holds: digits.startsWith('-') ? 'loose' : 'atom' };
  };

/** A part by its name; a number of the formula has no name and is written as the number. */
export const byNameIn =
  (notation: Notation) =>
  (node: Node): Written =>
    node.symbol === undefined ? byFigureIn(notation)(node) : { text: notation.name(node.symbol), holds: 'atom' };

/** What a line of a working shows, in one notation: the formula by name, the same by figure, and the result. */
export interface WrittenStep {
  readonly name: string;
  /** Absent for an input. */
  readonly formula?: string;
  /** Absent where it would repeat the formula or the result. */
  readonly numbers?: string;
  readonly result: string;
}

/** A line of a working in a notation. */
export function stepIn(node: Node, symbol: string, notation: Notation): WrittenStep {
  const [name, result] = [notation.name(symbol), notation.figure(...digitsAndUnit(node))];
  if (node.kind !== 'computed') return { name, result };
  const formula = formulaIn(node, notation, byNameIn(notation)).text;
  const numbers = formulaIn(node, notation, byFigureIn(notation)).text;
  return { name, formula, ...(numbers !== formula && numbers !== result && { numbers }), result };
}
