/** The verdict of rows that are not over: within from one check on, unchecked without any, attention where something asks for it. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { levels } from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { study } from '../../helpers/untyped.js';
import { wrongRows } from '../compared.js';

const spec = (trailer: object) => ({
  trailer: { hitch: 'ball', curb: { weight: '1,000 lb' }, axles: [{}], ...trailer },
  cargo: [{ name: 'machine', weight: '1,500 lb' }],
});
const told = (trailer: object) => {
  const base = spec(trailer);
  const { checks, attention } = rightOf(assessJson(base));
  const made = rightOf(
    study({ base, vary: { 'cargo.0.weight': levels('1,000 lb', '1,500 lb', '2,000 lb') }, design: { kind: 'grid' } }),
  );
  expect(wrongRows(made).wrong).toEqual([]);
  return {
    checks: checks.length,
    attention: attention.map(({ tag }) => tag),
    verdicts: [...made.rows()].map((row) => row.answered && row.verdict),
  };
};

describe('a row that is not over', () => {
  it('is within by one check', () =>
    expect(told({ gvwr: '2,900 lb' })).toEqual({ checks: 1, attention: [], verdicts: ['within', 'within', 'over'] }));
  it('is unchecked by none', () =>
    expect(told({})).toEqual({ checks: 0, attention: [], verdicts: ['unchecked', 'unchecked', 'unchecked'] }));
});
