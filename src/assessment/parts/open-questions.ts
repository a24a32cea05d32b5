/** What a spec leaves open: where it is asked, a question says what programs call it and which keys would answer it. */

/** A question the spec leaves open. It narrows the answer and is said aloud. */
export interface OpenQuestion {
  /** What programs look it up by: that of the check it would be, or one of `docs/ids.md`. Stable: words may change, ids do not. */
  readonly id: string;
  /** What was not checked, in shop words. */
  readonly what: string;
  /** The fact that is missing, in shop words. */
  readonly missing: string;
  /** The keys of the spec that would answer it; where several would do, all of them; none where no key of the spec would. */
  readonly paths: readonly string[];
  /** The piece of cargo it is about, where it is about one: its place in the list, from zero. */
  readonly piece?: number;
}

/** How often each of these is in the list. */
function counted(ids: readonly string[]): ReadonlyMap<string, number> {
  const often = new Map<string, number>();
  for (const id of ids) often.set(id, (often.get(id) ?? 0) + 1);
  return often;
}

/** Every open question under an id of its own: those alike have their first key behind it; where that is alike too, their piece. */
export function openQuestions(asked: readonly OpenQuestion[]): readonly OpenQuestion[] {
  const often = counted(asked.map(({ id }) => id));
  if (often.size === asked.length) return asked;
  const keyed = counted(asked.map(({ id, paths: [first] }) => `${id}:${first}`));
  return asked.map((question) => {
    const { id, piece, paths } = question;
    if (often.get(id) === 1) return question;
    const [first] = paths;
    const apart = keyed.get(`${id}:${first}`) === 1 || piece === undefined ? first : `cargo.${piece}`;
    return { ...question, id: `${id}:${apart}` };
  });
}
