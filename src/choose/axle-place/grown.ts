/** A spec with a longer or shorter deck: the lines that grow, the items at the tail, the end of the deck. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { changed } from '../../study/index.js';
import { parseLength } from '../../units/index.js';

type Json = Readonly<Record<string, unknown>>;

/** A length as a spec may write it, in inches. */
export function inchesIn(figure: unknown): number | undefined {
  const text = typeof figure === 'object' && figure !== null ? (figure as Json).text : figure;
  if (typeof text !== 'string') return undefined;
  const read = parseLength(text, 'in');
  return isLeft(read) ? undefined : read.right.value.toNumber();
}

const longer = (figure: unknown, by: number): unknown => {
  const now = inchesIn(figure);
  return now === undefined ? figure : `${now + by} in`;
};

const partOf = (part: unknown, key: string): unknown => (part as Json | undefined)?.[key];
const listOf = (part: unknown): readonly Json[] => (Array.isArray(part) ? (part as readonly Json[]) : []);

/** Items within so many inches of the end of the deck move with it. */
const tail = 12;

/** The spec with the deck longer by so many inches; a negative figure makes it shorter. */
export function grown(spec: unknown, by: number): unknown {
  const trailer = partOf(spec, 'trailer');
  const curb = partOf(trailer, 'curb');
  const grows = new Set(partOf(curb, 'grows') as readonly string[] | undefined);
  const rear = inchesIn(partOf(partOf(trailer, 'deck'), 'rear')) ?? Number.POSITIVE_INFINITY;
  const line = (one: Json): Json => {
    if (!grows.has(one.name as string)) return one;
    return Object.hasOwn(one, 'spacing')
      ? { ...one, over: longer(one.over, by) }
      : { ...one, length: longer(one.length, by) };
  };
  const item = (one: Json): Json => ((inchesIn(one.at) ?? 0) >= rear - tail ? { ...one, at: longer(one.at, by) } : one);
  return changed(spec, {
    'trailer.curb.frame': listOf(partOf(curb, 'frame')).map(line),
    'trailer.curb.deck': listOf(partOf(curb, 'deck')).map(line),
    'trailer.curb.items': listOf(partOf(curb, 'items')).map(item),
    'trailer.deck.rear': `${rear + by} in`,
  });
}
