/** A spec with some of its figures changed: scaled, cut to odd digits, set equal to each other, and ratings moved onto their very loads. */
import { isLeft } from 'fp-ts/lib/Either.js';
import type { Assessment } from '../../src/assessment/index.js';
import { type Chance, chanceOf } from '../helpers/random/chance.js';
import { digitsAndUnit, figuresIn } from '../helpers/random/leaves.js';
import type { JsonSpec } from '../helpers/random-specs.js';
import { changed } from '../helpers/specs.js';
import type { Library } from './two-paths.js';

const scales = ['0.5', '0.9', '0.99', '1', '1.01', '1.1', '1.333333333333', '2'] as const;

/** Another figure for one place: its own, scaled and cut; or that of another place in the same unit. */
function another(spec: JsonSpec, value: unknown, chance: Chance): unknown {
  const { digits, unit } = digitsAndUnit(value);
  const alike = figuresIn(spec).filter((other) => digitsAndUnit(other.value).unit === unit);
  const [first, ...others] = alike;
  if (first !== undefined && chance.happens(40)) return chance.pick([first, ...others]).value;
  const scaled = Number(digits) * Number(chance.pick(scales));
  return `${scaled.toFixed(chance.pick([0, 0, 0, 2, 7] as const))} ${unit}`;
}

/** Where a limit stands in the spec, when it was given there. */
function pathOfLimit({ limit: { why } }: Assessment['checks'][number]): string | undefined {
  const leaf = why.kind === 'computed' && why.operation === 'convert' ? why.of[0] : why;
  return leaf?.kind === 'given' ? leaf.path : undefined;
}

/** The spec with the limit of one check moved onto its load, to the last digit: an exact tie. */
function ontoItsLoad(spec: JsonSpec, { assessJson }: Pick<Library, 'assessJson'>, chance: Chance): JsonSpec {
  const assessed = assessJson(spec);
  if (isLeft(assessed)) return spec;
  const given = assessed.right.checks.filter((check) => pathOfLimit(check) !== undefined);
  const [first, ...others] = given;
  if (first === undefined) return spec;
  const check = chance.pick([first, ...others]);
  return changed(spec, pathOfLimit(check) as string, `${check.load.value.value.toFixed()} lb`);
}

/** The same seed edits the same spec in the same way. */
export function edited(spec: JsonSpec, seed: number, library: Pick<Library, 'assessJson'>): JsonSpec {
  const chance = chanceOf(seed);
  let made = spec;
  for (let edits = chance.whole(0, 4); edits > 0; edits -= 1) {
    const [first, ...others] = figuresIn(made);
    if (first === undefined) break;
    const { path, value } = chance.pick([first, ...others]);
    made = changed(made, path, another(made, value, chance));
  }
  return chance.happens(50) ? ontoItsLoad(made, library, chance) : made;
}
