/** Axle places: each as the spec gives it, or all shifted so that their middle is where the spec gives it. */
import type { DecodedTrailer } from '../../spec/index.js';
import { type Derived, inInches, minus, over, plus, renamed, result } from '../../trace/index.js';

type Inches = Derived<'in'>;

const written = ({ axles }: Pick<DecodedTrailer, 'axles'>): readonly (Inches | undefined)[] =>
  axles.map(({ at }, i) => at && inInches(`axle ${i + 1} position`, renamed(`axle ${i + 1} position`, at)));

/** How far `axleGroup.at` moves the axles from where they are written; none where it is unknown, or one of their places is. */
export function axlesMoved(trailer: Pick<DecodedTrailer, 'axles' | 'axleGroup'>): Inches | undefined {
  const at = trailer.axleGroup?.at;
  if (at === undefined) return undefined;
  const places = written(trailer).filter((place) => place !== undefined);
  const [first, ...others] = places;
  if (first === undefined || places.length < trailer.axles.length) return undefined;
  const middle =
    others.length === 0 ? first : result('middle of the axles as written', over(plus(first, ...others), places.length));
  return result('axles moved', minus(inInches('middle of the axles', at), middle));
}

/** The place of each axle; undefined where it is unknown. */
export function axlePlaces(trailer: Pick<DecodedTrailer, 'axles' | 'axleGroup'>): readonly (Inches | undefined)[] {
  const moved = axlesMoved(trailer);
  const places = written(trailer);
  return moved === undefined
    ? places
    : places.map((place, i) => place && result(`axle ${i + 1} position, moved`, plus(place, moved)));
}
