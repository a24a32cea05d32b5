/** Which figures of a working depend on what a study varies. */
import type { Node } from '../../trace/index.js';

/** Whether a node depends on one of these inputs; each node is looked at once. */
export function variesWith(inputs: readonly string[]): (node: Node) => boolean {
  const paths = new Set(inputs);
  const known = new Map<Node, boolean>();
  const varies = (node: Node): boolean => {
    if (node.kind !== 'computed') return node.kind === 'given' && node.path !== undefined && paths.has(node.path);
    const found = known.get(node);
    if (found !== undefined) return found;
    const made = node.of.some(varies);
    known.set(node, made);
    return made;
  };
  return varies;
}
