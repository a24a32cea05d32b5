/** From nodes to a tape: forms of nodes, columns of forms, steps in the order in which they may run. */
import type { Computed, Decision, Node } from '../../trace/index.js';
import { doubleOf } from '../../units/internal.js';
import { bandOf, type DecisionBound, interiorOf, onColumn } from './bounds.js';
import { columnForm, type Form, formKey, gapOf, inDoubles, isFixed, linearStep, numberForm } from './linear-forms.js';
import { linearRuns, type Placed, runsBySources } from './loops/linear-runs.js';
import type { Scaled } from './loops/step-loops.js';
import { type Argument, type Operand, runsOf, type Step } from './steps.js';

/** A form of more columns than this becomes a column of its own before anything else is made of it. */
const mostTerms = 3;

/** Builds the parts of a tape. */
export class Flattening {
  readonly steps: Step[] = [];
  registers: number;
  private readonly forms = new Map<Node, Form>();
  private readonly columns = new Map<string, number>();
  private readonly directions = new Map<
    string,
    { readonly column: number; readonly at: number; readonly first: number }
  >();
  private readonly made = new Map<string, number>();

  constructor(
    private readonly inputs: readonly string[],
    private readonly varies: (node: Node) => boolean,
  ) {
    this.registers = inputs.length;
  }

  formOf(node: Node): Form {
    if (!this.varies(node)) return numberForm(node.value.value);
    const found = this.forms.get(node);
    if (found !== undefined) return found;
    const form = node.kind === 'computed' ? this.stepForm(node) : this.leafForm(node);
    const kept = form.terms.size > mostTerms ? columnForm(this.columnOf(form)) : form;
    this.forms.set(node, kept);
    return kept;
  }

  private leafForm(node: Node): Form {
    const input = node.kind === 'given' && node.path !== undefined ? this.inputs.indexOf(node.path) : -1;
    return input >= 0 ? columnForm(input) : numberForm(node.value.value);
  }

  private stepForm(node: Computed): Form {
    const parts = node.of.map((part) => this.formOf(part));
    if (parts.every(isFixed)) return numberForm(node.value.value);
    const linear = linearStep(node, parts);
    if (linear !== undefined) return linear;
    const { rounding } = node;
    const key = `${node.operation} ${rounding?.mode} ${rounding?.step.toString()} (${parts.map(formKey).join('; ')})`;
    const twin = this.made.get(key);
    if (twin !== undefined) return columnForm(twin);
    const args = parts.map((part) => this.argument(part));
    const target = this.registers++;
    for (const run of runsOf(node, args, target)) this.steps.push({ run });
    this.made.set(key, target);
    return columnForm(target);
  }

  private argument(form: Form): Argument {
    if (isFixed(form)) return { value: inDoubles(form).at };
    return this.twinOf(form) ?? { column: this.columnOf(form), times: 1, plus: 0 };
  }

  /** A form as a straight line of a column that there is: of its only column, or of one of the same direction. */
  private twinOf(form: Form): Scaled | undefined {
    const { at, columns, times, direction } = inDoubles(form);
    const [column, factor = 1] = [columns[0], times[0]];
    if (column === undefined) return undefined;
    if (columns.length === 1) return { column, times: factor, plus: at };
    const twin = this.directions.get(direction);
    if (twin === undefined) return undefined;
    const scale = factor / twin.first;
    return { column: twin.column, times: scale, plus: at - twin.at * scale };
  }

  /** The straight line of a column that a figure is; none for one that does not vary. */
  lineOf(node: Node): Scaled | undefined {
    const form = this.formOf(node);
    return isFixed(form) ? undefined : this.twinOf(form);
  }

  /** The column of a form, run at once: for what later steps need. */
  private columnOf(form: Form): number {
    const plain = this.plainColumn(form);
    if (plain !== undefined) return plain;
    const { sources, target } = this.placed(form);
    for (const run of linearRuns(sources, [target])) this.steps.push({ run });
    return target.column;
  }

  private plainColumn({ at, terms }: Form): number | undefined {
    const [[column, times] = [0, undefined]] = terms;
    return terms.size === 1 && at.isZero() && times?.eq(1) === true ? column : this.columns.get(formKey({ at, terms }));
  }

  private placed(form: Form): Placed {
    const { at, columns, times, direction } = inDoubles(form);
    const column = this.registers++;
    this.columns.set(formKey(form), column);
    if (times.length > 1 && !this.directions.has(direction))
      this.directions.set(direction, { column, at, first: times[0] as number });
    return { sources: columns, target: { column, times, plus: at } };
  }

  /** The bounds of decisions on columns: on the only column of its sides, or on the column of their difference. Decisions told twice count once. */
  bounds(decisions: readonly Decision[]): readonly DecisionBound[] {
    const told = new Set<string>();
    const asked = decisions.flatMap((decision, turn) => {
      const { left, right, comparison } = decision;
      if (!this.varies(left) && !this.varies(right)) return [];
      const [a, b] = [this.formOf(left), this.formOf(right)];
      const gap = gapOf(a, b);
      const key = `${comparison} ${formKey(gap)}`;
      if (isFixed(gap) || told.has(key)) return [];
      told.add(key);
      const sides = Math.abs(inDoubles(a).at) + Math.abs(inDoubles(b).at);
      const band = bandOf(sides + Math.abs(doubleOf(left.value)) + Math.abs(doubleOf(right.value)));
      return [{ decision, turn, gap, band }];
    });
    this.place(asked.flatMap(({ gap }) => (this.twinOf(gap) === undefined ? [gap] : [])));
    return asked.flatMap(({ decision, turn, gap, band }) => {
      const line = this.twinOf(gap);
      return line === undefined
        ? []
        : [{ ...onColumn(interiorOf(decision, band), line), ...line, decision, turn, band }];
    });
  }

  /** Columns for forms that have none; those of the same columns run together. */
  private place(forms: readonly Form[]): void {
    const placed = forms.flatMap((form) => (this.plainColumn(form) === undefined ? [this.placed(form)] : []));
    for (const run of runsBySources(placed)) this.steps.push({ run });
  }

  /** The operands of the outputs; outputs of the same columns run together, last. */
  outputs(nodes: readonly Node[]): readonly Operand[] {
    const forms = nodes.map((node) => this.formOf(node));
    this.place(forms.filter((form) => !isFixed(form)));
    return forms.map((form) => {
      const column = this.plainColumn(form);
      return column === undefined ? { value: inDoubles(form).at } : { column };
    });
  }
}
