/** The oracle of every study test: a row of the study against `assess` on the spec of that row. */
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { isLeft } from 'fp-ts/lib/Either.js';
import { type AssessError, type Assessment, assessJson } from '../../src/assessment/index.js';
import type { Row, Study } from '../../src/study/index.js';
import { type Measure, standardMeasure } from '../../src/study/index.js';
import { reasonOf } from '../../src/study/run/reason.js';

/** A trailer without its tow vehicle: invented, 14,000 lb, two 7,000 lb axles at 187 and 221 in, a 9,000 lb machine. */
export const tiltDeck = JSON.parse(readFileSync(new URL('./plain-deck.json', import.meta.url), 'utf8')) as {
  trailer: Record<string, unknown> & { axles: Record<string, unknown>[] };
  cargo: Record<string, unknown>[];
};

/** The whole example: with tow vehicle, frame, tiedowns and rules. */
export const wholeDeck = JSON.parse(
  readFileSync(new URL('../../examples/tilt-deck.json', import.meta.url), 'utf8'),
) as unknown;

/** What `assess` itself says of a spec, in the words of a row. */
function exactly({ verdict, attention, tightest }: Assessment): { judged: string; governs: string } {
  const tags = [...new Set(attention.map(({ tag }) => tag))].sort().join(' + ');
  return { judged: `${verdict} ${tags}`, governs: tightest.map(({ what }) => what).join(' = ') || 'nothing checked' };
}

const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));

/** What is wrong with a row whose spec is refused. */
function wrongRefusal(row: Row, error: AssessError): string | undefined {
  if (row.answered) return `answered, where assess says ${error.tag}`;
  const reason = reasonOf(error);
  if (row.reason !== reason) return `${row.reason} for ${reason}`;
  return isDeepStrictEqual(row.error, error) ? undefined : 'another error';
}

/** What is wrong with a row, in words; nothing when it is what `assess` says. */
export function wrongWith(row: Row, study: Study, measure: Measure = standardMeasure): string | undefined {
  const spec = study.specAt(row.row);
  if (isLeft(spec)) return `no spec: ${spec.left.tag}`;
  const assessed = assessJson(spec.right);
  if (isLeft(assessed)) return wrongRefusal(row, assessed.left);
  const measured = measure(assessed.right);
  const missing = study.figures.find(({ name }) => !Object.hasOwn(measured, name));
  if (missing !== undefined)
    return !row.answered && row.reason === `MissingFact: ${missing.name}`
      ? undefined
      : `${row.answered ? 'answered' : row.reason} without ${missing.name}`;
  if (!row.answered) return `${row.reason}, where assess answers`;
  const { judged, governs } = exactly(assessed.right);
  const own = `${row.verdict} ${[...row.attention].sort().join(' + ')}`;
  if (own !== judged) return `${own}, not ${judged}`;
  if (row.governs !== governs) return `governed by ${row.governs}, not ${governs}`;
  for (const { name } of study.figures) {
    const exact = (measured[name] as NonNullable<(typeof measured)[string]>).value.value.toNumber();
    if (!close(row.figures[name] as number, exact)) return `${name} ${row.figures[name]}, not ${exact}`;
  }
  return undefined;
}

/** Every row compared; the wrong ones in words. */
export function wrongRows(
  study: Study,
  measure: Measure = standardMeasure,
): { readonly compared: number; readonly answered: number; readonly wrong: readonly string[] } {
  const wrong: string[] = [];
  let compared = 0;
  let answered = 0;
  for (const row of study.rows()) {
    compared += 1;
    if (row.answered) answered += 1;
    const problem = wrongWith(row, study, measure);
    if (problem !== undefined)
      wrong.push(`row ${row.row} (${JSON.stringify({ ...row.choices, ...row.inputs })}): ${problem}`);
  }
  return { compared, answered, wrong };
}

/** How many rows were decided again with exact decimals, or assessed from their spec. */
export function decidedExactly(study: Study): number {
  let rows = 0;
  for (const chunk of study.chunks()) rows += chunk.exactRows;
  return rows;
}
