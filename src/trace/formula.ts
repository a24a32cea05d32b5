/** A step as people write it: `gross weight - axle load`, `12,400 lb - 10,848.42 lb`. */
import { showBrief, showUnit, type Unit } from '../units/index.js';
import type { Computed, Node, Operation } from './node.js';

/** How a figure is written for reading: two decimals, four below one. */
export function figure(node: Node): string {
  const { value } = node;
  return showBrief(value, value.value.abs().lt(1) ? 4 : 2);
}

/** Writes a named part or a leaf: by its name in a formula, by its figure in the line of numbers. */
export type Writer = (node: Node) => string;

export const byName: Writer = (node) => node.symbol ?? figure(node);
export const byFigure: Writer = figure;

/** Where an unnamed step stands: alone between commas, as a term of a sum, or close to an operator that would take its last part. */
type Place = 'alone' | 'term' | 'close';

const trailing = new Set<Operation>(['convert', 'relabel', 'round']);
const bracketed = new Set<Operation>(['least', 'greatest', 'squareRoot']);

function inside(node: Node, write: Writer, place: Place): string {
  if (node.kind !== 'computed' || node.symbol !== undefined) return write(node);
  const text = formula(node, write);
  const needsBrackets = place === 'close' ? !bracketed.has(node.operation) : place === 'term' && trailing.has(node.operation);
  return needsBrackets ? `(${text})` : text;
}

const list = (node: Computed, write: Writer): string => node.of.map((part) => inside(part, write, 'alone')).join(', ');

function rounding({ rounding: how, value }: Computed): string {
  const step = `${how?.step.toFixed()} ${showUnit(value.unit)}`.trimEnd();
  switch (how?.mode) {
    case 'nearest': return `rounded to the nearest ${step}`;
    case 'nearest-down': return `rounded to the nearest ${step}, halves down`;
    default: return `rounded ${how?.mode} to steps of ${step}`;
  }
}

/** `83 in in ft` would stutter. */
const spelled: Partial<Record<Unit, string>> = { in: 'inches', ft: 'feet' };

/** The right-hand side of a step; unnamed steps are written inside. */
export function formula(node: Computed, write: Writer): string {
  const part = (index: number, place: Place = 'close'): string => inside(node.of[index] as Node, write, place);
  switch (node.operation) {
    case 'sum': return node.of.map((term) => inside(term, write, 'term')).join(' + ');
    case 'difference': return `${part(0, 'term')} - ${part(1)}`;
    case 'product': return `${part(0)} x ${part(1)}`;
    case 'quotient': return `${part(0)} / ${part(1)}`;
    case 'least': return `least of (${list(node, write)})`;
    case 'greatest': return `greatest of (${list(node, write)})`;
    case 'convert': return node.value.unit === 'ratio' ? part(0) // a percentage and its share of one are one figure
      : `${part(0)} in ${spelled[node.value.unit] ?? showUnit(node.value.unit)}`;
    case 'relabel': return `${part(0)} as ${node.value.unit}`;
    case 'round': return `${part(0)} ${rounding(node)}`;
    case 'squareRoot': return `square root of (${part(0, 'alone')})`;
    case 'power': return `${part(0)} ^ ${part(1)}`;
    case 'sine': return `sin ${part(0)}`;
    case 'tangent': return `tan ${part(0)}`;
    case 'arcSine': return `arcsin ${part(0)}`;
    case 'arcTangent': return `arctan ${part(0)}`;
  }
}
