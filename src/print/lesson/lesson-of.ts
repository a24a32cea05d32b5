/** An explanation for a learner, as data: givens once, the steps that lead to the answer, a proof, what changes it most. */
import {
  type Basis,
  type Computed,
  type Derived,
  type Node,
  nodesOf,
  type WorkingLine,
  workingLines,
} from '../../trace/index.js';
import { compare, type Quantity, type Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { ideaFor } from './ideas.js';
import type { Lesson, LessonChoice, LessonGiven, LessonStep, RoundedAs } from './lesson-data.js';
import { moversOf } from './movers.js';

/** What the caller may say about a lesson. */
export interface LessonOptions {
  /** The question in a sentence; `How much is the tongue load?` when it is left out. */
  readonly question?: string;
  /** The idea in a sentence, in place of the one for this kind of figure. */
  readonly idea?: string;
  /** How the answer is rounded when it is written down; by its name when it is left out. */
  readonly roundedAs?: RoundedAs;
}

const whereByBasis: Readonly<Record<Basis, string>> = {
  scale: 'on a scale ticket',
  label: 'on the label, plate or molding',
  published: 'in a published table',
  computed: 'calculated before',
  stated: 'as somebody stated it',
  estimated: 'estimated',
};

function whereOf({ node, from = '' }: WorkingLine): string {
  if (node.kind === 'looked up') return from;
  if (node.kind !== 'given') return from === '' ? 'part of the formula' : from;
  return `${whereByBasis[node.basis]}${node.path === undefined ? '' : ` (${node.path})`}`;
}

const isChoice = (node: Node): node is Computed =>
  node.kind === 'computed' && (node.operation === 'least' || node.operation === 'greatest') && node.of.length > 2;

const isTaken = (part: Node, of: Computed): boolean =>
  compare(part.value as Quantity<'lb'>, of.value as Quantity<'lb'>) === 0;

/** The nodes behind an answer, leaves first; of a choice only the parts that were taken are followed. */
function followed(root: Node): ReadonlySet<Node> {
  const seen = new Set<Node>();
  const visit = (node: Node): void => {
    if (seen.has(node)) return;
    seen.add(node);
    if (node.kind === 'computed') node.of.filter((part) => !isChoice(node) || isTaken(part, node)).forEach(visit);
  };
  visit(root);
  return seen;
}

const choicesOf = (node: Computed): readonly LessonChoice[] =>
  node.of.map((part) => ({ symbol: part.symbol ?? 'a figure', node: part, taken: isTaken(part, node) }));

function roundingFor(symbol: string): RoundedAs {
  if (/payload|reserve|allowed|limit|capacity|rating/.test(symbol)) return 'capacity';
  return /load|weight|combination/.test(symbol) ? 'load' : 'as it stands';
}

/** A difference is proved by adding back, a quotient by multiplying back; both parts must have names. */
function proofOf(node: Node, symbol: string): Lesson['proof'] {
  if (node.kind !== 'computed' || (node.operation !== 'difference' && node.operation !== 'quotient')) return undefined;
  const [whole, part] = node.of as readonly [Node, Node];
  if (whole.symbol === undefined || part.symbol === undefined) return undefined;
  const sign = node.operation === 'difference' ? '+' : 'x';
  return { formula: `${symbol} ${sign} ${part.symbol} = ${whole.symbol}`, parts: [node, part], sum: whole };
}

/** Inputs of one key are one input, under however many names they go on. */
function onceEach(givens: readonly WorkingLine[]): readonly LessonGiven[] {
  const known = new Map<unknown, LessonGiven>();
  for (const line of givens) {
    const { node, symbol } = line;
    const key = node.kind === 'given' && node.path !== undefined ? `${node.path} ${symbol}` : node;
    if (!known.has(key)) known.set(key, { symbol, node, where: whereOf(line) });
  }
  return [...known.values()];
}

/**
 * How does one explain this figure to somebody who has not seen it before?
 *
 * The question and its answer; the inputs once, each with where one reads it; the idea; the steps; a proof by going back;
 * and the inputs that change the answer most, by the slopes of the working.
 *
 * Not a record for programs: that is `workingLines`. Steps that lead only to limits which do not govern are left out.
 *
 * @param answer a figure with its working
 * @param options the question, the idea and the rounding, where the caller has better words
 * @returns the lesson as data; `lesson` prints it
 * @example lessonOf(grossWeight).givens.length // 2
 * @source the steps carry their own
 */
export function lessonOf<U extends Unit>(answer: Derived<U>, options: LessonOptions = {}): Lesson {
  const symbol = answer.why.symbol ?? 'the answer';
  const { question = `How much is the ${symbol.replace(/^the /, '')}?`, roundedAs = roundingFor(symbol) } = options;
  const idea = options.idea ?? ideaFor(symbol);
  const wanted = followed(answer.why);
  const chosen = new Set(collected(nodesOf([answer.why]).filter(isChoice), ({ of }) => of));
  const lines = workingLines([answer.why]).filter(({ node }) => wanted.has(node));
  const proof = proofOf(answer.why, symbol);
  return {
    question,
    answer: answer as Derived<Unit>,
    roundedAs,
    ...(idea !== undefined && { idea }),
    givens: onceEach(
      lines.filter(({ operation, node }) => operation === undefined && (wanted.has(node) || chosen.has(node))),
    ),
    steps: collected(lines, ({ operation, symbol: name, node, formula = '' }): readonly LessonStep[] =>
      operation === undefined
        ? []
        : [{ symbol: name, node, formula, ...(isChoice(node) && { choices: choicesOf(node) }) }],
    ),
    ...(proof && { proof }),
    movers: moversOf(answer as Derived<Unit>),
  };
}
