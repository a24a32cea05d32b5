/** A tire as its sidewall shows it, what it runs on, and what it may carry there. */
import type { Note } from '../../ratings/index.js';
import type { Decision, Derived, Known } from '../../trace/index.js';
import type { Designation } from '../designation/designation.js';
import type { Fitment } from './published-rows.js';

/** A tire as it is found: what the sidewall says. Molded figures outrank everything else. */
export interface Tire {
  readonly designation: string | Designation;
  readonly molded?: {
    readonly single?: Known<'lb' | 'kg'> | undefined;
    readonly dual?: Known<'lb' | 'kg'> | undefined;
    readonly pressure?: Known<'psi' | 'kPa'> | undefined;
  };
  /** Keep to this load table; otherwise the lowest print governs. */
  readonly table?: string;
}

/** How and on what the tire runs. `truck` means truck, bus and multipurpose vehicle. */
export interface Service {
  readonly fitment: Fitment;
  readonly on: 'trailer' | 'truck' | 'passenger car';
}

export interface TireRating {
  readonly tire: Tire;
  readonly service: Service;
  readonly designation: Designation;
  /** What one tire may carry. */
  readonly rating: Derived<'lb'>;
  readonly from: 'molded' | 'index' | 'table';
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}
