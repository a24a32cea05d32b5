/** A spec with other figures is the spec that would have been read with them, and shares the rest. */
import { Decimal } from 'decimal.js';
import { expect, it } from 'vitest';
import { withFigures } from '../../src/choose/with-figures.js';
import { decodeSpec, leavesOf } from '../../src/spec/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const read = (changes: Readonly<Record<string, string>> = {}) =>
  rightOf(decodeSpec(Object.entries(changes).reduce((so, [path, text]) => changed(so, path, text), tiltDeck())));
const figures = (spec: ReturnType<typeof read>): Readonly<Record<string, string>> =>
  Object.fromEntries([...leavesOf(spec)].map(([path, { value }]) => [path, `${value.value.toFixed()} ${value.unit}`]));

it.each([
  ['cargo.0.weight', '8,000 lb', '8000'],
  ['trailer.gvwr', '13,500 lb', '13500'],
  ['trailer.axles.1.tires.pressure', '70 psi', '70'],
  ['trailer.curb.tongue', '500 lb', '500'],
])('%s: %s', (path, text, digits) => {
  const before = read();
  const kept = figures(before);
  const after = withFigures(before, new Map([[path, new Decimal(digits)]]) as never);
  expect(figures(after)).toEqual(figures(read({ [path]: text })));
  expect(figures(before)).toEqual(kept);
});

it('several at once, in the units they were written in, and nothing else', () => {
  const metric = read({ 'cargo.0.weight': '4,000 kg', 'trailer.gvwr': '14,000 lb' });
  const after = withFigures(
    metric,
    new Map([
      ['cargo.0.weight', new Decimal(3900)],
      ['trailer.gvwr', new Decimal(13000)],
    ]) as never,
  );
  expect(figures(after)).toEqual(figures(read({ 'cargo.0.weight': '3,900 kg', 'trailer.gvwr': '13,000 lb' })));
  expect(after.cargo?.[0]?.weight.value.value.toNumber()).toBeCloseTo(3900 / 0.45359237, 6);
  expect(after.tow).toBe(metric.tow);
});

it('none is the same spec', () => {
  const before = read();
  expect(figures(withFigures(before, new Map()))).toEqual(figures(before));
  for (const path of ['trailer.no.such', 'cargo.0.name.first', 'trailer.gvwr.text'])
    expect(figures(withFigures(before, new Map([[path, new Decimal(1)]]) as never))).toEqual(figures(before));
});
