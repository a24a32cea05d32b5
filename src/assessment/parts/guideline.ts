/** The band of tongue shares a spec is held to. */
import { type Either, right } from 'fp-ts/lib/Either.js';
import { type Guideline, guideline, guidelineFor } from '../../load/index.js';
import type { TrailerSpec } from '../../spec/index.js';
import type { OutsideItsRange } from '../../trace/index.js';
import { frozen } from '../../units/internal.js';

const bands = frozen({ ball: guidelineFor('ball'), gooseneck: guidelineFor('gooseneck') });

/** The trailer's own band, or the editable default of its kind of hitch. */
export function guidelineOf({ guideline: own, hitch }: TrailerSpec): Either<OutsideItsRange, Guideline> {
  return own === undefined
    ? right(bands[hitch])
    : guideline(own.low, own.high, { id: 'spec', title: own.source, grade: 'memory' });
}
