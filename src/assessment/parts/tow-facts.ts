/** The facts that the towing chapter needs for a check, and the keys of a spec that give them. */
import { checkId } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import type { NotChecked } from '../../towing/index.js';
import { collected } from '../../units/internal.js';
import type { OpenQuestion } from './open-questions.js';
import { type Keys, unbalanced } from './wanting-keys.js';

const keyOf: Readonly<Record<string, string>> = {
  'front axle, truck alone': 'tow.front',
  'rear axle, truck alone': 'tow.rear',
  'tow vehicle GVWR': 'tow.gvwr',
  'tow vehicle front GAWR': 'tow.frontGawr',
  'tow vehicle rear GAWR': 'tow.rearGawr',
  GCWR: 'tow.gcwr',
  wheelbase: 'tow.wheelbase',
  overhang: 'tow.overhang',
  'receiver gross': 'tow.receiver.gross',
  'receiver tongue': 'tow.receiver.tongue',
  'ball mount gross': 'tow.ballMount.gross',
  'ball mount tongue': 'tow.ballMount.tongue',
  'ball gross': 'tow.ball.gross',
  'coupler gross': 'trailer.coupler.gross',
  'coupler tongue': 'trailer.coupler.tongue',
  'safety chains': 'trailer.chains',
  'trailer tow rating': 'tow.trailerRating',
  'tow vehicle tongue': 'tow.tongueRating',
  'occupant and cargo placard': 'tow.placard.limit',
  'people aboard': 'tow.placard.people',
  'cargo aboard': 'tow.placard.cargo',
};

/** The keys of a fact; a tongue load has none of its own, it follows from every key the balance needs. */
function keysOf(fact: string, spec: DecodedSpec): Keys {
  if (fact === 'tongue load') return unbalanced(spec);
  const key = keyOf[fact];
  return key === undefined ? [] : [key];
}

/** The checks of the tow side that were not made, under the ids that they would have. */
export const openChecks = (unmade: readonly NotChecked[], spec: DecodedSpec): readonly OpenQuestion[] =>
  unmade.map(({ kind, missing, what }) => ({
    id: checkId(kind),
    what,
    missing: missing.join(', '),
    paths: [...new Set(collected(missing, (fact) => keysOf(fact, spec)))],
  }));
