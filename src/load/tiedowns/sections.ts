/** The sections of the securement rules that an article may be tied by, and what each is quoted from. */
import type { AnyLength, AnyWeight, Derived, Source } from '../../trace/index.js';

/** Which section of the rules the article is tied by: the carrier's choice below 10,000 lb, so it is an argument. */
export type SecurementSection = 'general' | 'heavy equipment' | 'light vehicle';

/** The article to be tied down. */
export interface TiedArticle {
  readonly weight: AnyWeight;
  readonly length: AnyLength;
  /** Held against moving forward by a headboard, bulkhead, other secured cargo or other means. */
  readonly blockedForward: boolean;
  readonly section: SecurementSection;
}

/** A minimum count as one reading of the rule has it. */
export interface CountReading {
  readonly reading: string;
  readonly minimum: Derived<'ratio'>;
  readonly source: Source;
}

/** By length and weight. */
export const general: Source = Object.freeze({
  id: 'cfr-393-110',
  title: '49 CFR 393.110',
  edition: 'agency cargo page as quoted in a forum; fleet compliance table of 2012',
  grade: 'C',
});
/** Heavy vehicles, equipment and machinery. */
export const heavy: Source = Object.freeze({
  id: 'cfr-393-130',
  title: '49 CFR 393.130',
  clause: '(a)',
  edition: 'quoted in a web copy',
  grade: 'B',
});
/** Automobiles, light trucks and vans. */
export const light: Source = Object.freeze({
  id: 'cfr-393-128',
  title: '49 CFR 393.128',
  clause: '(a)',
  edition: 'archived agency page',
  grade: 'A',
});
/** The handbook that reads the light-vehicle section otherwise. */
export const handbook: Source = Object.freeze({
  id: 'driver-handbook-light',
  title: "agency driver's handbook page",
  edition: '2014-12-18',
  grade: 'B',
  note: 'can be read as two at each end',
});
