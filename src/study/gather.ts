/** Which rows of a chunk belong to which alternative, and the way of its figures to their places. */
import { isVaried } from './tape.js';
import type { Variant } from './variant.js';

/** Rows of one alternative in a chunk; without places they are all of them. */
export interface Group { readonly indexes: readonly number[]; readonly places?: number[] }

/** The rows of each alternative, in the order of their first rows. */
export function groupsOf(choices: readonly Int16Array[], rows: number): readonly Group[] {
  const alike = choices.every((column) => { const first = column[0]; for (let i = 1; i < rows; i += 1) if (column[i] !== first) return false; return true; });
  const indexesAt = (i: number): readonly number[] => choices.map((column) => column[i] as number);
  if (alike) return [{ indexes: indexesAt(0) }];
  const groups = new Map<string, { indexes: readonly number[]; places: number[] }>();
  for (let i = 0; i < rows; i += 1) {
    const key = indexesAt(i).join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { indexes: indexesAt(i), places: [i] });
    else group.places.push(i);
  }
  return [...groups.values()];
}

/** The figures as columns: those of the tape themselves when they may be handed out, copies in their places otherwise. */
export function figureColumns(variant: Variant, columns: readonly Float64Array[], figures: readonly Float64Array[], names: readonly string[], count: number, handOut: boolean, places: readonly number[] | undefined): readonly Float64Array[] {
  return names.map((name, k) => {
    const out = figures[k] as Float64Array;
    const at = variant.figures.find((figure) => figure.name === name)?.at;
    if (at === undefined) return out;
    if (!isVaried(at)) { if (places === undefined) out.fill(at.value, 0, count); else for (const i of places) out[i] = at.value; return out; }
    const column = columns[at.column] as Float64Array;
    if (handOut) return column;
    if (places === undefined) out.set(column); else places.forEach((i, j) => { out[i] = column[j] as number; });
    return out;
  });
}
