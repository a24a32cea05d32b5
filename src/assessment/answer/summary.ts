/** Whether what an answer says in its summary follows from its working. */
import type { Basis } from '../../trace/index.js';
import { has } from '../../units/internal.js';
import { verdictOf } from '../parts/verdict.js';
import type { DoesNotFollow } from './does-not-follow.js';
import { edgeStep, shareStep } from './edge.js';
import { type ExactFigure, readFigure } from './figures-read.js';
import type { Followed } from './follow.js';
import type { AnswerNode } from './node-shape.js';
import { digitsOf, order, type Rational, rational, rationalOf, snappedOrder, times } from './rational.js';
import { rounded } from './rational-steps.js';
import type { Answer, AnswerCheck, AnswerFigure } from './shape.js';

type Fault = DoesNotFollow | undefined;

/** The first fault of a list of questions, each asked only when those before it had none. */
function firstOf(questions: Iterable<Fault>): Fault {
  for (const fault of questions) if (fault !== undefined) return fault;
  return undefined;
}

const hundred = rational(100n);
type Edge = 'away' | 'up' | 'down' | 'nearest';

/** A figure of the summary against its node, rounded at the edge: `away` is up for a load that presses, and down for one that lifts. */
function printedAs(
  at: string,
  what: string,
  text: string,
  node: ExactFigure | undefined,
  mode: Edge,
  share = false,
): Fault {
  if (node === undefined) return { at, what, found: 'no such node', needed: 'the place of a node' };
  const unit = share ? '%' : node.unit;
  const value = share ? times(node.value, hundred) : node.value;
  const step = rationalOf(share ? shareStep : edgeStep(node.unit)) as Rational;
  const away = value.top < 0n ? 'down' : 'up';
  const needed = rounded(value, step, mode === 'away' ? away : mode) as Rational;
  const found = readFigure(text);
  const follows = found !== undefined && found.unit === unit && order(found.value, needed) === 0;
  return follows ? undefined : { at, what, found: text, needed: `${digitsOf(needed)} ${unit}` };
}

const nodeAt = ({ figures }: Followed, place: number | undefined): ExactFigure | undefined => figures[place ?? -1];

/** Reserve and share are steps on the very nodes of load and rating. */
function stepsOfCheck(check: AnswerCheck, at: string, nodes: readonly AnswerNode[]): Fault {
  const [load, rating, reserve, used] = check.nodes ?? [];
  const [difference, quotient] = [nodes[reserve ?? -1], nodes[used ?? -1]];
  const isStep = (node: AnswerNode | undefined, is: string, a?: number, b?: number): boolean =>
    node !== undefined &&
    has(node, 'of') &&
    node.is === is &&
    node.of.length === 2 &&
    node.of[0] === a &&
    node.of[1] === b;
  if (!isStep(difference, 'difference', rating, load))
    return { at: `${at}.nodes`, what: `reserve of ${check.name}`, found: 'another step', needed: 'rating minus load' };
  return isStep(quotient, 'quotient', load, rating)
    ? undefined
    : { at: `${at}.nodes`, what: `share used of ${check.name}`, found: 'another step', needed: 'load over rating' };
}

function* checkFaults(
  check: AnswerCheck,
  at: string,
  nodes: readonly AnswerNode[],
  followed: Followed,
): Iterable<Fault> {
  const [load, rating, reserve, used] = (check.nodes ?? []).map((place) => nodeAt(followed, place));
  const { name } = check;
  yield stepsOfCheck(check, at, nodes);
  yield printedAs(`${at}.load`, `load of ${name}`, check.load, load, 'away');
  yield printedAs(`${at}.rating`, `rating of ${name}`, check.rating, rating, 'down');
  yield printedAs(`${at}.reserve`, `reserve of ${name}`, check.reserve, reserve, 'down');
  yield printedAs(`${at}.used`, `share used of ${name}`, check.used, used, 'up', true);
  const basis = followed.bases[check.nodes?.[2] ?? -1] as Basis;
  if (basis !== check.basis)
    yield { at: `${at}.basis`, what: `basis of ${name}`, found: check.basis ?? 'none', needed: basis };
  const isWithin = load !== undefined && rating !== undefined && snappedOrder(load.value, rating.value) <= 0;
  const verdict = isWithin ? 'within' : 'over';
  if (verdict !== check.verdict)
    yield { at: `${at}.verdict`, what: `verdict on ${name}`, found: check.verdict, needed: verdict };
}

const figureFault = (
  at: string,
  what: string,
  { figure, node }: AnswerFigure,
  followed: Followed,
  mode: Edge = 'nearest',
  share = false,
): Fault => printedAs(`${at}.figure`, what, figure, nodeAt(followed, node), mode, share);

function* payloadFaults({ payload }: Answer, followed: Followed): Iterable<Fault> {
  for (const [key, what] of [
    ['best', 'payload at the best share'],
    ['anywhere', 'payload at every share'],
  ] as const) {
    const found = payload?.[key];
    if (found === undefined) continue;
    const at = `payload.${key}`;
    yield figureFault(at, what, found, followed, 'down');
    if (found.shares === undefined) continue;
    const { from, to } = found.shares;
    yield figureFault(`${at}.shares.from`, `lower tongue share of the ${what}`, from, followed, 'nearest', true);
    yield figureFault(`${at}.shares.to`, `upper tongue share of the ${what}`, to, followed, 'nearest', true);
  }
}

function* upliftFaults({ uplift }: Answer, followed: Followed): Iterable<Fault> {
  for (const [i, lifted] of uplift.entries()) {
    const at = `uplift.${i}`;
    yield figureFault(at, lifted.what, lifted, followed);
    const load = nodeAt(followed, lifted.node);
    if (load !== undefined && snappedOrder(load.value, rational(0n)) >= 0)
      yield { at, what: lifted.what, found: lifted.figure, needed: 'a load below zero' };
  }
}

function* faultsOf(answer: Answer, nodes: readonly AnswerNode[], followed: Followed): Iterable<Fault> {
  for (const list of ['checks', 'partChecks'] as const)
    for (const [i, check] of answer[list].entries()) yield* checkFaults(check, `${list}.${i}`, nodes, followed);
  yield* payloadFaults(answer, followed);
  yield* upliftFaults(answer, followed);
  for (const list of ['attention', 'notes'] as const)
    for (const [i, { tag, figures = [] }] of answer[list].entries())
      for (const [j, figure] of figures.entries())
        yield figureFault(`${list}.${i}.figures.${j}`, tag, figure, followed);
  if (answer.partsChecked !== answer.partChecks.length)
    yield {
      at: 'partsChecked',
      what: 'the count of parts',
      found: String(answer.partsChecked),
      needed: String(answer.partChecks.length),
    };
  const verdict = verdictOf(answer);
  if (verdict !== answer.verdict)
    yield { at: 'verdict', what: 'the verdict on the whole', found: answer.verdict, needed: verdict };
}

/** The first figure or verdict of the summary that does not follow from the nodes. */
export const summaryFault = (answer: Answer, nodes: readonly AnswerNode[], followed: Followed): Fault =>
  firstOf(faultsOf(answer, nodes, followed));
