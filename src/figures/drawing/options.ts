/** What every figure is asked with, and the frame around its body. */
import { box, element } from './element.js';
import { escaped, safeId } from './escape.js';
import { paint, patterns, styleRules } from './look.js';

/** The units a reader wants: feet, inches and pounds, or metres and kilograms. Figures of a table keep their own. */
export type FigureUnits = 'us' | 'metric';

export interface FigureOptions {
  /** Units of the figures in print; `us` by default. */
  readonly units?: FigureUnits;
  /** What the ids in the figure begin with: another one for each figure of a page. */
  readonly idPrefix?: string;
  /** Width of the viewBox, in pixels: 640 by default, 320 at least. Below 480 labels move under what they name. */
  readonly width?: number;
  /** True for a file of its own: ground, light and dark come with it. Left out, the figure takes colours from the page around it. */
  readonly standalone?: boolean;
}

/** The options with every default filled in. */
export interface Setting {
  readonly units: FigureUnits;
  readonly prefix: string;
  readonly width: number;
  readonly narrow: boolean;
  readonly standalone: boolean;
}

export function settingOf(options: FigureOptions, kind: string): Setting {
  const asked = options.width ?? 640;
  const width = Number.isFinite(asked) ? Math.min(2000, Math.max(320, asked)) : 640;
  return {
    units: options.units ?? 'us',
    prefix: safeId(options.idPrefix ?? kind),
    width,
    narrow: width < 480,
    standalone: options.standalone === true,
  };
}

/** The body of a figure and how high it is. */
export interface Body {
  readonly title: string;
  readonly description: string;
  readonly height: number;
  readonly parts: readonly string[];
}

/** The whole SVG: title and description first, viewBox only, text in the system's sans serif with tabular figures. */
export function framed({ prefix, width, standalone }: Setting, { title, description, height, parts }: Body): string {
  const tall = Math.ceil(height);
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      id: `${prefix}-figure`,
      viewBox: `0 0 ${Math.round(width)} ${tall}`,
      role: 'img',
      'aria-labelledby': `${prefix}-title ${prefix}-desc`,
      'font-family': 'system-ui, sans-serif',
      'font-size': '12',
      'font-variant': 'tabular-nums',
      fill: 'currentColor',
    },
    element('title', { id: `${prefix}-title` }, escaped(title)),
    element('desc', { id: `${prefix}-desc` }, escaped(description)),
    ...(standalone ? [`<style>${styleRules(`#${prefix}-figure`)}</style>`] : []),
    patterns(prefix),
    ...(standalone ? [box(0, 0, width, tall, { fill: paint('paper') })] : []),
    ...parts.filter((part) => part !== ''),
  );
}
