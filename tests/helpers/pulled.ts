/** What is proposed for the example trailer with legs under its tail, other figures, and some levers only. */
import { type LeverWord, remedies } from '../../src/choose/index.js';
import type { SpecInput } from '../../src/spec/index.js';
import { changed } from '../../src/study/index.js';
import { rightOf } from './either.js';
import { tiltDeck } from './specs.js';

/** The words of every proposal, single levers first; the steps of one in their order. */
export function proposals(changes: Readonly<Record<string, unknown>>, ...levers: readonly LeverWord[]) {
  const spec = changed(tiltDeck(), { 'trailer.rearLegs': '14,000 lb', ...changes }) as SpecInput;
  const { single, together } = rightOf(remedies(spec, levers));
  return [...single, ...together].map(({ steps }) => steps.map(({ says }) => says));
}

/** Both axles of the example at a pressure. */
export const pressed = (pressure: string) => ({
  'trailer.axles.0.tires.pressure': pressure,
  'trailer.axles.1.tires.pressure': pressure,
});
