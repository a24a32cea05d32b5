/**
 * A working flattened to a tape: the same operations in the same order, read in Float64 over blocks of rows.
 *
 * What does not depend on a varied input is folded to a number. No code is generated; each operation is a plain loop.
 * Decimals never run through these loops, and numbers never through theirs.
 */
import type { Decision, Node } from '../trace/index.js';
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

/** Which nodes depend on a varied leaf. */
function variedNodes(ordered: readonly Node[], inputs: readonly string[]): ReadonlySet<Node> {
  const varied = new Set<Node>();
  for (const node of ordered) {
    const depends = node.kind === 'computed' ? node.of.some((part) => varied.has(part)) : node.kind === 'given' && node.path !== undefined && inputs.includes(node.path);
    if (depends) varied.add(node);
  }
  return varied;
}

/** The last step that reads each node, so that its column can be used again. */
function lastUses(ordered: readonly Node[], kept: ReadonlySet<Node>): ReadonlyMap<Node, number> {
  const last = new Map<Node, number>();
  ordered.forEach((node, index) => { if (node.kind === 'computed') for (const part of node.of) last.set(part, index); });
  for (const node of kept) last.set(node, Number.POSITIVE_INFINITY);
  return last;
}

/**
 * Flattens workings.
 *
 * @param outputs the figures wanted, as nodes of one recorded working
 * @param inputs the spec paths that vary
 */
export function tapeOf(outputs: readonly Node[], inputs: readonly string[]): Tape {
  const all = nodesOf(outputs);
  const varied = variedNodes(all, inputs);
  const ordered = all.filter((node) => varied.has(node));
  const last = lastUses(ordered, new Set(outputs));
  const place = new Map<Node, number>();
  const free: number[] = [];
  let registers = inputs.length;
  const operand = (node: Node): Operand => (varied.has(node) ? { column: place.get(node) as number } : { value: node.value.value.toNumber() });
  const steps: Step[] = [];
  ordered.forEach((node, index) => {
    if (node.kind === 'given') { place.set(node, inputs.indexOf(node.path as string)); return; }
    if (node.kind !== 'computed') return;
    const args = node.of.map(operand);
    const target = free.pop() ?? registers++;
    steps.push(stepOf(node, args, target));
    place.set(node, target);
    for (const part of new Set(node.of)) {
      const at = place.get(part);
      if (last.get(part) === index && at !== undefined && at >= inputs.length) free.push(at);
    }
  });
  return { inputs, steps, registers, outputs: outputs.map(operand) };
}

/** Columns for one block, the inputs first. */
export const columnsFor = (tape: Tape): Float64Array[] => Array.from({ length: tape.registers }, () => new Float64Array(blockRows));

/** Runs a block whose input columns are filled; figures stand in the operands of `tape.outputs` afterwards. */
export function runBlock(tape: Tape, columns: readonly Float64Array[], rows: number): void {
  for (const step of tape.steps) step.run(columns, rows);
}

/** The two sides of decisions, as figures a tape can carry. */
export const decisionNodes = (decisions: readonly Decision[]): readonly Node[] => decisions.flatMap(({ left, right }) => [left, right]);

export { isVaried };
