/** The unit system changes nothing: the same spec in exact kilograms and metres gets the same answer, figure for figure. */
import { describe, expect, it } from 'vitest';
import { metricText } from '../../helpers/exact-text.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { aspects, outlineOf } from '../../helpers/outline.js';
import { digitsAndUnit, figuresIn, isFigure } from '../../helpers/random/leaves.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';
import { changed } from '../../helpers/specs.js';

/** Local rules hold figures of their own form. */
function inMetric(spec: JsonSpec): JsonSpec {
  return figuresIn(spec).reduce((so, { path, value }) => {
    if (path.startsWith('rules.local') || !isFigure(value)) return so;
    const { digits, unit } = digitsAndUnit(value);
    const text = metricText(digits, unit);
    if (text === undefined) return so;
    const basis = (value as { readonly basis?: string }).basis;
    return changed(so, path, basis === undefined ? text : { text, basis });
  }, spec);
}

describe('unit systems', () => {
  it('give the same answers', () => {
    const broken: string[] = [];
    for (const seed of lawSeeds(60)) {
      const spec = randomSpec(seed);
      const [one, other] = [outlineOf(spec), outlineOf(inMetric(spec))];
      for (const aspect of aspects) {
        const gone = one[aspect].filter((line) => !other[aspect].includes(line));
        if (gone.length > 0) broken.push(`seed ${seed}: ${aspect}: ${gone.slice(0, 2).join('; ')}`);
      }
    }
    expect(fewOf(broken)).toEqual([]);
  });
});
