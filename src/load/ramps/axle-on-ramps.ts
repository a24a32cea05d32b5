/** One axle of a machine on a pair of ramps, and what is said of ramps that do not serve it. */
import { type Note, note } from '../../ratings/index.js';
import { constant, type Derived, decide, minus, plus, result, type Source, times } from '../../trace/index.js';
import { inch, showBrief } from '../../units/index.js';
import type { EndLimit, Span } from '../placement/span.js';

/** Where the settings follow from. */
export const geometry: Source = Object.freeze({
  id: 'ramp-spacing',
  title: 'plane geometry, derived',
  grade: 'derived',
});

const namesOf = (limits: readonly EndLimit[]): string => limits.map(({ name }) => name).join(' and ');

/** One axle on its ramps. */
export interface Play {
  readonly name: string;
  readonly play: Derived<'in'>;
  readonly low: Derived<'in'>;
  readonly high: Derived<'in'>;
}

/** An axle in inches. */
export interface AxleRead {
  readonly name: string;
  readonly gauge: Derived<'in'>;
  readonly tire: Derived<'in'>;
}

/** How far the tire may be off the middle of its ramp, and the settings that keep it on. */
export function playOf({ name, gauge, tire }: AxleRead, width: Derived<'in'>, margin: Derived<'in'>): Play {
  const play = result(`play of the ${name} tire on its ramp`, minus(width, plus(tire, times(2, margin))), geometry);
  return {
    name,
    play,
    low: result(`closest for ${name}`, minus(gauge, play)),
    high: result(`widest for ${name}`, plus(gauge, play)),
  };
}

/** Tires that are wider than the ramp. */
export const narrowRamps = (plays: readonly Play[]): readonly Note[] =>
  plays
    .filter(({ play }) => decide(play, '<', constant(inch(0)), 'a remark').holds)
    .map(({ name, play }) =>
      note('TireWiderThanRamp', `The ${name} tire with its margins is wider than the ramp.`, [play]),
    );

/** What to say where no setting serves. */
export const noSetting = ({ empty, lower, upper, width }: Span): readonly Note[] =>
  empty
    ? [
        note(
          'NoSetting',
          `No setting serves: ${namesOf(lower.setBy)} asks for ${showBrief(lower.at.value)} or wider, ${namesOf(upper.setBy)} for ${showBrief(upper.at.value)} or closer.`,
          [width],
        ),
      ]
    : [];
