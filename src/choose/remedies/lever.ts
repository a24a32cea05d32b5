/** What a lever is: who pulls it, and how. */

/** Who can pull a lever. The maker's label is no lever: it is never proposed. */
export type Who = 'driver' | 'yard' | 'shop';

/** What can be pulled, by one word each. */
export const leverWords = [
  'move',
  'unload',
  'pressure',
  'bars',
  'tires',
  'tiedowns',
  'legs',
  'ramps',
  'chains',
  'jack',
  'ball',
  'ball mount',
  'coupler',
  'receiver',
] as const;
export type LeverWord = (typeof leverWords)[number];

interface Lever {
  readonly word: LeverWord;
  readonly name: string;
  readonly who: Who;
  /** Trouble it makes; the proposals are sorted by it. */
  readonly cost: number;
}

/** A figure that can be moved in steps, both ways, between two ends. */
export interface Slide extends Lever {
  readonly kind: 'slide';
  readonly path: string;
  readonly unit: 'in' | 'lb' | 'ratio';
  readonly now: number;
  readonly step: number;
  readonly least: number;
  readonly most: number;
  readonly says: (to: number) => string;
}

/** A part that can be had with greater ratings: what it needs follows from its loads. */
export interface Part extends Lever {
  readonly kind: 'part';
  readonly paths: readonly string[];
  readonly step: number;
}

/** Ready-made changes, the smallest first. */
export interface Choice extends Lever {
  readonly kind: 'choice';
  /** Gone when the option is enough: a remark that asks attention, by its tag and a word of it. */
  readonly settles?: { readonly tags: readonly string[]; readonly word: string };
  readonly options: readonly { readonly says: string; readonly changes: Readonly<Record<string, unknown>> }[];
}

export type AnyLever = Slide | Part | Choice;
