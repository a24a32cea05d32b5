/** Recomputes every node of a working from its leaves, in order, and names the first that does not follow. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Basis, weaker } from '../../trace/index.js';
import type { DoesNotFollow } from './does-not-follow.js';
import { bounded, type ExactFigure, readFigure } from './figures-read.js';
import { lookUp } from './lookups.js';
import type { AnswerNode, ComputedNode, FigureText, GivenNode, LookedUpNode } from './node-shape.js';
import { digitsOf, isNothingBeside, minus, type Rational, snappedOrder } from './rational.js';
import type { SpecLeaves } from './spec-leaves.js';
import { stepOf } from './step.js';

/** What was found on the way. */
export interface Followed {
  readonly figures: readonly ExactFigure[];
  readonly bases: readonly Basis[];
  readonly fromSpec: number;
  readonly fromTables: number;
  /** Leaves that were not compared with a spec or a table: `wheel weight (usual wheels, 15 x 6)`. */
  readonly taken: readonly string[];
}

/** What the nodes are compared with. */
export interface Against {
  /** The figures of the spec by their keys; undefined when the answer holds no spec. */
  readonly leaves: SpecLeaves | undefined;
  /** Whether the tables are those of the library that verifies. */
  readonly sameTables: boolean;
}

type Outcome = Either<DoesNotFollow, 'compared' | 'taken'>;

const wrong = (at: string, what: string, found: string, needed: string): Either<DoesNotFollow, never> =>
  left({ at, what, found, needed });

const inWords = ({ value, unit }: ExactFigure): FigureText => `${digitsOf(value)}${unit === 'ratio' ? '' : ` ${unit}`}`;

function givenAgrees(node: GivenNode, figure: ExactFigure, at: string, { leaves }: Against): Outcome {
  if (node.path === undefined || leaves === undefined) return right('taken');
  const told = leaves(node.path);
  const what = `${node.name}, ${node.path} of the spec`;
  if (told === undefined) return wrong(at, what, node.figure, 'a key that the spec has');
  if (told.unit !== figure.unit || snappedOrder(told.value, figure.value) !== 0)
    return wrong(at, what, node.figure, inWords(told));
  return node.basis === told.basis ? right('compared') : wrong(at, `basis of ${what}`, node.basis, told.basis);
}

function lookedUpAgrees(node: LookedUpNode, figure: ExactFigure, at: string, { sameTables }: Against): Outcome {
  const what = `${node.name}, ${node.table}, ${node.key}`;
  if (node.basis !== 'published') return wrong(at, `basis of ${what}`, node.basis, 'published');
  const found = sameTables ? lookUp(node, figure.value) : 'not found';
  if (found === 'differs') return wrong(at, what, node.figure, 'the figure that the table prints');
  return right(found === 'agrees' ? 'compared' : 'taken');
}

/** Whether the figure agrees with what was worked out, to 24 digits of it or of what it was worked out from. */
const agrees = (stated: Rational, exact: Rational, operands: readonly ExactFigure[]): boolean => {
  const gap = minus(stated, exact);
  return isNothingBeside(gap, exact) || operands.some(({ value }) => isNothingBeside(gap, value));
};

interface Before {
  readonly figures: readonly ExactFigure[];
  readonly bases: readonly Basis[];
}

/** The step's own figure in exact fractions, when what the answer says agrees with it. */
function computedAgrees(
  node: ComputedNode,
  stated: ExactFigure,
  at: string,
  before: Before,
): Either<DoesNotFollow, ExactFigure> {
  const what = node.name ?? `a ${node.is}`;
  const operands: ExactFigure[] = [];
  let basis: Basis = 'scale';
  for (const place of node.of) {
    const operand = before.figures[place];
    if (operand === undefined) return wrong(at, what, `operand ${place}`, 'a node that stands before it');
    operands.push(operand);
    basis = weaker(basis, before.bases[place] as Basis);
  }
  const [first, ...others] = operands;
  const step = first === undefined ? undefined : stepOf(node, [first, ...others], stated.unit);
  const value = step && bounded(step.value);
  if (step === undefined || value === undefined) return wrong(at, what, node.is, 'a step that its operands allow');
  const exact = { value, unit: step.unit };
  if (stated.unit !== exact.unit || !agrees(stated.value, value, operands))
    return wrong(at, what, node.figure, inWords(exact));
  return basis === node.basis ? right(exact) : wrong(at, `basis of ${what}`, node.basis, basis);
}

/** The exact figure of a node, when the answer's figure agrees with it. */
function figureOf(node: AnswerNode, at: string, before: Before, against: Against): Either<DoesNotFollow, Found> {
  const stated = readFigure(node.figure);
  if (stated === undefined) return wrong(at, node.name ?? node.is, node.figure, 'digits, a blank and a unit');
  if (node.is === 'constant') return right({ figure: stated, basis: 'scale' });
  if (node.is === 'given' || node.is === 'looked up') {
    const { basis } = node;
    const outcome =
      node.is === 'given' ? givenAgrees(node, stated, at, against) : lookedUpAgrees(node, stated, at, against);
    return isLeft(outcome) ? outcome : right({ figure: stated, basis, leaf: { is: node.is, how: outcome.right } });
  }
  const step = computedAgrees(node, stated, at, before);
  return isLeft(step) ? step : right({ figure: step.right, basis: node.basis });
}

interface Found {
  readonly figure: ExactFigure;
  readonly basis: Basis;
  readonly leaf?: { readonly is: 'given' | 'looked up'; readonly how: 'compared' | 'taken' };
}

const nameOf = (node: AnswerNode): string =>
  node.is === 'looked up' ? `${node.name} (${node.table}, ${node.key})` : (node.name ?? node.is);

/** Goes through the nodes once, in their order. */
export function follow(nodes: readonly AnswerNode[], against: Against): Either<DoesNotFollow, Followed> {
  const figures: ExactFigure[] = [];
  const bases: Basis[] = [];
  const taken: string[] = [];
  const compared = { given: 0, 'looked up': 0 };
  for (const [i, node] of nodes.entries()) {
    const found = figureOf(node, `working.nodes.${i}`, { figures, bases }, against);
    if (isLeft(found)) return found;
    const { figure, basis, leaf } = found.right;
    figures.push(figure);
    bases.push(basis);
    if (leaf?.how === 'compared') compared[leaf.is] += 1;
    if (leaf?.how === 'taken') taken.push(nameOf(node));
  }
  return right({ figures, bases, taken, fromSpec: compared.given, fromTables: compared['looked up'] });
}
