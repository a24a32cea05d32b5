/** Nothing is shared between answers that a caller could change: one answer spoiled in every place, and the next one is right. */
import { describe, expect, it } from 'vitest';
import { answerOf, assess, ruleFindings } from '../../src/assessment/index.js';
import { answerTo } from '../helpers/facts.js';
import { outlineOf } from '../helpers/outline.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { tiltDeck } from '../helpers/specs.js';

/** Every object in reach of a value: own keys, symbols too. */
function objectsIn(value: unknown): ReadonlySet<object> {
  const found = new Set<object>();
  const left: unknown[] = [value];
  while (left.length > 0) {
    const next = left.pop();
    if (typeof next !== 'object' || next === null || found.has(next)) continue;
    found.add(next);
    for (const key of Reflect.ownKeys(next)) left.push((next as Record<PropertyKey, unknown>)[key]);
    if ('value' in next) left.push(next.value); // a figure keeps its decimal to itself and hands it out
  }
  return found;
}

/** Writes over whatever can be written over. */
function spoil(thing: object): void {
  const open = thing as Record<PropertyKey, unknown>;
  for (const key of Reflect.ownKeys(thing))
    try {
      open[key] = typeof open[key] === 'number' ? 7 : 'spoiled';
    } catch {
      // frozen: this is what is wanted
    }
  if (Array.isArray(thing) && !Object.isFrozen(thing)) thing.push('spoiled');
}

const specs = [tiltDeck(), ...randomSpecs(12)];

describe('an answer spoiled everywhere', () => {
  it('leaves the next one right', () => {
    const before = specs.map(outlineOf);
    for (const spec of specs) {
      const answer = answerTo(structuredClone(spec)); // what the caller handed in is the caller's own
      if (answer !== undefined) for (const thing of objectsIn([answer, ruleFindings(answer.rules)])) spoil(thing);
      const refused = assess({ trailer: spec.trailer, cargo: 1 } as never);
      for (const thing of objectsIn(refused)) spoil(thing);
    }
    expect(specs.map(outlineOf)).toEqual(before);
  });
  it('leaves the next one right when a figure is used to reach for the settings of decimals', () => {
    const before = outlineOf(tiltDeck());
    for (const thing of objectsIn(answerTo(tiltDeck()))) {
      const { constructor: made } = thing as { readonly constructor?: { readonly set?: (to: object) => unknown } };
      try {
        if (made !== Object && typeof made?.set === 'function') made.set({ precision: 2, rounding: 0 });
      } catch {
        // refused: this is as well
      }
    }
    expect(outlineOf(tiltDeck())).toEqual(before);
  });
  it('is as JSON and as a clone what its plain form says', () => {
    for (const spec of specs) {
      const answer = answerTo(spec);
      const said = answer === undefined ? assess(spec as never) : answerOf(answer, { working: true });
      expect(structuredClone(said)).toEqual(said);
      expect(JSON.parse(JSON.stringify(said))).toEqual(said);
    }
  });
  it('shares no object with another that can be written over', () => {
    const [one, other] = [answerTo(tiltDeck()), answerTo(tiltDeck())].map(objectsIn);
    const shared = [...(one ?? [])].filter(
      (thing) => other?.has(thing) && !Object.isFrozen(thing) && Reflect.ownKeys(thing).length > 0,
    );
    expect(shared.map((thing) => Object.keys(thing).join(', '))).toEqual([]);
  });
});
