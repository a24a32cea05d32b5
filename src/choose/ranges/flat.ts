/** Workings laid out in plain arrays, leaves first, for passes in doubles over many answers at once. */
import type { Computed, Given, Node, Operation } from '../../trace/index.js';
import type { Factor } from '../../units/convert.js';
import { doubleOf } from '../../units/figure.js';

/** Every node of some answers that moves with the inputs asked about; all else is a fixed number. */
export interface Flat {
  readonly nodes: readonly Node[];
  readonly indexOf: ReadonlyMap<Node, number>;
  /** The figure as recorded. */
  readonly at: Float64Array;
  /** The input a leaf belongs to, by its number; -1 for all other nodes. */
  readonly input: Int32Array;
  /** The recorded value of each input, by its number. */
  readonly now: readonly (number | undefined)[];
  /** The operation; undefined for a leaf or a step that moves with no input. */
  readonly operation: readonly (Operation | undefined)[];
  /** The parts of a step, by their numbers. */
  readonly parts: readonly Int32Array[];
}

/** The double nearest to the figure of a node. */
export const floatOf = (node: Node): number => doubleOf(node.value);

const noParts = new Int32Array(0);

/**
 * Lays out the workings of some answers.
 *
 * @param roots the answers
 * @param inputOf the number of the input that a leaf belongs to; undefined for a leaf that stays as it is
 */
export function flatten(roots: readonly Node[], inputOf: (leaf: Given) => number | undefined): Flat {
  const indexOf = new Map<Node, number>();
  const nodes: Node[] = [];
  const at: number[] = [];
  const now: (number | undefined)[] = [];
  const input: number[] = [];
  const operation: (Operation | undefined)[] = [];
  const parts: Int32Array[] = [];
  const moves: boolean[] = [];
  const add = (node: Node, of: number, step: Operation | undefined, own: Int32Array, moving: boolean): number => {
    const index = nodes.length;
    indexOf.set(node, index);
    nodes.push(node);
    at.push(floatOf(node));
    input.push(of);
    operation.push(step);
    parts.push(own);
    moves.push(moving);
    return index;
  };
  const step = (node: Computed): number => {
    const own = Int32Array.from(node.of, visit);
    return own.some((part) => moves[part])
      ? add(node, -1, node.operation, own, true)
      : add(node, -1, undefined, noParts, false);
  };
  const visit = (node: Node): number => {
    const known = indexOf.get(node);
    if (known !== undefined) return known;
    if (node.kind === 'computed') return step(node);
    const of = node.kind === 'given' ? inputOf(node) : undefined;
    if (of !== undefined) now[of] = floatOf(node);
    return add(node, of ?? -1, undefined, noParts, of !== undefined);
  };
  for (const root of roots) visit(root);
  return { nodes, indexOf, at: Float64Array.from(at), now, input: Int32Array.from(input), operation, parts };
}

/** The factor of a conversion, as a double. */
export function factorOf(node: Node): number {
  const { times, over } = (node as Computed).factor as Factor;
  return times.toNumber() / over.toNumber();
}
