/** The spreadsheet: LibreOffice recalculates it from the inputs and gets the figures of the library. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { type SheetContent, toSheet } from '../../../src/print/index.js';
import {
  arcsin,
  arctan,
  cos,
  type Derived,
  given,
  minus,
  over,
  plus,
  result,
  root,
  roundTo,
  sin,
  tan,
  times,
  toThe,
  workingLines,
} from '../../../src/trace/index.js';
import { degree, inch, inch2, lb, type RoundingMode, ratio, type Unit } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { officeIsThere, recalculated } from '../../helpers/office.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const contentOf = (spec: unknown): SheetContent => {
  const answer = rightOf(assessJson(spec));
  const { checks, partChecks } = answer;
  return { figures: checks.map(({ reserve }) => reserve), checks: [...checks, ...partChecks] };
};
const near = (found: string | undefined, wanted: number): void => {
  expect(found).toMatch(/^-?[\d.]+(E[-+]\d+)?$/);
  expect(Math.abs(Number(found) - wanted)).toBeLessThanOrEqual(1e-11 * Math.max(1, Math.abs(wanted)));
};
const stepsOf = (figures: readonly Derived<Unit>[]): readonly number[] =>
  workingLines(figures.map(({ why }) => why))
    .filter(({ operation }) => operation !== undefined)
    .map(({ node }) => node.value.value.toNumber());

/** Every operation there is, each rounding on both sides of zero and on a tie. */
const rounds = (['down', 'up', 'nearest', 'nearest-down'] as const satisfies readonly RoundingMode[]).flatMap((mode) =>
  ['2537.5', '-2537.5', '2535', '-2535', '2539.999', '0'].map((figure) =>
    result(`${figure} ${mode}`, roundTo(given(`from ${figure}`, lb(figure)), lb(5), mode)),
  ),
);
const angle = given('angle', degree('23.5'));
const others = [
  result('triangle', root(plus(times(given('a', inch(3)), given('a', inch(3))), given('b2', inch2(16))))),
  result('waves', plus(sin(angle), times(cos(angle), 2), minus(tan(angle), 1))),
  result('back', plus(arcsin(sin(angle)), arctan(tan(angle)))),
  result('power', toThe(given('loads', ratio('0.8')), 0.7)),
  result('taken off', minus(over(given('w', lb(100)), 3), minus(given('v', lb('-7.25')), given('u', lb('0.125'))))),
];

describe('the forms', () => {
  it('are the same for the same content', () => {
    for (const form of ['csv', 'fods'] as const)
      expect(toSheet(contentOf(tiltDeck()), form)).toBe(toSheet(contentOf(tiltDeck()), form));
  });
  it('keep texts from outside from becoming formulas', () => {
    const name = '=1+1","=2+2';
    const spec = changed(tiltDeck(), 'cargo.0.name', name);
    expect(toSheet(contentOf(spec), 'csv')).toContain(`"'=1+1"",""=2+2 weight"`);
    expect(toSheet(contentOf(spec), 'fods')).toContain('<text:p>=1+1&quot;,&quot;=2+2 weight</text:p>');
  });
  it.each(['\uff1dSUM(A1)', '\uff0b1', '\u00a0=1+1', '\u200b@x', '-2'])(
    'put an apostrophe before %j: full-width signs and leading blanks too',
    (name) => {
      const spec = changed(tiltDeck(), 'cargo.0.name', name);
      const table = toSheet(contentOf(spec), 'csv');
      expect(table).toContain(`"'${name} weight"`);
      expect(table).not.toContain(`"${name}`);
    },
  );
});

describe.skipIf(!officeIsThere)('recalculated by LibreOffice', () => {
  const { figures, checks = [] } = contentOf(tiltDeck());
  const fods = toSheet({ figures, checks }, 'fods');
  const steps = (book: ReadonlyMap<string, readonly (readonly string[])[]>): readonly (readonly string[])[] =>
    (book.get('steps') ?? []).slice(1);

  it('the workbook gives every step and every check', () => {
    const book = recalculated('book.fods', fods);
    expect([...book.keys()]).toEqual(['inputs', 'steps', 'checks']);
    const wanted = stepsOf([...figures, ...checks.flatMap(({ load, limit }) => [load, limit])]);
    expect(steps(book).length).toBe(wanted.length);
    for (const [i, row] of steps(book).entries()) near(row[1], wanted[i] as number);
    const rows = (book.get('checks') ?? []).slice(1);
    expect(rows.map(([what]) => what)).toEqual(checks.map(({ what }) => what));
    for (const [i, { load, limit, reserve, used, verdict }] of checks.entries()) {
      const row = rows[i] as readonly string[];
      for (const [column, { value }] of [load, limit, reserve, used].entries())
        near(row[column + 1], value.value.toNumber());
      expect(row[5]).toBe(verdict);
    }
  }, 60_000);
  it('a changed input changes what follows from it, verdicts too', () => {
    const heavier = fods.replace('office:value="9000"', 'office:value="11000"');
    expect(heavier).not.toBe(fods);
    const rows = (recalculated('book.fods', heavier).get('checks') ?? []).slice(1);
    const asked = contentOf(changed(tiltDeck(), 'cargo.0.weight', '11,000 lb')).checks ?? [];
    expect(rows.map((row) => [row[0], row[5]])).toEqual(asked.map(({ what, verdict }) => [what, verdict]));
    expect(rows.filter((row) => row[5] === 'over').length).toBeGreaterThan(0);
    for (const [i, { reserve }] of asked.entries()) near(rows[i]?.[3], reserve.value.value.toNumber());
  }, 60_000);
  it('every operation and rounding means the same there, in the workbook and in the table', () => {
    const all = [...rounds, ...others];
    const wanted = stepsOf(all);
    for (const [i, row] of steps(recalculated('book.fods', toSheet({ figures: all }, 'fods'))).entries())
      near(row[1], wanted[i] as number);
    const [table = []] = recalculated('table.csv', toSheet({ figures: all }, 'csv')).values();
    const from = table.findIndex(([first]) => first === 'step') + 1;
    expect(from).toBeGreaterThan(0);
    for (const [i, figure] of wanted.entries()) near(table[from + i]?.[1], figure);
  }, 60_000);
});
