/** One verdict of four values: comparison, one class up and stock say of a build what `assess` says of it. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../src/assessment/index.js';
import { compare, fitStock, oneClassUp } from '../../src/choose/index.js';
import type { SpecInput } from '../../src/spec/index.js';
import { answerTo } from '../helpers/facts.js';
import { type JsonSpec, randomSpecs } from '../helpers/random-specs.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const orThrow = <A>(found: { readonly _tag: 'Left' } | { readonly _tag: 'Right'; readonly right: A }): A => {
  if (found._tag === 'Left') throw new Error('refused');
  return found.right;
};

/** A truck's ratings only; and a build of which everything asked is within. */
const bare = { trailer: { hitch: 'ball', axles: [{ at: '190 in' }] } } as unknown as SpecInput;
const easy = changed(changed(tiltDeck(), 'cargo.0.weight', '6,000 lb'), 'tow', undefined);
const specs = [bare, easy, tiltDeck(), ...randomSpecs(40)].filter(
  (spec) => answerTo(spec) !== undefined,
) as readonly SpecInput[];

const said = ({ verdict, checks, attention, tightest }: Assessment): unknown => ({
  verdict,
  checks: checks.map(({ id, verdict: each, load }) => [id, each, load.value.value.toFixed()]),
  attention: attention.map(({ tag }) => tag),
  tightest: tightest.map(({ id }) => id),
});

describe('the verdict of a build', () => {
  it('takes all four values over these specs', () => {
    const verdicts = new Set(specs.map((spec) => answerTo(spec)?.verdict));
    expect([...verdicts].sort()).toEqual(['attention', 'over', 'unchecked', 'within']);
  });
  it('is the one of assess in a comparison', () => {
    const { assessments } = orThrow(compare(Object.fromEntries(specs.map((spec, i) => [`build ${i}`, spec]))));
    expect(assessments.map(said)).toEqual(specs.map((spec) => said(answerTo(spec) as Assessment)));
  });
  it('is the one of assess on either side of one class up', () => {
    for (const [i, spec] of specs.slice(0, 12).entries()) {
      const next = specs[i + 1] as SpecInput;
      const { assessments } = orThrow(oneClassUp(spec, next)).comparison;
      expect(assessments.map(said)).toEqual([spec, next].map((each) => said(answerTo(each) as Assessment)));
    }
  });
  it('is the one of assess for every trailer of a stock, its pieces where the stock puts them', () => {
    const job = easy.cargo as unknown as readonly JsonSpec[];
    const stock = Object.fromEntries(specs.map(({ trailer }, i) => [`trailer ${i}`, { trailer }]));
    const { fits, others } = orThrow(fitStock({ stock, cargo: job }));
    expect(fits.length).toBeGreaterThan(0);
    expect(others.length).toBeGreaterThan(fits.length);
    for (const { name, fronts, verdict, assessment, fits: isFit } of [...fits, ...others]) {
      const cargo = job.map((piece, i) => {
        const { at: _at, front, ...rest } = piece;
        return fronts === undefined ? piece : { ...rest, front: `${fronts[i]} in` };
      });
      const own = answerTo({ ...(stock[name] as object), cargo }) as Assessment;
      expect([name, verdict]).toEqual([name, own.verdict]);
      expect([name, said(assessment)]).toEqual([name, said(own)]);
      if (isFit) expect(verdict).toBe('within');
    }
  });
});
