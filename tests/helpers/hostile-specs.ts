/** Specs that nobody should send: valid ones with one to four edits, from wild figures to values that are no JSON at all. */
import { hostileString } from './hostile-strings.js';
import { type Chance, chanceOf } from './random/chance.js';
import { digitsAndUnit, figuresIn, pathsIn } from './random/leaves.js';
import { type JsonSpec, randomSpec } from './random-specs.js';
import { changed } from './specs.js';

/** Values of every kind a caller without types may hand in. */
const strange: readonly (() => unknown)[] = [
  () => null,
  () => undefined,
  () => Number.NaN,
  () => Number.POSITIVE_INFINITY,
  () => -1,
  () => 1e308,
  () => '',
  () => [],
  () => ({}),
  () => [[[]]],
  () => true,
  () => 10n,
  () => Symbol('s'),
  () => () => '9,000 lb',
  () => new Date(0),
  () => new Map([['text', '9,000 lb']]),
  () => Object.create({ text: '9,000 lb', basis: 'label' }),
  () => JSON.parse('{"__proto__":{"text":"9,000 lb"},"text":"9,000 lb"}') as unknown,
  () => ({ value: '9000', unit: '__proto__' }),
  () => ({ value: 'NaN', unit: 'lb' }),
  () => ({ text: '9,000 lb', basis: 'toString' }),
  () => Array.from({ length: 2000 }, () => ({})),
  () => new Array(50),
];

/** Scaled, moved a little or set to an end: most of these are read. */
function wild(chance: Chance, value: unknown): unknown {
  const { digits, unit } = digitsAndUnit(value);
  const scale = chance.pick([0, 0.1, 0.5, 0.9, 0.99, 1, 1.01, 1.1, 1.5, 2, 5, -1, 100000]);
  const figure = Number(digits) * scale;
  return `${chance.happens(50) ? figure : figure.toFixed(3)} ${unit}`;
}

function editOnce(spec: JsonSpec, chance: Chance): JsonSpec {
  const figures = figuresIn(spec);
  const paths = pathsIn(spec);
  const kind = chance.whole(0, 99);
  const figure = figures[chance.whole(0, figures.length - 1)];
  const path = paths[chance.whole(0, paths.length - 1)];
  if (figure === undefined || path === undefined) return spec;
  if (kind < 65) return changed(spec, figure.path, wild(chance, figure.value));
  if (kind < 82) return changed(spec, path, undefined);
  if (kind < 91) return changed(spec, figure.path, hostileString(chance));
  return changed(spec, path, strange[chance.whole(0, strange.length - 1)]?.());
}

/** `structuredClone` refuses functions and symbols: once one is in, nothing more is edited. */
export function hostileSpec(seed: number): unknown {
  const chance = chanceOf(seed ^ 0x0bad);
  let spec = randomSpec(seed);
  for (let left = chance.pick([1, 1, 1, 1, 2, 3]); left > 0; left -= 1)
    try {
      spec = editOnce(spec, chance);
    } catch {
      return spec;
    }
  return spec;
}
