/** The report's tables of checks: one row a check, its figures on the line its name begins on. */
import type { Check } from '../../ratings/index.js';
import { compare, lb } from '../../units/index.js';
import type { FiguresInPrint } from '../figures-in-print.js';
import { folded, width } from '../text-layout.js';

const columns = [9, 9, 9, 7] as const;
const nameWidth = width - columns.reduce((sum, each) => sum + each, 0);

/** What is asked, as short as a table needs it: `tongue / receiver`, `front axle / front GAWR`. */
function shortName(what: string): string {
  const [asked = '', ...qualifiers] = what.split(', ');
  const [load = '', limit = ''] = asked.split(' against ');
  if (limit === '') return what;
  if (limit === `tow vehicle ${load}`) return [`${load} / truck`, ...qualifiers].join(', ');
  const short = limit
    .replace(/^tow vehicle (?=\S)/, '')
    .replace(new RegExp(` ${load}$`), '')
    .replace(/ capacity$/, '');
  return [`${load.replace(/^tow vehicle /, 'truck ')} / ${short}`, ...qualifiers].join(', ');
}

const cells = (texts: readonly string[]): string =>
  texts.map((cell, i) => ` ${cell}`.padStart(columns[i] ?? 9)).join('');

function checkRow(check: Check, tightest: boolean, p: FiguresInPrint): string {
  // A load below zero uses no share of its limit, but it means uplift.
  const lifts = compare(check.load.value, lb(0)) < 0;
  const well = lifts ? 'LIFT' : '  ok';
  const name = `${check.verdict === 'over' ? 'OVER' : well}${tightest ? '* ' : '  '}${shortName(check.what)}`;
  const [first = '', ...rest] = folded(name, nameWidth, '        ').split('\n');
  const figures = cells([
    p.bareLoad(check.load.value),
    p.bareCapacity(check.limit.value),
    p.bareCapacity(check.reserve.value),
    lifts ? '-' : p.used(check.used.value),
  ]);
  return [`${first.padEnd(nameWidth)}${figures}`, ...rest].join('\n');
}

/** How many of the checks are only as good as each basis. */
function basisLine(checks: readonly Check[]): string {
  const counts = new Map<string, number>();
  for (const { reserve } of checks) counts.set(reserve.why.basis, (counts.get(reserve.why.basis) ?? 0) + 1);
  return `  Weakest basis: ${[...counts].map(([basis, count]) => `${basis} (${count})`).join(', ')}.`;
}

/** A table of checks; those closest to their limit are marked. */
export function checkTable(
  checks: readonly Check[],
  tightest: readonly Check[],
  p: FiguresInPrint,
  heads: readonly [load: string, limit: string] = ['load', 'limit'],
): readonly string[] {
  if (checks.length === 0) return [];
  const marked = checks.filter((check) => tightest.includes(check)).length;
  return [
    `${`  in ${p.weightUnit}`.padEnd(nameWidth)}${cells([...heads, 'reserve', 'used'])}`,
    ...checks.map((check) => checkRow(check, tightest.includes(check), p)),
    ...(marked === 0 ? [] : [`  * closest to its limit${marked > 1 ? ' (they tie)' : ''}`]),
    basisLine(checks),
  ];
}
