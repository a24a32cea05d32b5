/** The piece that getting on is asked of is looked for once: loading, tail and payload read the same. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { recordingDecisions } from '../../../src/trace/index.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const second = { name: 'roller', weight: '1,500 lb', at: '90 in', axles: ['900 lb', '600 lb'] };

/** How often the weights, or the axles, of the two pieces are held against each other. */
function asked(changes: Readonly<Record<string, unknown>>, of: RegExp): number {
  const two = { ...tiltDeck(), cargo: [...(tiltDeck()['cargo'] as readonly object[]), second] };
  const spec = Object.entries(changes).reduce((so, [path, value]) => changed(so, path, value), two);
  const { decisions } = recordingDecisions(() => assessJson(spec));
  return decisions.filter(
    ({ left, right, comparison }) => comparison === '>' && [left, right].every(({ symbol = '' }) => of.test(symbol)),
  ).length;
}

describe('the heaviest piece', () => {
  const weights = /^(?!trailer|empty|tow).* weight$/;
  it('is looked for once by ramps rated by machine', () =>
    expect(asked({ 'trailer.ramps.basis': 'machine' }, weights)).toBe(1));
  it('and the heaviest axle once by ramps rated by axle', () =>
    expect(
      asked({ 'trailer.ramps.basis': 'axle', 'cargo.0.axles': ['5,000 lb', '4,000 lb'] }, /^heaviest machine axle$/),
    ).toBe(1));
  it('is looked for once where the end of the deck is unknown', () =>
    expect(asked({ 'trailer.deck': undefined, 'trailer.ramps.basis': 'machine' }, weights)).toBe(1));
});
