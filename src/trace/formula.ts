/** A step as people write it: `gross weight - axle load`, `12,400 lb - 10,848.42 lb`. */
import { showBrief, showUnit } from '../units/index.js';
import type { Computed, Node } from './node.js';

/** How a figure is written for reading: two decimals, four below one. */
export function figure(node: Node): string {
  const { value } = node;
  return showBrief(value, value.value.abs().lt(1) ? 4 : 2);
}

/** Writes a named part or a leaf: by its name in a formula, by its figure in the line of numbers. */
export type Writer = (node: Node) => string;

export const byName: Writer = (node) => node.symbol ?? figure(node);
export const byFigure: Writer = figure;

const loose = new Set(['sum', 'difference']);

function inside(node: Node, write: Writer, tight: boolean): string {
  if (node.kind !== 'computed' || node.symbol !== undefined) return write(node);
  const text = formula(node, write);
  return tight && (loose.has(node.operation) || (node.operation === 'product' || node.operation === 'quotient')) ? `(${text})` : text;
}

const list = (node: Computed, write: Writer): string => node.of.map((part) => inside(part, write, false)).join(', ');

/** The right-hand side of a step; unnamed steps are written inside. */
export function formula(node: Computed, write: Writer): string {
  const part = (index: number, tight: boolean): string => inside(node.of[index] as Node, write, tight);
  switch (node.operation) {
    case 'sum': return node.of.map((term) => inside(term, write, false)).join(' + ');
    case 'difference': return `${part(0, false)} - ${part(1, true)}`;
    case 'product': return `${part(0, true)} x ${part(1, true)}`;
    case 'quotient': return `${part(0, true)} / ${part(1, true)}`;
    case 'least': return `least of (${list(node, write)})`;
    case 'greatest': return `greatest of (${list(node, write)})`;
    case 'convert': return `${part(0, true)} in ${showUnit(node.value.unit) || 'plain number'}`;
    case 'relabel': return `${part(0, true)} as ${node.value.unit}`;
    case 'round': return `${part(0, true)} rounded ${node.rounding?.mode === 'nearest-down' ? 'to nearest' : node.rounding?.mode} to ${node.rounding?.step.toFixed()}`;
    case 'squareRoot': return `square root of (${part(0, false)})`;
    case 'power': return `${part(0, true)} ^ ${part(1, true)}`;
    case 'sine': return `sin ${part(0, true)}`;
    case 'tangent': return `tan ${part(0, true)}`;
    case 'arcSine': return `arcsin ${part(0, true)}`;
    case 'arcTangent': return `arctan ${part(0, true)}`;
  }
}
