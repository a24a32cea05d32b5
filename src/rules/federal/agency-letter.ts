/** One agency letter, as a row of the table holds it. */

export interface AgencyLetter {
  readonly id: string;
  readonly dated: string;
  readonly about: string;
  /** Trailer letters govern here; general letters refer to vehicles on their own axles and are shown for comparison. */
  readonly speaksOf: 'trailer' | 'general';
  readonly topic: string;
  readonly point: string;
  readonly remark?: string;
}
