/** The figures of the spec that an answer holds: exact, in the unit they are written in, by their keys. */
import { describe, expect, it } from 'vitest';
import { specLeaves } from '../../../src/assessment/answer/spec-leaves.js';
import { leftOf, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const leaf = (spec: unknown, path: string) => rightOf(specLeaves(spec as never))(path);

describe('the leaves of a spec', () => {
  it('are exact and in the unit they are written in', () => {
    const spec = changed(tiltDeck(), 'cargo.0.weight', { text: '4,000.1 kg', basis: 'scale' });
    expect(leaf(spec, 'cargo.0.weight')).toEqual({ value: { top: 40001n, bottom: 10n }, unit: 'kg', basis: 'scale' });
  });
  it('are none at a key that the spec does not have, at a word, and at a record', () => {
    for (const path of ['trailer.gvw', 'cargo.9.weight', 'trailer.hitch', 'trailer.axles', ''])
      expect(leaf(tiltDeck(), path)).toBeUndefined();
  });
  it('of a spec that cannot be read are a fault of the answer', () => {
    const broken = changed(tiltDeck(), 'trailer.gvwr', '9990');
    expect(leftOf(specLeaves(broken as never))).toEqual({
      at: 'spec',
      what: 'the spec',
      found: 'trailer.gvwr',
      needed: 'a spec that can be read',
    });
  });
});
