/** A lesson as text: figures in one column, and one column for each unit. */
import type { Derived, Node } from '../../trace/index.js';
import { inReaderUnits, type Quantity, type ReaderUnits, show, showBrief, type Unit } from '../../units/index.js';
import { collected, ofDecimal } from '../../units/internal.js';
import { figuresIn } from '../reader-units.js';
import { folded, width } from '../text-layout.js';
import { blankLine, type Columns, columnsFor, textOf } from './lesson-columns.js';
import type { Lesson, LessonMover } from './lesson-data.js';
import { type LessonOptions, lessonOf } from './lesson-of.js';
import { moverIn } from './movers.js';

/** What a printed lesson may be asked for. */
export interface LessonPrint extends LessonOptions {
  /** Feet, inches and pounds (`us`, the default), or metres, millimetres and kilograms. */
  readonly units?: ReaderUnits;
}

/** A name with its figure on the line the name ends on. */
function named(name: string, node: Node, { nameWidth, cells }: Columns, indent: string, mark = ''): readonly string[] {
  const lines = folded(`${indent}${name}`, nameWidth - 1, `${indent}  `).split('\n');
  const last = lines.pop() ?? '';
  return [...lines, `${last.padEnd(nameWidth)}${cells(node)}${mark}`.trimEnd()];
}

function answerText({ answer, roundedAs }: Lesson, units: ReaderUnits): string {
  const { value } = answer;
  const p = figuresIn(units);
  if (value.unit !== 'lb') return textOf(inReaderUnits(value, units));
  if (roundedAs === 'as it stands') return textOf(inReaderUnits(value, units));
  return roundedAs === 'load' ? p.load(value as Quantity<'lb'>) : p.capacity(value as Quantity<'lb'>);
}

const roundingText: Readonly<Record<Lesson['roundedAs'], string>> = {
  load: 'A load is rounded up, once, at the end',
  capacity: 'A capacity is rounded down, once, at the end',
  'as it stands': 'Cut to two decimals for reading, once, at the end',
};

function moverText({ symbol, more, change }: LessonMover, answer: string): string {
  const by = change.value.isNegative() ? 'less' : 'more';
  const size = showBrief(ofDecimal(change.value.abs(), change.unit), change.value.abs().lt(1) ? 4 : 1);
  return `${show(more)} more ${symbol}: ${size} ${by} ${answer}`;
}

const nothingBlank: ReadonlySet<Node> = new Set();

/** The lines of a lesson that is data already; where figures are left blank there is no proof that would give them away. */
export function lessonLines(
  lesson: Lesson,
  units: ReaderUnits,
  blank: ReadonlySet<Node> = nothingBlank,
): readonly string[] {
  const { question, answer, idea, givens, steps, proof, movers } = lesson;
  const choices = collected(steps, (step) => step.choices ?? []);
  const columns = columnsFor(
    [...givens, ...steps, ...choices].map(({ node }) => node),
    units,
    blank,
  );
  const { nameWidth, head } = columns;
  const title = (text: string): string => `${text.padEnd(nameWidth)}${head}`.trimEnd();
  const name = answer.why.symbol ?? 'the answer';
  const told = blank.has(answer.why) ? blankLine : answerText(lesson, units);
  const open = blank.size > 0;
  return [
    folded(question, width, '  '),
    folded(`Answer: ${told}.`, width, '  '),
    ...(idea === undefined ? [] : ['', folded(`Idea: ${idea}`, width, '  ')]),
    '',
    title('Given'),
    ...collected(givens, ({ symbol, node, where }) => [
      ...named(symbol, node, columns, '  '),
      folded(`      ${where}`, width, '        '),
    ]),
    ...(steps.length === 0 ? [] : ['', title('Steps')]),
    ...collected(steps, ({ symbol, node, formula, choices: several }, i) => [
      ...named(`${i + 1} ${symbol}`, node, columns, '  '),
      ...(several === undefined
        ? [folded(`      = ${formula}`, width, '        ')]
        : collected(several, (each) => named(each.symbol, each.node, columns, '      ', each.taken ? ' <' : ''))),
      ...(several === undefined ? [] : [`      the ${node.kind === 'computed' ? node.operation : ''} is marked`]),
    ]),
    '',
    folded(`${roundingText[lesson.roundedAs]}: ${told}.`, width, '  '),
    ...(proof === undefined || open
      ? []
      : [folded(`Proof: ${proof.formula}: ${proofFigures(proof, units)}.`, width, '  ')]),
    ...(movers.length === 0 || open
      ? []
      : ['What changes it most:', ...movers.map((mover) => folded(`  - ${moverText(moverIn(mover, units), name)}`))]),
  ];
}

const proofFigures = ({ formula, parts, sum }: NonNullable<Lesson['proof']>, units: ReaderUnits): string =>
  `${parts.map(({ value }) => textOf(inReaderUnits(value, units))).join(formula.includes(' x ') ? ' x ' : ' + ')} = ${textOf(inReaderUnits(sum.value, units))}`;

/**
 * How does one explain this figure to somebody who has not seen it before, on a page?
 *
 * The question and its answer first; the idea; the givens once, each with where one reads it; the steps with their figures in
 * columns, one for each unit; rounding at the end; a proof by going back; what changes it most. The least of many is a table
 * with the least marked.
 *
 * For programs there are `explain` and `workingLines`.
 *
 * @param answer a figure with its working
 * @param options the question, the idea, the rounding, the reader's units
 * @returns text of at most 80 columns
 * @example lesson(grossWeight).split('\n')[1] // Answer: 12,400 lb.
 * @source the steps carry their own
 */
export function lesson<U extends Unit>(answer: Derived<U>, { units = 'us', ...options }: LessonPrint = {}): string {
  return [...lessonLines(lessonOf(answer, options), units), ''].join('\n');
}
