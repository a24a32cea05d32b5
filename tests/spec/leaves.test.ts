/** Every figure of a spec that has been read is found by the path of its key. */
import { expect, it } from 'vitest';
import { decodeSpec, leafBehind, leavesOf } from '../../src/spec/index.js';
import { rightOf } from '../helpers/either.js';
import { figuresIn } from '../helpers/random/leaves.js';
import { heavier, tiltDeck } from '../helpers/specs.js';

it.each([
  ['the example', tiltDeck()],
  ['the heavier example', heavier()],
])('all figures of %s, as they were written', (_, spec) => {
  const leaves = leavesOf(rightOf(decodeSpec(spec)));
  const figures = figuresIn(spec).filter(({ path }) => !path.startsWith('rules.'));
  expect(figures.length).toBeGreaterThan(30);
  for (const { path, value } of figures) {
    const { text = value } = value as { readonly text?: unknown };
    expect(leaves.get(path)?.written, path).toBe(text);
  }
});

it('a figure has its own name, with the axle or the piece before it', () => {
  const leaves = leavesOf(rightOf(decodeSpec(tiltDeck())));
  const symbols = ['trailer.gvwr', 'trailer.axles.0.gawr', 'trailer.axles.1.gawr', 'cargo.0.weight'];
  expect(symbols.map((path) => leaves.get(path)?.symbol)).toEqual([
    'GVWR',
    'axle 1 GAWR',
    'axle 2 GAWR',
    'excavator weight',
  ]);
});

it('a figure knows its leaf, converted or not', () => {
  const { trailer } = rightOf(decodeSpec({ ...tiltDeck(), trailer: { ...tiltDeck().trailer, gvwr: '6,350 kg' } }));
  expect(trailer.gvwr && leafBehind(trailer.gvwr)).toMatchObject({ path: 'trailer.gvwr', written: '6,350 kg' });
  expect(leavesOf(rightOf(decodeSpec(tiltDeck()))).has('trailer.hitch')).toBe(false);
});
