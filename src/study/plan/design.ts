/** Which points a study is asked to visit. */

/** Every combination; one factor after another with the others at the spec's own values; or `runs` sampled points. */
export type Design =
  | { readonly kind: 'grid' }
  | { readonly kind: 'one at a time' }
  | { readonly kind: 'latin hypercube'; readonly runs: number; readonly seed: number }
  | { readonly kind: 'monte carlo'; readonly runs: number; readonly seed: number };
