/** Grading: every correct way of writing an answer is accepted, and a wrong answer gets the name of its mistake where it is a known one. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { convert, dimensionOf, parseMeasure, type Quantity, quantity, type Unit } from '../../units/index.js';
import { Decimal } from '../../units/internal.js';
import type { Exercise } from './exercise.js';
import type { MistakeTag } from './topic.js';

/** What became of an answer. */
export interface Grade {
  /** Whether it is right. */
  readonly right: boolean;
  /** The name of the mistake; absent where the answer is right or its mistake has no name. */
  readonly mistake?: MistakeTag;
  /** What to tell the learner. */
  readonly says: string;
}

/** An answer as it was read: its figure in the unit of the question, and what was written. */
interface Read {
  readonly figure: Decimal;
  /** What one unit that was written is worth in the unit of the question. */
  readonly unitSize: Decimal;
  /** The number as it was written, whatever its unit. */
  readonly number: Decimal;
  /** How far rounding to the decimals written may move it either way; none for a whole number. */
  readonly slack: Decimal;
  /** Whether a unit was written. */
  readonly withUnit: boolean;
}

const sizeOf = (written: Unit, asked: Unit): Decimal =>
  convert(quantity(1, written) as Quantity<'lb'>, asked as 'lb').value;

function readAnswer(text: string, asked: Unit): Read | undefined {
  const dimension = dimensionOf(asked);
  const first = parseMeasure(text, dimension);
  const again = isLeft(first) ? parseMeasure(`${text} ${asked === 'ratio' ? '' : asked}`, dimension) : first;
  if (isLeft(again)) return undefined;
  const read = again.right as Quantity<Unit>;
  const unitSize = sizeOf(read.unit, asked);
  const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
  return {
    figure: convert(read as Quantity<'lb'>, asked as 'lb').value,
    unitSize,
    number: read.value,
    slack: decimals === 0 ? new Decimal(0) : new Decimal(10).pow(-decimals).div(2).times(unitSize),
    withUnit: !isLeft(first),
  };
}

/** Above zero: too much; below: too little. */
const beyond = ({ figure }: Read, { answer }: Exercise): Decimal => figure.minus(answer.value.value);

/** A hair for conversions that do not come out even. */
const hair = new Decimal('0.000001');

/** One unit on the safe side is rounding, on the other side only what the decimals written allow. */
function isRight(read: Read, exercise: Exercise): boolean {
  const { roundedAs, answer } = exercise;
  const over = beyond(read, exercise);
  const near = read.slack.plus(hair);
  if (answer.value.unit === 'ratio') return over.abs().lte(Decimal.max(near, '0.0005'));
  const unit = Decimal.max(1, read.unitSize).plus(hair);
  switch (roundedAs) {
    case 'load':
      return over.gte(near.neg()) && over.lt(unit);
    case 'capacity':
      return over.lte(near) && over.gt(unit.neg());
    case 'as it stands':
      return over.abs().lt(unit);
  }
}

/** Rounded by less than a unit, and to the side that does not hold. */
function wrongSide(read: Read, exercise: Exercise): Grade | undefined {
  const over = beyond(read, exercise);
  if (exercise.answer.value.unit === 'ratio' || over.abs().gte(Decimal.max(1, read.unitSize))) return undefined;
  return exercise.roundedAs === 'capacity'
    ? {
        right: false,
        mistake: 'CapacityRoundedUp',
        says: 'The capacity was rounded up. A capacity goes down: what is not rated is not there.',
      }
    : {
        right: false,
        mistake: 'LoadRoundedDown',
        says: 'The load was rounded down. A load goes up: what presses is not rounded away.',
      };
}

/** The number is right, in the other unit of weight. */
function otherUnit({ number }: Read, { answer }: Exercise): Grade | undefined {
  if (answer.value.unit !== 'lb') return undefined;
  const pounds = answer.value.value;
  const taken = [pounds, pounds.div(sizeOf('kg', 'lb'))].some((each) => each.minus(number).abs().lte(1));
  return taken
    ? {
        right: false,
        mistake: 'PoundsForKilograms',
        says: 'The number is right and its unit is not: pounds and kilograms were taken for each other.',
      }
    : undefined;
}

/** The known mistake whose answer this is. */
function known(read: Read, { mistakes, answer }: Exercise): Grade | undefined {
  const unit = answer.value.unit === 'ratio' ? new Decimal('0.002') : Decimal.max(1, read.unitSize).plus(hair);
  const found = mistakes.find(({ figure }) => figure.value.value.minus(read.figure).abs().lte(unit.plus(read.slack)));
  return found === undefined ? undefined : { right: false, mistake: found.tag, says: found.says };
}

/**
 * Is this answer right, and if not, which mistake is it?
 *
 * Right is the exact figure, or the figure rounded the way it must be (a load up, a capacity down) by less than a unit, or
 * to the nearest of the decimals that were written; in any unit of its kind, with or without the unit of the question. A
 * wrong answer that follows from a known mistake gets the name of that mistake.
 *
 * Not a mark: what an answer is worth is the teacher's to say.
 *
 * @param exercise from `exercise`
 * @param answer as it was written: `1,488 lb`, `675 kg`, `12 %`
 * @returns right or not, the name of the mistake where it has one, and a sentence for the learner
 * @example gradeAnswer(exercise('payload', 1), show(exercise('payload', 1).answer.value)).right // true
 * @source the mistakes: common practice, no source
 */
export function gradeAnswer(exercise: Exercise, answer: string): Grade {
  const { unit } = exercise.answer.value;
  const read = readAnswer(answer, unit);
  if (read === undefined)
    return { right: false, says: `That could not be read as a figure${unit === 'ratio' ? '' : ` in ${unit}`}.` };
  if (isRight(read, exercise))
    return {
      right: true,
      says: read.withUnit || unit === 'ratio' ? 'Right.' : `Right, taken as ${unit}: write the unit.`,
    };
  return (
    wrongSide(read, exercise) ??
    known(read, exercise) ??
    otherUnit(read, exercise) ?? {
      right: false,
      says: 'Not right, and no mistake that is known here: go through the steps once more.',
    }
  );
}
