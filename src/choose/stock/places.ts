/** Which of the places on a deck is best for a job: the middle of the widest stretch at which everything asked is met. */
import type { Assessment } from '../../assessment/index.js';
import { type Demands, demandsIn, nearZero } from '../remedies/demands.js';
import { stretchWhere } from '../remedies/slide.js';
import { type DeckJob, type Row, slidBy } from './rows.js';
import { onLine, type Straightened, straightened, stretchOnLines } from './straight.js';

/** How much of what is asked a place meets. */
export type Meets = 'everything' | 'ratings' | 'all but hitch parts' | 'less';

/** The best place found. */
export interface BestPlace {
  readonly fronts: readonly number[];
  readonly meets: Meets;
}

/** The demands of a job on one trailer. */
interface Asked {
  readonly demands: Demands;
  readonly straight: Straightened;
  readonly front: number;
}

interface Stretch {
  readonly row: Row;
  readonly from: number;
  readonly to: number;
}

type LeftOut = (demand: number) => boolean;

/** The stretch of a row by the demands that do not go straight, inside the one that those that do have left. */
function narrowed({ demands, straight }: Asked, { row, from, to }: Stretch, leftOut: LeftOut): Stretch | undefined {
  const others = new Set(straight.others);
  const stretch = stretchWhere(
    demands,
    from,
    to,
    (k) => slidBy(row, k),
    (demand) => !others.has(demand) || leftOut(demand),
  );
  return stretch && { row, from: stretch[0], to: stretch[1] };
}

/** The middle of the widest stretch at which the demands are met that are not left out. */
function widest(asked: Asked, rows: readonly Row[], leftOut: LeftOut): readonly number[] | undefined {
  const stretches = rows.flatMap((row): readonly Stretch[] => {
    const stretch = stretchOnLines(asked.straight.lines, row, asked.front, leftOut);
    return stretch === undefined ? [] : [{ row, from: stretch[0], to: stretch[1] }];
  });
  stretches.sort((a, b) => b.to - b.from - (a.to - a.from));
  let best: Stretch | undefined;
  for (const one of stretches) {
    if (best !== undefined && one.to - one.from <= best.to - best.from) break;
    const inside = narrowed(asked, one, leftOut);
    if (inside !== undefined && (best === undefined || inside.to - inside.from > best.to - best.from)) best = inside;
  }
  return best && slidBy(best.row, Math.round((best.from + best.to) / 2));
}

/** So many rows and places of each are looked at for the reason why no place fits. */
const [mostRows, placesEach] = [24, 12];

/** Whether the first is less short than the second, the worst compared first: what no place mends decides nothing. */
function isLessShort(first: readonly number[], second: readonly number[]): boolean {
  const [gain = 0] = first.map((short, i) => short - (second[i] as number)).filter((by) => Math.abs(by) > nearZero);
  return gain > 0;
}

/** The place at which the demands are least short. */
function leastShort({ demands, straight, front }: Asked, rows: readonly Row[]): readonly number[] {
  const ratings = straight.others.filter((demand) => !isGuidance(demands.idOf(demand)));
  const lines = straight.lines.filter(({ demand }) => !isGuidance(demands.idOf(demand)));
  const shortAt = (fronts: readonly number[]): readonly number[] =>
    [...lines.map((line) => onLine(line, fronts, front)), ...ratings.map((demand) => demands.at(demand, fronts))]
      .map((left) => Math.min(0, left))
      .sort((a, b) => a - b);
  const stride = Math.ceil(rows.length / mostRows);
  const places = rows
    .filter((_, i) => i % stride === 0)
    .flatMap((row) =>
      Array.from({ length: placesEach + 1 }, (_, i) => slidBy(row, Math.round((row.room * i) / placesEach))),
    )
    .map((fronts) => ({ fronts, short: shortAt(fronts) }));
  return places.reduce((best, next) => (isLessShort(next.short, best.short) ? next : best)).fronts;
}

/** The band of the tongue, the window, parts against the label: what asks attention and is no rating. */
const isGuidance = (id: string): boolean => /^(band|window|label)\//.test(id);

/** The best place on the deck by the formulas of one assessment. */
export function bestPlace(
  trial: Assessment,
  job: DeckJob,
  rows: readonly Row[],
  isEased: (demand: string) => boolean,
): BestPlace {
  const inputs = job.lengths.map((_, i) => ({ path: `cargo.${i}.front`, unit: 'in' }) as const);
  const demands = demandsIn(trial, inputs);
  const asked: Asked = { demands, straight: straightened(demands, job), front: job.front };
  const idOf = (demand: number): string => demands.idOf(demand);
  const tries: readonly (readonly [Meets, LeftOut])[] = [
    ['everything', () => false],
    ['ratings', (demand) => isGuidance(idOf(demand))],
    ['all but hitch parts', (demand) => isEased(idOf(demand))],
    ['all but hitch parts', (demand) => isEased(idOf(demand)) || isGuidance(idOf(demand))],
  ];
  for (const [meets, leftOut] of tries) {
    const fronts = widest(asked, rows, leftOut);
    if (fronts !== undefined) return { fronts, meets };
  }
  return { fronts: leastShort(asked, rows), meets: 'less' };
}
