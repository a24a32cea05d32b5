/** What each open question is called by programs, and which keys of the spec would answer it. */
import { checkId, isRatingKind } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { remembered } from '../../units/internal.js';
import type { NotChecked } from './not-checked.js';
import { rows } from './question-ids.js';
import { towKeys } from './wanting-keys.js';

/** A question the spec leaves open, for programs too. */
export interface OpenQuestion extends NotChecked {
  /** What programs look it up by: that of the check it would be, or one of `docs/ids.md`. Stable: words may change, ids do not. */
  readonly id: string;
  /** The keys that would answer it; where several would do, all of them. */
  readonly paths: readonly string[];
}

/** A weight that falls in no class of a table: by the table. */
function ofTable({ what, missing }: NotChecked, { rules }: DecodedSpec): Named | undefined {
  const tables = rules?.local?.stepTables ?? [];
  const at = missing.endsWith('within the table') ? tables.findIndex(({ topic }) => topic === what) : -1;
  return at < 0 ? undefined : { id: `rules/steps/table-${at + 1}`, paths: [`rules.local.stepTables.${at}.steps`] };
}

type Named = Pick<OpenQuestion, 'id' | 'paths'>;

/** The row of a question, and what its parentheses found. */
const rowFor = remembered((what) => {
  for (const row of rows) {
    const found = row.asks.exec(what);
    if (found !== null) return { id: row.id.replace('$1', found[1] ?? ''), keys: row.keys, found };
  }
  return undefined;
});

function named(question: NotChecked, spec: DecodedSpec): Named {
  const { what, missing } = question;
  const row = rowFor(what);
  if (row !== undefined) return { id: row.id, paths: row.keys(row.found, missing, spec) };
  const limit = / against (.*)$/.exec(what)?.[1];
  if (limit !== undefined && isRatingKind(limit)) return { id: checkId(limit), paths: towKeys(missing, spec) };
  return ofTable(question, spec) ?? { id: 'other', paths: [] };
}

/** Every open question with its id and its keys; ids that would be alike have their first key behind them. */
export function openQuestions(questions: readonly NotChecked[], spec: DecodedSpec): readonly OpenQuestion[] {
  const asked = questions.map((question): OpenQuestion => {
    const { id, paths } = named(question, spec);
    return { ...question, id, paths: [...new Set(question.paths ?? paths)] };
  });
  const often = new Map<string, number>();
  for (const { id } of asked) often.set(id, (often.get(id) ?? 0) + 1);
  return asked.map((question) => {
    const { id, paths, missing } = question;
    return (often.get(id) ?? 0) > 1 ? { ...question, id: `${id}:${paths[0] ?? missing}` } : question;
  });
}
