/** Random specs with one wild figure each. */
import { chanceOf } from './random/chance.js';
import { digitsAndUnit, figuresIn } from './random/leaves.js';
import { type JsonSpec, randomSpec } from './random-specs.js';
import { changed } from './specs.js';

/** One figure of a random spec, a thousandth of what it was, or none, or twenty times as much. */
export function wildSpec(seed: number): JsonSpec {
  const spec = randomSpec(seed);
  const chance = chanceOf(seed + 0xf16);
  const [first, ...more] = figuresIn(spec);
  if (first === undefined) return spec;
  const { path, value } = chance.pick([first, ...more]);
  const { digits, unit } = digitsAndUnit(value);
  return changed(spec, path, `${Number(digits) * chance.pick([0, -1, 0.001, 0.2, 4, 20])} ${unit}`);
}
