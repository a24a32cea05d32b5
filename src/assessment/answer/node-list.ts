/** A working as a list: every node once, operands before the steps that use them. */
import type { Computed, Node, Source } from '../../trace/index.js';
import type { Quantity, Unit } from '../../units/index.js';
import { boundOf, doubleOf, own } from '../../units/internal.js';
import type { AnswerNode, AnswerWorking, ComputedNode, FigureText } from './node-shape.js';

/** Collects the nodes of workings into one list and gives the index of each. */
export interface NodeList {
  /** The place of a node, written out with everything below it when it was not yet. */
  placeOf(node: Node): number;
  readonly working: AnswerWorking;
}

/** Plain digits. A whole number whose double is exact has those of the double: its decimal need not be worked out. */
function digitsOf(figure: Quantity<Unit>): string {
  const double = doubleOf(figure);
  return boundOf(figure) === 0 && Number.isSafeInteger(double) ? String(double) : figure.value.toFixed();
}

/** Digits, a blank, the unit; a plain number has no unit. */
export const figureText = (figure: Quantity<Unit>): FigureText =>
  figure.unit === 'ratio' ? digitsOf(figure) : `${digitsOf(figure)} ${figure.unit}`;

type Writable<A> = { -readonly [K in keyof A]: A[K] };

/** Keys are written in order, as the checksum reads them. */
function computed(node: Computed, of: readonly number[], source: number | undefined): ComputedNode {
  const { basis, symbol, rounding } = node;
  const written = { basis, figure: figureText(node.value), is: node.operation } as Writable<ComputedNode>;
  if (symbol !== undefined) written.name = symbol;
  written.of = of;
  if (rounding !== undefined) written.rounding = { mode: rounding.mode, step: rounding.step.toFixed() };
  if (source !== undefined) written.source = source;
  return written;
}

function leaf(node: Exclude<Node, Computed>, source: number | undefined): AnswerNode {
  const { basis, symbol } = node;
  const figure = figureText(node.value);
  switch (node.kind) {
    case 'given':
      return {
        basis,
        figure,
        is: 'given',
        name: node.symbol,
        ...(node.path !== undefined && { path: node.path }),
      };
    case 'looked up':
      return {
        basis,
        figure,
        is: 'looked up',
        key: node.key,
        name: node.symbol,
        source: source as number,
        table: node.table,
      };
    case 'constant':
      return {
        figure,
        is: 'constant',
        ...(symbol !== undefined && { name: symbol }),
        ...(source !== undefined && { source }),
      };
  }
}

const plainSource = (source: Source): Source => {
  const { id, title, grade } = source;
  const [address, clause, edition, note] = (['address', 'clause', 'edition', 'note'] as const).map((key) =>
    own(source, key),
  );
  return {
    ...(address !== undefined && { address }),
    ...(clause !== undefined && { clause }),
    ...(edition !== undefined && { edition }),
    grade,
    id,
    ...(note !== undefined && { note }),
    title,
  };
};

export function nodeList(): NodeList {
  const nodes: AnswerNode[] = [];
  const sources: Source[] = [];
  const places = new Map<Node, number>();
  const sourcePlaces = new Map<string, number>();
  const leafPlaces = new Map<string, number>();
  const placeOfSource = (source: Source | undefined): number | undefined => {
    if (source === undefined) return undefined;
    const key = `${source.id}|${own(source, 'clause') ?? ''}|${source.title}`;
    const found = sourcePlaces.get(key);
    if (found !== undefined) return found;
    sourcePlaces.set(key, sources.push(plainSource(source)) - 1);
    return sources.length - 1;
  };
  const placeOfLeaf = (node: Exclude<Node, Computed>, source: number | undefined): number => {
    const written = leaf(node, source);
    const key = JSON.stringify(written);
    const place = leafPlaces.get(key) ?? nodes.push(written) - 1;
    leafPlaces.set(key, place);
    return place;
  };
  const placeOf = (node: Node): number => {
    const found = places.get(node);
    if (found !== undefined) return found;
    const source = placeOfSource(node.kind === 'given' ? undefined : node.source);
    const place =
      node.kind === 'computed'
        ? nodes.push(computed(node, node.of.map(placeOf), source)) - 1
        : placeOfLeaf(node, source);
    places.set(node, place);
    return place;
  };
  return { placeOf, working: { nodes, sources } };
}
