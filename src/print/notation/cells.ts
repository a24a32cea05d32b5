/** A working as cells of a spreadsheet: inputs, steps and checks, every step a formula over other cells. */
import type { Check } from '../../ratings/index.js';
import { type Derived, type Node, readOperation, type WorkingLine, workingLines } from '../../trace/index.js';
import { showUnit, type Unit } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { call, type Dialect, type Formula, fixed, formulas, hair, join, type Place } from './cell-formulas.js';
import { plainText } from './plain-text.js';

/** What a cell holds. A formula is written when the dialect is known. */
export type Cell =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'number'; readonly digits: string }
  | { readonly kind: 'formula'; readonly write: (dialect: Dialect) => string };

/** A sheet: its name and its rows. */
export interface Sheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
}

/** What goes into a spreadsheet: figures with their working, and checks. */
export interface SheetContent {
  /** The figures that were asked for; their inputs and steps come with them. */
  readonly figures: readonly Derived<Unit>[];
  /** Checks, each with load, limit, reserve, share used and verdict as formulas. */
  readonly checks?: readonly Check[];
}

const text = (words: string): Cell => ({ kind: 'text', text: plainText(words) });
const heading = (...words: readonly string[]): readonly Cell[] => words.map(text);

/** The cell of each node; a node without a cell is written inside the formula that uses it. */
type Places = ReadonlyMap<Node, Place>;

/** The formula of a node for a cell of `sheet`: a reference where the node has a cell of its own. */
function formulaOf(node: Node, places: Places, sheet: string): Formula {
  const place = places.get(node);
  if (place !== undefined) return (dialect) => dialect.at(place, sheet);
  if (node.kind !== 'computed') return formulas.leaf(node.value.value);
  return stepFormula(node, places, sheet);
}

const stepFormula = (node: Extract<Node, { kind: 'computed' }>, places: Places, sheet: string): Formula =>
  readOperation(
    node,
    node.of.map((part) => formulaOf(part, places, sheet)),
    formulas,
  );

const formula = (write: Formula): Cell => ({ kind: 'formula', write });

function checkRow({ what, load, limit }: Check, places: Places, row: number): readonly Cell[] {
  const cell =
    (column: number): Formula =>
    ({ at }) =>
      at({ sheet: 'checks', row, column }, 'checks');
  const [loadCell, limitCell, reserveCell] = [cell(1), cell(2), cell(3)];
  // A tie is within, and a double may miss it by a hair.
  const within = join('>=', reserveCell, join('*', fixed(`-${hair}`), limitCell));
  return [
    text(what),
    formula(formulaOf(load.why, places, 'checks')),
    formula(formulaOf(limit.why, places, 'checks')),
    formula(join('-', limitCell, loadCell)),
    formula(join('/', loadCell, limitCell)),
    formula(call('IF', within, fixed('"within"'), fixed('"over"'))),
  ];
}

/** One key of a spec is one input, under however many names its figure goes on. */
const keyOf = ({ node }: WorkingLine): unknown =>
  node.kind === 'given' && node.path !== undefined
    ? `${node.path} ${node.value.value.toFixed()} ${node.value.unit}`
    : node;

/** A cell for every line of the working, and the rows of the inputs. */
function placesOf(lines: readonly WorkingLine[]): {
  readonly places: Places;
  readonly inputs: readonly (readonly Cell[])[];
} {
  const places = new Map<Node, Place>();
  const known = new Map<unknown, Place>();
  const inputs: (readonly Cell[])[] = [];
  let steps = 0;
  for (const line of lines) {
    const { node, operation, symbol, unit, from = '' } = line;
    if (operation !== undefined) {
      steps += 1;
      places.set(node, { sheet: 'steps', row: steps, column: 1 });
      continue;
    }
    const place = known.get(keyOf(line)) ?? { sheet: 'inputs', row: inputs.length + 1, column: 1 };
    if (place.row > inputs.length)
      inputs.push([
        text(symbol),
        { kind: 'number', digits: node.value.value.toFixed() },
        text(showUnit(unit)),
        text(from),
      ]);
    known.set(keyOf(line), place);
    places.set(node, place);
  }
  return { places, inputs };
}

/** The sheets of a content: inputs, steps, checks; the last one only where checks were given. */
export function sheetsOf({ figures, checks = [] }: SheetContent): readonly Sheet[] {
  const lines = workingLines(
    [...figures, ...collected(checks, ({ load, limit }) => [load, limit])].map(({ why }) => why),
  );
  const { places, inputs } = placesOf(lines);
  const steps = collected(
    lines,
    ({ symbol, node, unit, formula: words = '', from = '', group }): (readonly Cell[])[] =>
      node.kind === 'computed'
        ? [
            [
              text(symbol),
              formula(stepFormula(node, places, 'steps')),
              text(showUnit(unit)),
              text(words),
              text(group),
              text(from),
            ],
          ]
        : [],
  );
  return [
    { name: 'inputs', rows: [heading('input', 'figure', 'unit', 'from'), ...inputs] },
    { name: 'steps', rows: [heading('step', 'figure', 'unit', 'formula', 'kind', 'source'), ...steps] },
    ...(checks.length === 0
      ? []
      : [
          {
            name: 'checks',
            rows: [
              heading('check', 'load lb', 'limit lb', 'reserve lb', 'share used', 'verdict'),
              ...checks.map((check, i) => checkRow(check, places, i + 1)),
            ],
          },
        ]),
  ];
}
