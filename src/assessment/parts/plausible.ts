/**
 * Figures that are valid but implausible: a GVWR or a machine of a few pounds, and a point that may have been
 * meant as a thousands separator. They get an attention note and are never refused. A figure from a program is not questioned.
 */
import { type Note, note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { leafBehind, leavesOf } from '../../spec/index.js';
import { constant, type Decision, type Derived, decide, type Given, inPounds } from '../../trace/index.js';
import { lb, quantity, show, type Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';

export interface Doubts {
  readonly attention: readonly Note[];
  readonly decisions: readonly Decision[];
}

/** The least that a trailer is rated for, and the least that anybody calls a machine. Common practice, no source. */
const leastGvwr = constant(lb(500), 'least GVWR to be believed');
const leastMachine = constant(lb(50), 'least machine to be believed');

/** Not from a program, whose figures are not doubted. */
const isWritten = (figure: Derived<Unit>): boolean => leafBehind(figure)?.written !== undefined;

const doubt = (tag: string, says: string, figure: Derived<Unit>, path: string): Note => ({
  ...note(tag, says, [figure]),
  paths: [path],
});

function ofGvwr({ trailer: { gvwr } }: DecodedSpec): Doubts {
  if (gvwr === undefined || !isWritten(gvwr)) return { attention: [], decisions: [] };
  const small = decide(inPounds('GVWR', gvwr), '<', leastGvwr, 'a remark');
  const says = 'the GVWR (trailer.gvwr) is below 500 lb, which is hard to believe';
  return {
    attention: small.holds ? [doubt('GvwrHardToBelieve', says, gvwr, 'trailer.gvwr')] : [],
    decisions: [small],
  };
}

/** The heaviest piece is the machine: no piece reaches the least. */
function ofMachine({ cargo = [] }: DecodedSpec): Doubts {
  const decisions: Decision[] = [];
  if (!cargo.every(({ weight }) => isWritten(weight))) return { attention: [], decisions };
  for (const { name, weight } of cargo) {
    const small = decide(inPounds(`${name} weight`, weight), '<', leastMachine, 'a remark');
    decisions.push(small);
    if (!small.holds) return { attention: [], decisions };
  }
  const attention = cargo.map(({ name, weight }, i) => {
    const path = `cargo.${i}.weight`;
    const says = `the weight of ${name} (${path}) is below 50 lb, which is hard to believe of a machine`;
    return doubt('MachineHardToBelieve', says, weight, path);
  });
  return { attention, decisions };
}

/** `4.100`: three decimals behind one to three digits, which half the world reads as 4,100. */
const parted = /^\s*\+?[1-9]\d{0,2}\.\d{3}(?!\d)/;

/** A weight in kg or a pressure in kPa whose point may have been meant to part thousands: how it was read. */
function ofPoint(leaf: Given): readonly Note[] {
  const { path = '', symbol, value, written } = leaf;
  if (written === undefined || (value.unit !== 'kg' && value.unit !== 'kPa') || !parted.test(written)) return [];
  const text = written.trim().replace(/\s+/g, ' ');
  const other = show(quantity(value.value.times(1000), value.unit));
  const says = `the ${symbol} (${path}), written "${text}", is read as ${show(value)} and not as ${other}`;
  return [doubt('ReadWithDecimals', says, { value, why: leaf }, path)];
}

/** All of them, and the decisions behind them. */
export function doubtsIn(spec: DecodedSpec): Doubts {
  const [gvwr, machine] = [ofGvwr(spec), ofMachine(spec)];
  return {
    attention: [...gvwr.attention, ...machine.attention, ...collected([...leavesOf(spec).values()], ofPoint)],
    decisions: [...gvwr.decisions, ...machine.decisions],
  };
}
