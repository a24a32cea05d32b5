/** The remark on axles moved under a trailer whose tongue load was weighed: by its spec, or by a lever of a study. */
import { type Note, note } from '../../ratings/index.js';
import type { Derived, Given } from '../../trace/index.js';
import type { Unit } from '../../units/index.js';

const tag = 'AxlesMovedUnderWeighedTongue';
const says =
  'The axles are moved under a trailer that was weighed: an approximation, since what moves with them is not known. Built up from its parts it is exact.';
const kept =
  'Its tongue load is kept as it was weighed: moved by `trailer.axleGroup.at` it is worked out for the new place.';

const group = 'trailer.axleGroup.at';
const tongue = 'trailer.curb.tongue';
const curb = 'trailer.curb';

const isAxlePlace = (path: string): boolean => path === group || /^trailer\.axles\.\d+\.at$/.test(path);
/** Whether a change at this key tells the tongue load anew: `tongue` and `tongueByLever`, and what holds them. */
const tellsTongue = (path: string): boolean => path.startsWith(tongue) || tongue.startsWith(`${path}.`);

/** For a spec that moves its axles itself: where they were, and the tongue load as weighed. */
export const axlesMovedBySpec = (figures: readonly Derived<Unit>[]): Note => note(tag, says, figures);

/**
 * Are the axles moved, by a lever of a study, under a trailer that was weighed with its axles elsewhere?
 *
 * A lever that tells the tongue load too is another trailer, weighed as it says, and needs no remark. A lever on
 * `trailer.axles.N.at` keeps the tongue load of the spec; one on `trailer.axleGroup.at` works it out for the new place.
 *
 * @param leaves the figures of the spec by path, as `leavesOf` gives them
 * @param levers for each lever the keys that it moves together
 * @returns one note that names the keys, or none
 * @example axlesMovedByLevers(leavesOf(orThrow(decodeSpec(spec))), [['trailer.axles.0.at']])[0].tag // AxlesMovedUnderWeighedTongue
 * @source common practice, no source
 */
export function axlesMovedByLevers(
  leaves: ReadonlyMap<string, Given>,
  levers: readonly (readonly string[])[],
): readonly Note[] {
  const told = [...leaves].filter(([path]) => path.startsWith(tongue));
  const isWeighed = [...leaves.keys()].some((path) => path.startsWith(`${curb}.`) && !path.startsWith(tongue));
  const moved = levers.flatMap((paths) => (paths.some(tellsTongue) ? [] : paths.filter(isAxlePlace)));
  if (told.length === 0 || !isWeighed || moved.length === 0) return [];
  const movesFromPlaces = leaves.has(group) && [...leaves.keys()].some((path) => path !== group && isAxlePlace(path));
  const figures = told.map(([, leaf]): Derived<Unit> => ({ value: leaf.value, why: leaf }));
  const paths = [...new Set(moved), ...told.map(([path]) => path)];
  return [{ ...note(tag, movesFromPlaces ? says : `${says} ${kept}`, figures), paths }];
}
