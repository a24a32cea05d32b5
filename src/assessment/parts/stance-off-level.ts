/** Loads of independent axles with the ball above or below its level height. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type AxlesError, tandemSplit } from '../../axles/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import type { NotAWholeCount, OutsideItsRange } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import { axlePlaces } from './axle-places.js';
import { emptyPart, open } from './part-of-answer.js';
import type { StancePart } from './stance-part.js';
import { unbalanced, wantingOf, wantingOfAxles } from './wanting-keys.js';
import type { Weighed } from './weights.js';

type Found = Either<AxlesError | OutsideItsRange | NotAWholeCount, StancePart>;

/** Independent axles with known rates, the ball above or below its level height. */
export function offLevelOf(spec: DecodedSpec, { balance }: Weighed): Found {
  const { trailer } = spec;
  const { sharing, ballAboveLevel, axles } = trailer;
  if (sharing !== 'independent' || axles.length < 2) return right(emptyPart);
  const places = axlePlaces(trailer);
  const sprung = collected(axles, ({ rate }, i) => {
    const at = places[i];
    return at === undefined || rate === undefined ? [] : [{ at, rate }];
  });
  if (ballAboveLevel === undefined || sprung.length < axles.length || balance === undefined)
    return right(
      open({
        id: 'off-level',
        what: 'independent axles off level',
        missing: 'spring rates, and how far the ball stands from level',
        paths: [
          ...wantingOfAxles(trailer, 'rate'),
          ...wantingOf('trailer', trailer, 'ballAboveLevel'),
          ...unbalanced(spec),
        ],
      }),
    );
  const split = tandemSplit(balance.axleLoad, { suspension: 'independent', axles: sprung, ballAboveLevel });
  if (isLeft(split)) return split;
  const { notes, decisions } = split.right;
  return right({ offLevel: split.right, ...emptyPart, notes, decisions });
}
