/** Specs to test with: the example trailer, changed at a path, and every working an answer holds. */
import { readFileSync } from 'node:fs';
import type { SpecInput } from '../../src/spec/index.js';
import type { Decision, Derived, Node } from '../../src/trace/index.js';
import type { Unit } from '../../src/units/index.js';

type Json = Record<string, unknown>;

/** A spec of which a test changes any part. */
export type TestSpec = SpecInput & Json;

const textOf = (name: string): string => readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), 'utf8');
const [text, next] = [textOf('tilt-deck'), textOf('tilt-deck-16')];

/** A fresh copy of the example. */
export const tiltDeck = (): TestSpec => JSON.parse(text) as TestSpec;

/** A fresh copy of the example one class up. */
export const heavier = (): TestSpec => JSON.parse(next) as TestSpec;

/** The same spec with what stands at a path replaced; `undefined` takes it out. Paths as errors name them: `cargo.0.weight`. */
export function changed<S>(spec: S, path: string, value: unknown): S {
  const copy = structuredClone(spec);
  const keys = path.split('.');
  const last = keys.pop() as string;
  const place = keys.reduce<Json>((at, key) => {
    at[key] ??= {};
    return at[key] as Json;
  }, copy as Json);
  if (value === undefined) Array.isArray(place) ? place.splice(Number(last), 1) : delete place[last];
  else place[last] = value;
  return copy;
}

const isRecord = (value: unknown): value is Json => typeof value === 'object' && value !== null;

/** Every figure with working inside an answer, and both sides of every decision, wherever they stand. */
export function workingsIn(answer: unknown): readonly Derived<Unit>[] {
  const found = new Set<Derived<Unit>>();
  const nodes = new Set<Node>();
  const seen = new Set<unknown>();
  const visit = (value: unknown): void => {
    if (!isRecord(value) || seen.has(value)) return;
    seen.add(value);
    if ('why' in value && 'value' in value) found.add(value as unknown as Derived<Unit>);
    else if ('comparison' in value && 'holds' in value)
      for (const side of ['left', 'right'] as const) nodes.add((value as unknown as Decision)[side]);
    else Object.values(value).forEach(visit);
  };
  visit(answer);
  return [...found, ...[...nodes].map((why) => ({ value: why.value, why }))];
}
