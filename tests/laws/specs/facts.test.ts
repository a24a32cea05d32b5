/** Adding a fact never removes a failed check: whoever tells more is not told that less is wrong. */
import { describe, expect, it } from 'vitest';
import { answerTo, overIn, without } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { chanceOf } from '../../helpers/random/chance.js';
import { pathsIn } from '../../helpers/random/leaves.js';
import { randomSpec } from '../../helpers/random-specs.js';

/**
 * Facts that limit, or that only open a question. Not here are those that replace a weaker statement of the same thing, as a
 * molded load replaces a table load, and those that change the loads themselves: weights, places, the way axles share.
 */
const added = [
  /^trailer\.(gvwr|coupler|chains|jack|deck|ramps|width|length|track|ballAboveLevel|guideline)$/,
  /^trailer\.coupler\.(gross|tongue)$/,
  /^trailer\.ramps\.(rating|basis|setting|dovetail)$/,
  /^trailer\.axles\.\d+\.(gawr|beam|springs|hubs|wheels)$/,
  /^trailer\.axles\.\d+\.tires\.pressure$/,
  /^cargo\.\d+\.(length|uncertainty|rightOfMiddle|wheelbase|lowPoint|gauges|axles|tiedowns|section)$/,
  /^tow$/,
  /^tow\.(front|rear|gvwr|frontGawr|rearGawr|gcwr|receiver|ballMount|ball|trailerRating|tongueRating|placard|hitchHardware|bars)$/,
  /^(rules|tickets|tongueShare)$/,
];

/** Hitch hardware hangs behind the rear axle: it takes load off the front one. */
const mayLighten = /^tow\/front-gawr/;

describe('adding a fact', () => {
  it('never removes a failed check, nor what lifts', () => {
    const broken: string[] = [];
    for (const seed of lawSeeds(120)) {
      const spec = randomSpec(seed);
      const [first, ...more] = pathsIn(spec).filter((path) => added.some((each) => each.test(path)));
      const told = answerTo(spec);
      if (told === undefined || first === undefined) continue;
      const path = chanceOf(seed).pick([first, ...more]);
      const less = answerTo(without(spec, path));
      if (less === undefined) continue;
      const over = overIn(told);
      const gone = [...overIn(less)]
        .filter((id) => !over.has(id.replace('weakest-part', 'gawr')) && !over.has(id))
        .filter((id) => path !== 'tow.hitchHardware' || !mayLighten.test(id));
      if (gone.length > 0) broken.push(`seed ${seed}: told ${path}, no longer over: ${gone.join(', ')}`);
      if (told.uplift.lifted.length < less.uplift.lifted.length)
        broken.push(`seed ${seed}: told ${path}, fewer things lift`);
    }
    expect(fewOf(broken)).toEqual([]);
  });
});
