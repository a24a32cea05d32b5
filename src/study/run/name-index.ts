/** A growing list of names, each kept once and known by its place. */
export interface Names {
  readonly names: readonly string[];
  /** The place of a name; a new one goes to the end. */
  readonly indexOf: (name: string) => number;
}

export function namesOf(): Names {
  const names: string[] = [];
  const places = new Map<string, number>();
  const indexOf = (name: string): number => {
    const known = places.get(name);
    if (known !== undefined) return known;
    places.set(name, names.length);
    return names.push(name) - 1;
  };
  return { names, indexOf };
}
