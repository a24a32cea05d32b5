/** The band of tongue shares a spec is held to. */
import { type Either, right } from 'fp-ts/lib/Either.js';
import { type Guideline, guideline, guidelineFor, type TonguePractice } from '../../load/index.js';
import type { DecodedTrailer } from '../../spec/index.js';
import type { OutsideItsRange } from '../../trace/index.js';
import { frozen } from '../../units/internal.js';

const practices = ['US and Canada', 'Europe', 'Australia'] as const satisfies readonly TonguePractice[];
const bandsOf = (hitch: 'ball' | 'gooseneck'): ReadonlyMap<TonguePractice, Guideline> =>
  new Map(practices.map((practice) => [practice, frozen(guidelineFor(hitch, practice))]));
const bands = { ball: bandsOf('ball'), gooseneck: bandsOf('gooseneck') };

/** The trailer's own band, or the editable default of its kind of hitch and its place. */
export function guidelineOf({
  guideline: own,
  hitch,
  practice = 'US and Canada',
}: DecodedTrailer): Either<OutsideItsRange, Guideline> {
  return own === undefined
    ? right(bands[hitch].get(practice) ?? guidelineFor(hitch, practice))
    : guideline(own.low, own.high, { id: 'spec', title: own.source, grade: 'memory' });
}
