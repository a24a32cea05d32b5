/** Worksheets: a working with blanks and its key; a lesson of two pages from a seed. */
import type { Derived, Node } from '../../trace/index.js';
import { inReaderUnits, type ReaderUnits, show, type Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { shortCaution } from '../cautions.js';
import { lesson, lessonLines } from '../lesson/lesson.js';
import { type LessonOptions, lessonOf } from '../lesson/lesson-of.js';
import { figuresIn } from '../reader-units.js';
import { folded, width } from '../text-layout.js';
import { type Exercise, type ExerciseTopic, exercise, exerciseTopics } from './exercise.js';

/** What a worksheet may be asked for. */
export interface WorksheetOptions extends LessonOptions {
  /** The names of the steps to leave blank; all steps when left out. */
  readonly blank?: readonly string[];
  /** Feet, inches and pounds (`us`, the default), or metres, millimetres and kilograms. */
  readonly units?: ReaderUnits;
}

/** A sheet for the class and the key for the teacher. */
export interface Worksheet {
  /** The sheet, with a line wherever a figure is to be written. */
  readonly sheet: string;
  /** The figures that belong on the lines. */
  readonly key: string;
}

const page = (lines: readonly string[]): string => `${lines.join('\n')}\n`;
const caution = folded(`Figures to learn by. ${shortCaution}`, width, '  ');
const exact = (node: Node, units: ReaderUnits): string => {
  const value = inReaderUnits(node.value, units);
  return show(value).length <= 14 ? show(value) : figuresIn(units).any(value);
};

/**
 * What does a class fill in, and what belongs there?
 *
 * The learner's explanation with the figures of chosen steps left blank; the key lists them. The proof and what changes the
 * answer most are left out of the sheet: they would give it away.
 *
 * Not an exam: it prints the names of the steps and their formulas.
 *
 * @param answer a figure with its working
 * @param options the names of the steps to leave blank, and the words and units of `lesson`
 * @returns the sheet and its key, each of at most 80 columns
 * @example worksheet(grossWeight).sheet.includes('gross weight') // true
 * @source the steps carry their own
 */
export function worksheet<U extends Unit>(
  answer: Derived<U>,
  { blank, units = 'us', ...options }: WorksheetOptions = {},
): Worksheet {
  const made = lessonOf(answer, options);
  const hidden = made.steps.filter(({ symbol }) => blank === undefined || blank.includes(symbol));
  const nodes = new Set(hidden.map(({ node }) => node));
  return {
    sheet: page([...lessonLines(made, units, nodes), '', caution]),
    key: page([
      folded(`Key: ${made.question}`, width, '  '),
      ...hidden.map(({ symbol, node }) => folded(`  ${symbol}: ${exact(node, units)}`)),
    ]),
  };
}

/** A lesson of two pages and its key. */
export interface LessonPages {
  /** A worked example. */
  readonly example: string;
  /** Exercises of the same kind, with lines for the answers. */
  readonly exercises: string;
  /** The answers, each with the mistakes to look out for. */
  readonly key: string;
}

/** What the two pages may be asked for. */
export interface LessonPagesOptions {
  /** Number of exercises on the second page; five by default, eight at most. */
  readonly count?: number;
}

const answerOf = ({ answer }: Exercise): string =>
  answer.value.unit === 'ratio'
    ? figuresIn('us').share(answer.value as Derived<'ratio'>['value'])
    : exact(answer.why, 'us');

/**
 * What does a teacher hand out for one lesson?
 *
 * Page one works an example through; page two has exercises of the same kind with other figures; the key has the answers and
 * what each known mistake would have given. All from one seed.
 *
 * Not a trailer: no rating here belongs to a part that exists.
 *
 * @param topic one of `exerciseTopics`
 * @param seed any whole number; the same seed gives the same pages
 * @param options how many exercises
 * @returns two pages and the key, as text of at most 80 columns
 * @example lessonPages('payload', 1).exercises.match(/Answer:/g).length // 5
 * @source invented figures; the mistakes: common practice, no source
 */
export function lessonPages(topic: ExerciseTopic, seed: number, { count = 5 }: LessonPagesOptions = {}): LessonPages {
  const first = exercise(topic, seed * 100);
  const others = Array.from({ length: Math.min(Math.max(count, 1), 8) }, (_, i) => exercise(topic, seed * 100 + i + 1));
  const title = exerciseTopics[topic].title.toUpperCase();
  return {
    example: page([title, '', lesson(first.answer, { question: first.text, roundedAs: first.roundedAs }), caution]),
    exercises: page([
      `${title}: EXERCISES`,
      '',
      ...collected(others, ({ text }, i) => [
        folded(`${i + 1}. ${text}`, width, '   '),
        '',
        '   Answer: ______________',
        '',
      ]),
      caution,
    ]),
    key: page([
      `${title}: KEY`,
      ...collected(others, (each, i) => [
        `${i + 1}. ${answerOf(each)}`,
        ...each.mistakes.map(({ figure, says }) =>
          folded(`   not ${exact(figure.why, 'us')}: ${says}`, width, '      '),
        ),
      ]),
    ]),
  };
}
