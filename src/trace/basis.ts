/** What an input rests on, from strong to weak. */

/** scale: a ticket. label: plate, molding, stamping. published: table or standard. stated: somebody said so. */
export const bases = ['scale', 'label', 'published', 'computed', 'stated', 'estimated'] as const;

export type Basis = (typeof bases)[number];

const rank: Readonly<Record<Basis, number>> = {
  scale: 0,
  label: 1,
  published: 2,
  computed: 3,
  stated: 4,
  estimated: 5,
};

/** The weaker of two bases. @example weaker('scale', 'stated') // stated */
export const weaker = (a: Basis, b: Basis): Basis => (a === b || rank[a] >= rank[b] ? a : b);

/** Whether a word names a basis. @example isBasis('label') // true */
export const isBasis = (text: string): text is Basis => Object.hasOwn(rank, text);
