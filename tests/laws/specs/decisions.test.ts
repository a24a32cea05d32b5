/**
 * Wherever the shape of an answer changes along one figure of the spec, a decision has changed: studies rely on it to know for
 * which rows a recorded working still speaks.
 */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/assessment/index.js';
import { recordingDecisions } from '../../../src/trace/index.js';
import { answerTo } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { chanceOf } from '../../helpers/random/chance.js';
import { digitsAndUnit, figuresIn } from '../../helpers/random/leaves.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';
import { changed } from '../../helpers/specs.js';

/** What an answer consists of, without its figures. */
function shapeOf({ checks, partChecks, uplift, attention, notes, notChecked, placement }: Assessment): string {
  const tags = (list: readonly { readonly tag: string }[]): readonly string[] => list.map(({ tag }) => tag).sort();
  return JSON.stringify([
    checks.map(({ id }) => id),
    partChecks.map(({ id }) => id),
    uplift.mustPress.map(({ what }) => what),
    tags(attention),
    tags(notes),
    notChecked.map(({ what, missing }) => `${what}: ${missing}`),
    placement.pieces.map(({ window }) => window.empty),
  ]);
}

interface Answered {
  readonly shape: string;
  /** How every comparison came out that was asked on the way. A check is one too. */
  readonly decided: string;
}

function answered(spec: JsonSpec): Answered | undefined {
  const { result, decisions } = recordingDecisions(() => answerTo(spec));
  if (result === undefined) return undefined;
  const outcomes = decisions.map(
    ({ left, comparison, right, holds }) => `${left.symbol ?? ''} ${comparison} ${right.symbol ?? ''} ${holds}`,
  );
  const verdicts = [...result.checks, ...result.partChecks].map(({ id, verdict }) => `${id} ${verdict}`);
  return {
    shape: shapeOf(result),
    decided: JSON.stringify([outcomes.sort(), verdicts.sort(), result.uplift.lifted.length]),
  };
}

const steps = [0.25, 0.5, 0.7, 0.85, 0.95, 0.99, 1, 1.01, 1.05, 1.15, 1.4, 2];

/** The answers along one figure. */
function along(spec: JsonSpec, path: string, value: unknown): readonly (Answered | undefined)[] {
  const { digits, unit } = digitsAndUnit(value);
  return steps.map((step) => answered(changed(spec, path, `${Number((Number(digits) * step).toFixed(6))} ${unit}`)));
}

describe('along every figure of a spec', () => {
  it('the shape of the answer changes only where a decision does', () => {
    const missed = new Map<string, string>();
    for (const seed of lawSeeds(25)) {
      const spec = randomSpec(seed);
      const figures = figuresIn(spec).filter(({ path }) => !path.startsWith('rules.local'));
      const [first, ...more] = figures;
      if (first === undefined) continue;
      const { path, value } = chanceOf(seed).pick([first, ...more]);
      const answers = along(spec, path, value);
      for (const [i, one] of answers.entries()) {
        const next = answers[i + 1];
        if (one === undefined || next === undefined) continue;
        if (one.shape !== next.shape && one.decided === next.decided)
          missed.set(path.replace(/\d+/g, 'N'), `seed ${seed}: ${path} from ${steps[i]} to ${steps[i + 1]} of it`);
      }
    }
    expect(fewOf([...missed.values()])).toEqual([]);
  });
});
