/** Cache for a function of a text that is called with the same few texts over and over. */

/** Cache size; the cache is cleared when full. */
const most = 500;

/** The same function; its results are shared, so they must be plain data that nobody changes. */
export function remembered<A>(answer: (text: string) => A): (text: string) => A {
  const known = new Map<string, { readonly answer: A }>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before.answer;
    if (known.size >= most) known.clear();
    const found = answer(text);
    known.set(text, { answer: found });
    return found;
  };
}
