/** Is a working linear in one input, and if so, which line? Exact decimals; anything else is said not to be linear. */
import { Decimal, zero } from '../units/internal.js';
import { decimalReading, type Node, readOperation } from '../trace/index.js';

/** `at + slope x input`. */
export interface Line {
  readonly at: Decimal;
  readonly slope: Decimal;
}

const fixed = (line: Line): boolean => line.slope.isZero();

function combine(node: Extract<Node, { kind: 'computed' }>, parts: readonly Line[]): Line | undefined {
  if (parts.every(fixed)) return { at: readOperation(node, parts.map(({ at }) => at), decimalReading), slope: zero };
  const [a, b] = parts as readonly [Line, Line];
  switch (node.operation) {
    case 'sum': return parts.reduce((total, { at, slope }) => ({ at: total.at.plus(at), slope: total.slope.plus(slope) }));
    case 'difference': return { at: a.at.minus(b.at), slope: a.slope.minus(b.slope) };
    case 'product': {
      if (fixed(a)) return { at: a.at.times(b.at), slope: a.at.times(b.slope) };
      return fixed(b) ? { at: a.at.times(b.at), slope: a.slope.times(b.at) } : undefined;
    }
    case 'quotient': return fixed(b) ? { at: a.at.div(b.at), slope: a.slope.div(b.at) } : undefined;
    case 'convert': {
      const { times, over } = node.factor as NonNullable<typeof node.factor>;
      return { at: a.at.times(times).div(over), slope: a.slope.times(times).div(over) };
    }
    case 'relabel': return a;
    default: return undefined;
  }
}

/** The line of a working in the input at `path`, or nothing when it is not linear in it. */
export function lineOf(root: Node, path: string): Line | undefined {
  const memo = new Map<Node, Line | undefined>();
  const read = (node: Node): Line | undefined => {
    if (memo.has(node)) return memo.get(node);
    let line: Line | undefined;
    if (node.kind !== 'computed') {
      const own = node.kind === 'given' && node.path === path;
      line = own ? { at: zero, slope: new Decimal(1) } : { at: node.value.value, slope: zero };
    } else {
      const parts = node.of.map(read);
      line = parts.some((part) => part === undefined) ? undefined : combine(node, parts as readonly Line[]);
    }
    memo.set(node, line);
    return line;
  };
  return read(root);
}
