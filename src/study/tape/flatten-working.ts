/** From nodes to a tape: forms of nodes, columns of forms, steps in the order in which they may run. */
import type { Computed, Decision, Node } from '../../trace/index.js';
import { doubleOf } from '../../units/internal.js';
import { bandOf, type DecisionBound, interiorOf, onColumn } from './bounds.js';
import { columnForm, type Form, formKey, gapOf, isFixed, linearStep, numberForm } from './linear-forms.js';
import { linearRuns, type Target } from './loops/linear-runs.js';
import { type Argument, type Operand, runsOf, type Step } from './steps.js';

/** A form of more columns than this becomes a column of its own before anything else is made of it. */
const mostTerms = 3;

/** Builds the parts of a tape. */
export class Flattening {
  readonly steps: Step[] = [];
  registers: number;
  private readonly forms = new Map<Node, Form>();
  private readonly columns = new Map<string, number>();
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
    if (isFixed(form)) return { value: form.at.toNumber() };
    const [[column, times] = [this.columnOf(form), undefined], ...others] = form.terms;
    return times === undefined || others.length > 0
      ? { column: this.columnOf(form), times: 1, plus: 0 }
      : { column, times: times.toNumber(), plus: form.at.toNumber() };
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

  private placed(form: Form): { readonly sources: readonly number[]; readonly target: Target } {
    const terms = [...form.terms].sort(([a], [b]) => a - b);
    const column = this.registers++;
    this.columns.set(formKey(form), column);
    return {
      sources: terms.map(([source]) => source),
      target: { column, times: terms.map(([, times]) => times.toNumber()), plus: form.at.toNumber() },
    };
  }

  /** The bound of a decision on a column: on the only column of its sides, or on the column of their difference. */
  bound(decision: Decision, turn: number): readonly DecisionBound[] {
    if (!this.varies(decision.left) && !this.varies(decision.right)) return [];
    const [left, right] = [this.formOf(decision.left), this.formOf(decision.right)];
    const gap = gapOf(left, right);
    const argument = isFixed(gap) ? undefined : this.argument(gap);
    if (argument === undefined || !('column' in argument)) return [];
    const band = bandOf(
      Math.abs(left.at.toNumber()) +
        Math.abs(right.at.toNumber()) +
        Math.abs(doubleOf(decision.left.value)) +
        Math.abs(doubleOf(decision.right.value)),
    );
    const { column, times, plus } = argument;
    return [{ ...onColumn(interiorOf(decision, band), column, times, plus), decision, turn, times, plus, band }];
  }

  /** The operands of the outputs; outputs of the same columns run together, last. */
  outputs(nodes: readonly Node[]): readonly Operand[] {
    const groups = new Map<string, { sources: readonly number[]; targets: Target[] }>();
    const operands = nodes.map((node): Operand => {
      const form = this.formOf(node);
      if (isFixed(form)) return { value: form.at.toNumber() };
      const plain = this.plainColumn(form);
      if (plain !== undefined) return { column: plain };
      const { sources, target } = this.placed(form);
      const key = sources.join();
      const group = groups.get(key) ?? { sources, targets: [] };
      group.targets.push(target);
      groups.set(key, group);
      return { column: target.column };
    });
    for (const { sources, targets } of groups.values())
      for (const run of linearRuns(sources, targets)) this.steps.push({ run });
    return operands;
  }
}
