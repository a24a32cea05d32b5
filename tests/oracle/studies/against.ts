/** Studies of round designs held against whole-number fractions, and against `assess` row by row. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Row, type Study, study } from '../../../src/study/index.js';
import { wrongWith } from '../../study/compared.js';
import { judged, type RoundTrailer } from './fractions.js';
import type { RoundDesign } from './round-designs.js';

/** How many rows were compared, how many of them stand on a tie or an equality, and the first that are wrong. */
export interface Compared {
  readonly rows: number;
  readonly answered: number;
  readonly tied: number;
  readonly exact: number;
  readonly wrong: readonly string[];
}

export const nothingCompared: Compared = { rows: 0, answered: 0, tied: 0, exact: 0, wrong: [] };

export const together = (a: Compared, b: Compared): Compared => ({
  rows: a.rows + b.rows,
  answered: a.answered + b.answered,
  tied: a.tied + b.tied,
  exact: a.exact + b.exact,
  wrong: [...a.wrong, ...b.wrong].slice(0, 20),
});

function made({ base, vary }: RoundDesign): Study {
  const found = study({ base: base as never, vary, design: { kind: 'grid' } });
  if (isLeft(found)) throw new Error(`no study: ${JSON.stringify(found.left)}`);
  return found.right;
}

const pounds = (text: unknown): bigint => BigInt(String(text).split(' ')[0]?.replaceAll(',', '') ?? '');

/** The round trailer of a spec with the figures of a row put in. */
function trailerAt(base: RoundDesign['base'], inputs: Readonly<Record<string, number>>): RoundTrailer {
  const figure = (path: string): bigint => {
    const varied = inputs[path];
    if (varied !== undefined) return BigInt(varied);
    return pounds(path.split('.').reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], base));
  };
  return {
    gvwr: figure('trailer.gvwr'),
    curb: figure('trailer.curb.weight'),
    curbTongue: figure('trailer.curb.tongue'),
    couplerGross: figure('trailer.coupler.gross'),
    couplerTongue: figure('trailer.coupler.tongue'),
    axles: [0, 1].map((i) => ({
      at: figure(`trailer.axles.${i}.at`),
      gawr: figure(`trailer.axles.${i}.gawr`),
      tire: figure(`trailer.axles.${i}.tires.molded.single`),
    })),
    weight: figure('cargo.0.weight'),
    at: figure('cargo.0.at'),
  };
}

/** The parts of an axle that must bear its GAWR: beam, springs and hubs of 7,000 lb, wheels of 8,000 lb, two tires. */
const bears = ({ gawr, tire }: RoundTrailer['axles'][number]): boolean => gawr <= 7000n && gawr <= 2n * tire;

function wrongByFractions(row: Row, base: unknown): string | undefined {
  const trailer = trailerAt(base, row.inputs);
  const refused = !trailer.axles.every(bears);
  if (!row.answered)
    return refused && /^contradiction: trailer\.axles\.\d\.gawr$/.test(row.reason)
      ? undefined
      : `${row.reason}, refused: ${refused}`;
  if (refused) return 'answered with a GAWR above a part';
  const { over, governs, tongueOutside } = judged(trailer);
  if ((row.verdict === 'over') !== over) return `${row.verdict}, over: ${over}`;
  if (row.governs !== governs) return `governed by ${row.governs}, not ${governs}`;
  return row.attention.includes('TongueOutsideGuideline') === tongueOutside
    ? undefined
    : `tongue outside ${tongueOutside}`;
}

const told = (row: Row, problem: string): string => `${JSON.stringify(row.inputs)}: ${problem}`;

/** Every row of a design over the round trailer against the fractions. */
export function againstFractions(design: RoundDesign): Compared {
  let all = nothingCompared;
  const s = made(design);
  for (const row of s.rows()) {
    const problem = wrongByFractions(row, design.base);
    const tied = row.answered && row.governs.includes(' = ') ? 1 : 0;
    const wrong = problem === undefined ? [] : [told(row, problem)];
    all = together(all, { rows: 1, answered: row.answered ? 1 : 0, tied, exact: 0, wrong });
  }
  return { ...all, exact: exactRows(s) };
}

function exactRows(s: Study): number {
  let exact = 0;
  for (const chunk of s.chunks()) exact += chunk.exactRows;
  return exact;
}

/** Some rows of a design, evenly spread, against `assess`: verdict, attention, governing check, figures, refusals. */
export function againstAssess(design: RoundDesign, every: number): Compared {
  const s = made(design);
  let all = nothingCompared;
  for (const row of s.rows()) {
    if (row.row % every !== 0) continue;
    const problem = wrongWith(row, s);
    const tied = row.answered && row.governs.includes(' = ') ? 1 : 0;
    const wrong = problem === undefined ? [] : [told(row, problem)];
    all = together(all, { rows: 1, answered: row.answered ? 1 : 0, tied, exact: 0, wrong });
  }
  return { ...all, exact: exactRows(s) };
}
