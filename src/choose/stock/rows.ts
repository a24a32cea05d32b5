/** Where the pieces of a job can be placed on one trailer: in a row, in whole inches from the front of the deck. */
import type { DecodedSpec } from '../../spec/index.js';
import { convert, type Quantity, type Unit } from '../../units/index.js';

/** Lengths of the pieces and ends of the deck, all in inches behind the coupler. */
export interface DeckJob {
  readonly front: number;
  readonly rear: number;
  readonly lengths: readonly number[];
}

/** One order of the pieces with gaps between them; slid along the deck as one. */
export interface Row {
  /** The front of each piece, in the order of the job, with the first piece at the front of the deck. */
  readonly fronts: readonly number[];
  /** How far the row can slide, in whole inches. */
  readonly room: number;
}

/** Two pieces are tried at every pair of whole inches; for three and more the gaps go in these steps. */
const gapStep = 6;

const inchesOf = (length: { readonly value: Quantity<Unit> } | undefined): number | undefined =>
  length === undefined ? undefined : (convert(length.value as Quantity<'ft'>, 'in') as Quantity<Unit>).value.toNumber();

/** Deck and lengths, where the spec has all of them. */
export function deckJobOf({ trailer: { deck }, cargo = [] }: DecodedSpec): DeckJob | undefined {
  const [front, rear] = [inchesOf(deck?.front), inchesOf(deck?.rear)];
  const lengths = cargo.map(({ length, balancePoint }) => (balancePoint === undefined ? undefined : inchesOf(length)));
  return front === undefined || rear === undefined || lengths.length === 0 || lengths.includes(undefined)
    ? undefined
    : { front, rear, lengths: lengths as number[] };
}

/** Every order of up to three pieces; more stay in the order given. */
export function ordersOf(count: number): readonly (readonly number[])[] {
  const given = Array.from({ length: count }, (_, i) => i);
  if (count > 3) return [given];
  const extend = (done: readonly number[]): readonly (readonly number[])[] =>
    done.length === count ? [done] : given.filter((i) => !done.includes(i)).flatMap((i) => extend([...done, i]));
  return extend([]);
}

/** What the gaps between pieces may be, in inches: of one or two pieces all of them, of three each by itself, of more alike. */
function gapsOf(count: number, spare: number): readonly (readonly number[])[] {
  const upTo = (most: number, step: number): readonly number[] =>
    Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
  if (count === 1) return [[]];
  if (count === 2) return upTo(spare, 1).map((gap) => [gap]);
  if (count === 3)
    return upTo(spare, gapStep).flatMap((first) => upTo(spare - first, gapStep).map((second) => [first, second]));
  return upTo(spare / (count - 1), gapStep).map((gap) => Array.from({ length: count - 1 }, () => gap));
}

/** Every row that fits on the deck. A piece of no whole inches takes the inch that it begins. */
export function rowsOn({ front, rear, lengths }: DeckJob): readonly Row[] {
  const whole = lengths.map((length) => Math.ceil(length - 1e-9));
  const taken = (order: readonly number[]): number =>
    order.slice(0, -1).reduce((sum, i) => sum + (whole[i] as number), lengths[order.at(-1) as number] as number);
  return ordersOf(lengths.length).flatMap((order) => {
    const spare = Math.floor(rear - front - taken(order) + 1e-9);
    if (spare < 0) return [];
    return gapsOf(lengths.length, spare).map((gaps): Row => {
      const fronts: number[] = [];
      let at = front;
      order.forEach((i, n) => {
        fronts[i] = at;
        at += (whole[i] as number) + (gaps[n] ?? 0);
      });
      return { fronts, room: spare - gaps.reduce((a, b) => a + b, 0) };
    });
  });
}

/** A row slid rearward. */
export const slidBy = ({ fronts }: Row, by: number): readonly number[] => fronts.map((at) => at + by);
