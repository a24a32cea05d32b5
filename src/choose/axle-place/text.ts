/** An interval of axle places in words. */
import type { Derived } from '../../trace/index.js';
import type { AxleInterval } from './design.js';

/** The interval in words. @example axleIntervalText(orThrow(axlePlace({ spec, moving: [] }))[0]).startsWith('deck 240 in') // true */
export function axleIntervalText({ deck, from, to, fromSetBy, toSetBy, none, how }: AxleInterval): string {
  const inches = (figure: Derived<'in'>, up: boolean): string => {
    const at = figure.value.value.toNumber() * 10;
    return `${(up ? Math.ceil(at - 1e-9) : Math.floor(at + 1e-9)) / 10} in`;
  };
  const ends = `from ${inches(from, true)} (${fromSetBy.join(', ')}) to ${inches(to, false)} (${toSetBy.join(', ')})`;
  return `deck ${inches(deck, false)}: ${none ? `no place serves all: ${ends}` : `axles ${ends}`}; ${how}`;
}
