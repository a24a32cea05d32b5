/** Where the pieces of a job can stand on one trailer, and which of those places is best. */
import type { Assessment } from '../../assessment/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { convert, type Quantity, type Unit } from '../../units/index.js';
import { type Demands, demandsIn } from '../remedies/demands.js';
import { stretchWhere } from '../remedies/slide.js';

/** Lengths of the pieces and ends of the deck, all in inches behind the coupler. */
export interface DeckJob {
  readonly front: number;
  readonly rear: number;
  readonly lengths: readonly number[];
}

/** One order of the pieces with one gap between them; slid along the deck as one. */
interface Row {
  /** The front of each piece, in the order of the job, with the first piece at the front of the deck. */
  readonly fronts: readonly number[];
  /** How far the row can slide, in whole inches. */
  readonly room: number;
}

/** The gaps that are tried between pieces, in inches apart. */
const gapStep = 6;

const inchesOf = (length: { readonly value: Quantity<Unit> } | undefined): number | undefined =>
  length === undefined ? undefined : (convert(length.value as Quantity<'ft'>, 'in') as Quantity<Unit>).value.toNumber();

/** Deck and lengths, where the spec tells all of them. */
export function deckJobOf({ trailer: { deck }, cargo = [] }: DecodedSpec): DeckJob | undefined {
  const [front, rear] = [inchesOf(deck?.front), inchesOf(deck?.rear)];
  const lengths = cargo.map(({ length, balancePoint }) => (balancePoint === undefined ? undefined : inchesOf(length)));
  return front === undefined || rear === undefined || lengths.length === 0 || lengths.includes(undefined)
    ? undefined
    : { front, rear, lengths: lengths as number[] };
}

/** Every order of a few pieces; more than three stand in the order given. */
export function ordersOf(count: number): readonly (readonly number[])[] {
  const given = Array.from({ length: count }, (_, i) => i);
  if (count > 3) return [given];
  const extend = (done: readonly number[]): readonly (readonly number[])[] =>
    done.length === count ? [done] : given.filter((i) => !done.includes(i)).flatMap((i) => extend([...done, i]));
  return extend([]);
}

/** Every row that fits on the deck. */
export function rowsOn({ front, rear, lengths }: DeckJob): readonly Row[] {
  const spare = Math.floor(rear - front - lengths.reduce((a, b) => a + b, 0));
  if (spare < 0) return [];
  const gaps = lengths.length - 1;
  const widths =
    gaps === 0 ? [0] : Array.from({ length: Math.floor(spare / gaps / gapStep) + 1 }, (_, i) => i * gapStep);
  return ordersOf(lengths.length).flatMap((order) =>
    widths.map((gap): Row => {
      const fronts: number[] = [];
      let at = front;
      for (const i of order) {
        fronts[i] = at;
        at += (lengths[i] as number) + gap;
      }
      return { fronts, room: spare - gap * gaps };
    }),
  );
}

/** How much of what is asked a place meets. */
export type Meets = 'everything' | 'ratings' | 'all but hitch parts' | 'less';

/** The best place found. */
export interface BestPlace {
  readonly fronts: readonly number[];
  readonly meets: Meets;
}

const shifted = ({ fronts }: Row, by: number): readonly number[] => fronts.map((at) => at + by);

/** The middle of the widest stretch at which the demands are met that are not left out. */
function widest(
  demands: Demands,
  rows: readonly Row[],
  leftOut: (demand: number) => boolean,
): readonly number[] | undefined {
  let best: { readonly row: Row; readonly from: number; readonly to: number } | undefined;
  for (const row of rows) {
    const stretch = stretchWhere(demands, 0, row.room, (k) => shifted(row, k), leftOut);
    if (stretch === undefined) continue;
    const [from, to] = stretch;
    if (best === undefined || to - from > best.to - best.from) best = { row, from, to };
  }
  return best && shifted(best.row, Math.round((best.from + best.to) / 2));
}

/** The place at which the worst demand is least short: for the reason why nothing fits. */
function leastShort(demands: Demands, rows: readonly Row[]): readonly number[] {
  const worstAt = (fronts: readonly number[]): number => {
    let worst = Number.POSITIVE_INFINITY;
    for (let demand = 0; demand < demands.count; demand += 1)
      if (!isGuidance(demands.idOf(demand))) worst = Math.min(worst, demands.at(demand, fronts));
    return worst;
  };
  const places = rows.flatMap((row) =>
    Array.from({ length: 13 }, (_, i) => shifted(row, Math.round((row.room * i) / 12))),
  );
  return places.reduce((best, next) => (worstAt(next) > worstAt(best) ? next : best));
}

/** The band of the tongue, the window, parts against the label: what asks attention and is no rating. */
const isGuidance = (id: string): boolean => /^(band|window|label)\//.test(id);

/** The best place on the deck by the formulas of one assessment; rows in whole inches from the front of the deck. */
export function bestPlace(trial: Assessment, rows: readonly Row[], isEased: (demand: string) => boolean): BestPlace {
  const count = rows[0]?.fronts.length ?? 0;
  const demands = demandsIn(
    trial,
    Array.from({ length: count }, (_, i) => ({ path: `cargo.${i}.front`, unit: 'in' }) as const),
  );
  const idOf = (demand: number): string => demands.idOf(demand);
  const tries: readonly (readonly [Meets, (demand: number) => boolean])[] = [
    ['everything', () => false],
    ['ratings', (demand) => isGuidance(idOf(demand))],
    ['all but hitch parts', (demand) => isEased(idOf(demand))],
    ['all but hitch parts', (demand) => isEased(idOf(demand)) || isGuidance(idOf(demand))],
  ];
  for (const [meets, leftOut] of tries) {
    const fronts = widest(demands, rows, leftOut);
    if (fronts !== undefined) return { fronts, meets };
  }
  return { fronts: leastShort(demands, rows), meets: 'less' };
}
