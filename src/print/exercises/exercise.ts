/** Exercises from a seed: invented figures that come out readable, and wrong answers that differ from each other. */
import { convert, kg } from '../../units/index.js';
import { Decimal } from '../../units/internal.js';
import { drawFrom } from './chance.js';
import type { Draft, Topic } from './topic.js';
import { axleLoadEach, tireReserve, tongueShare } from './topics/axles.js';
import { capacityInPounds, machineInPounds } from './topics/kilograms.js';
import { jackLoad, tongueByPlace } from './topics/levers.js';
import { payloadOnTheLabel, weakestPart } from './topics/payload.js';
import { grossFromTickets, tongueFromTickets } from './topics/tickets.js';

/** Every kind of exercise, in the order in which a class meets them. */
export const exerciseTopics = {
  payload: payloadOnTheLabel,
  'weakest part': weakestPart,
  'tongue share': tongueShare,
  'axle load': axleLoadEach,
  'tire reserve': tireReserve,
  'tongue by place': tongueByPlace,
  jack: jackLoad,
  'gross from tickets': grossFromTickets,
  'tongue from tickets': tongueFromTickets,
  'capacity in pounds': capacityInPounds,
  'machine in pounds': machineInPounds,
} as const satisfies Record<string, Topic>;

/** The name of a kind of exercise. */
export type ExerciseTopic = keyof typeof exerciseTopics;

/** An exercise: the question, its answer with its working, the wrong answers that have a name. */
export interface Exercise extends Draft {
  /** The kind of exercise. */
  readonly topic: ExerciseTopic;
  /** The seed it was made from. */
  readonly seed: number;
}

const pound = convert(kg(1), 'lb').value;

/** Every figure that an answer must not be mistaken for: the known mistakes, and the right figure in the other unit. */
const figuresOf = ({ answer, mistakes, rounds = false }: Draft): readonly Decimal[] => {
  const right = answer.value.value;
  // Where kilograms are the question, taking them for pounds is one of its mistakes already.
  const others = answer.value.unit === 'lb' && !rounds ? [right.times(pound), right.div(pound)] : [];
  return [right, ...mistakes.map(({ figure }) => figure.value.value), ...others];
};

/** So far apart must two answers be: eight pounds or a hundredth of the greater, eight thousandths of a share. */
const apart = (a: Decimal, b: Decimal, unit: Draft['answer']['value']['unit']): boolean => {
  const gap = a.minus(b).abs();
  return gap.gte(unit === 'ratio' ? 0.008 : Decimal.max(8, a.abs().div(100), b.abs().div(100)));
};

/** Whole pounds, whole per cents; or, where rounding is the point, well away from a whole pound. */
function isReadable({ answer, rounds = false }: Draft): boolean {
  const { unit, value } = answer.value;
  const scaled = unit === 'ratio' ? value.times(100) : value;
  if (!rounds) return scaled.isInteger();
  const rest = scaled.minus(scaled.floor());
  return rest.gt('0.15') && rest.lt('0.85');
}

function isFair(draft: Draft): boolean {
  const figures = figuresOf(draft);
  const { unit } = draft.answer.value;
  return isReadable(draft) && figures.every((a, i) => figures.slice(i + 1).every((b) => apart(a, b, unit)));
}

const mostTries = 2000;

/**
 * What may a class work out?
 *
 * Invented round figures, drawn from the seed until the answer comes out whole (or well away from whole, where rounding is
 * the point) and no two known mistakes lead to answers that one could take for each other.
 *
 * Not a trailer: no rating here belongs to a part that exists.
 *
 * @param topic one of `exerciseTopics`
 * @param seed any whole number; the same seed gives the same exercise
 * @returns question, answer with its working, and the known mistakes
 * @throws RangeError when no draw of a topic is fair, which no topic of this library does
 * @example exercise('payload', 1).answer.value.unit // lb
 * @source invented figures; the mistakes: common practice, no source
 */
export function exercise(topic: ExerciseTopic, seed: number): Exercise {
  for (let attempt = 0; attempt < mostTries; attempt += 1) {
    const draft = exerciseTopics[topic].draw(drawFrom(Math.imul(seed, 0x9e3779b1) + attempt));
    if (isFair(draft)) return { ...draft, topic, seed };
  }
  throw new RangeError(`no fair exercise on ${topic}`);
}
