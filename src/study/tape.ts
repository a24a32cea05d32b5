/**
 * A working flattened to a tape: the same operations in the same order, read in Float64 over blocks of rows.
 *
 * What does not depend on a varied input is folded to a number. No code is generated; each operation is a plain loop.
 * Decimals never run through these loops, and numbers never through theirs.
 */
import type { Node } from '../trace/index.js';
import { nodesOf } from '../trace/index.js';
import { isVaried, type Operand, type Step, stepOf } from './steps.js';

/** Rows that are worked on at once: small enough for the columns of a tape to stay in the cache. */
export const blockRows = 1024;

export interface Tape {
  /** The paths that vary; one input column each, in the unit of the leaf. */
  readonly inputs: readonly string[];
  readonly steps: readonly Step[];
  /** Columns needed at once. */
  readonly registers: number;
  /** Where each asked-for figure stands after a block. */
  readonly outputs: readonly Operand[];
}

/** Nodes that compute the same thing the same way, seen as one: equal checks of equal axles are then one column, and tie exactly. */
interface Merged {
  readonly ordered: readonly Node[];
  readonly same: ReadonlyMap<Node, Node>;
  readonly varied: ReadonlySet<Node>;
}

function merge(all: readonly Node[], inputs: readonly string[]): Merged {
  const byKey = new Map<string, Node>();
  const same = new Map<Node, Node>();
  const varied = new Set<Node>();
  const names = new Map<Node, string>();
  const ordered: Node[] = [];
  for (const node of all) {
    const input = node.kind === 'given' && node.path !== undefined && inputs.includes(node.path) ? node.path : undefined;
    const depends = node.kind === 'computed' ? node.of.some((part) => varied.has(same.get(part) as Node)) : input !== undefined;
    const key = !depends ? `= ${node.value.value.toString()}` : node.kind === 'computed'
      ? `${node.operation} ${node.factor?.times.toString()} ${node.factor?.over.toString()} ${node.rounding?.mode} ${node.rounding?.step.toString()} (${node.of.map((part) => names.get(same.get(part) as Node)).join(' ')})`
      : `input ${input}`;
    const twin = byKey.get(key);
    if (twin !== undefined) { same.set(node, twin); continue; }
    byKey.set(key, node);
    same.set(node, node);
    names.set(node, `#${names.size}`);
    if (depends) { varied.add(node); ordered.push(node); }
  }
  return { ordered, same, varied };
}

/** The last step that reads each node, so that its column can be used again. */
function lastUses({ ordered, same }: Merged, kept: readonly Node[]): ReadonlyMap<Node, number> {
  const last = new Map<Node, number>();
  ordered.forEach((node, index) => { if (node.kind === 'computed') for (const part of node.of) last.set(same.get(part) as Node, index); });
  for (const node of kept) last.set(same.get(node) as Node, Number.POSITIVE_INFINITY);
  return last;
}

/**
 * Flattens workings.
 *
 * @param outputs the figures wanted, as nodes of one recorded working
 * @param inputs the spec paths that vary
 */
export function tapeOf(outputs: readonly Node[], inputs: readonly string[]): Tape {
  const merged = merge(nodesOf(outputs), inputs);
  const { ordered, same, varied } = merged;
  const last = lastUses(merged, outputs);
  const place = new Map<Node, number>();
  const free: number[] = [];
  let registers = inputs.length;
  const operand = (original: Node): Operand => {
    const node = same.get(original) as Node;
    return varied.has(node) ? { column: place.get(node) as number } : { value: node.value.value.toNumber() };
  };
  const steps: Step[] = [];
  ordered.forEach((node, index) => {
    if (node.kind === 'given') { place.set(node, inputs.indexOf(node.path as string)); return; }
    if (node.kind !== 'computed') return;
    const target = free.pop() ?? registers++;
    steps.push(stepOf(node, node.of.map(operand), target));
    place.set(node, target);
    for (const part of new Set(node.of.map((each) => same.get(each) as Node))) {
      const at = place.get(part);
      if (last.get(part) === index && at !== undefined && at >= inputs.length) free.push(at);
    }
  });
  return { inputs, steps, registers, outputs: outputs.map(operand) };
}

/** Makes sure that there is a column for every register of a tape, the inputs first. Columns are kept for the next tape. */
export function enoughColumns(columns: Float64Array[], tape: Tape, rows: number): readonly Float64Array[] {
  while (columns.length < tape.registers) columns.push(new Float64Array(rows));
  return columns;
}

/** Runs a block whose input columns are filled; figures stand in the operands of `tape.outputs` afterwards. */
export function runBlock(tape: Tape, columns: readonly Float64Array[], rows: number): void {
  for (const step of tape.steps) step.run(columns, rows);
}

export { isVaried };
