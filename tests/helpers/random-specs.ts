/**
 * Random specs, all invented and all meant to be read: ball and gooseneck, one to three axles, with and without a tow vehicle,
 * bars, off level, pounds or kilograms, weighed or built up, several pieces, and a quarter with ratings on the very loads
 * they limit. The same seed gives the same spec everywhere.
 */
import { cargoOf } from './random/cargo.js';
import { chanceOf } from './random/chance.js';
import { planOf } from './random/plan.js';
import { rulesOf, ticketsOf, towOf } from './random/tow.js';
import { trailerOf } from './random/trailer.js';

/** A spec as plain JSON. */
export type JsonSpec = Readonly<Record<string, unknown>>;

/** The spec of a seed: a whole number from zero. */
export function randomSpec(seed: number): JsonSpec {
  const chance = chanceOf(seed);
  const plan = planOf(chance);
  const { detail, pieces, gooseneck } = plan;
  return {
    name: `random spec ${seed}`,
    trailer: trailerOf(plan),
    ...(pieces.length === 0 && chance.happens(50) ? {} : { cargo: cargoOf(plan) }),
    ...chance.maybe(35, 'tongueShare', () => `${gooseneck ? chance.whole(15, 25) : chance.whole(8, 15)} %`),
    ...chance.maybe(65, 'tow', () => towOf(plan)),
    ...chance.maybe(detail * 0.8, 'rules', () => rulesOf(plan)),
    ...chance.maybe(15, 'tickets', () => ticketsOf(plan)),
  };
}

/** So many specs, from a seed on. */
export const randomSpecs = (count: number, from = 0): readonly JsonSpec[] =>
  Array.from({ length: count }, (_, i) => randomSpec(from + i));
