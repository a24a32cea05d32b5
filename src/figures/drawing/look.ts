/** The one look of all figures: named colours that a host can replace, and a pattern for every state. */
import { element } from './element.js';

/** Light and dark; contrast at least 4.5 for text and 3 for shapes. */
const tokens = {
  ink: ['#1c2126', '#e9e7e1'],
  paper: ['#fbfaf6', '#16191c'],
  hairline: ['#8b9096', '#6c7278'],
  steel: ['#66717c', '#98a3ad'],
  timber: ['#b68a58', '#c79b68'],
  load: ['#3577b0', '#5f9ccf'],
  room: ['#dbe4ec', '#2a3641'],
  over: ['#74190b', '#f4b0a2'],
  attention: ['#8f6c00', '#d8b34a'],
} as const satisfies Readonly<Record<string, readonly [light: string, dark: string]>>;

export type Token = keyof typeof tokens;

/** A colour: the host's custom property `--trailer-load` where it sets one, else the light one. */
export const paint = (token: Exclude<Token, 'ink'>): string => `var(--trailer-${token}, ${tokens[token][0]})`;

/** Text and outlines are of the colour of the text around the figure. */
export const ink = 'currentColor';

const properties = (which: 0 | 1): string =>
  Object.entries(tokens)
    .map(([name, shades]) => `--trailer-${name}:${shades[which]}`)
    .join(';');

/** Style rules that give the custom properties in light and dark under a selector. */
export const styleRules = (selector: string): string =>
  `${selector}{color:${tokens.ink[0]};${properties(0)}}@media (prefers-color-scheme:dark){${selector}{color:${tokens.ink[1]};${properties(1)}}}`;

/**
 * What does a page put into its style sheet so that figures follow light and dark?
 *
 * Custom properties of the root, `--trailer-ink`, `--trailer-paper`, `--trailer-hairline`, `--trailer-steel`, `--trailer-timber`,
 * `--trailer-load`, `--trailer-room`, `--trailer-over`, `--trailer-attention`, and the colour of its text. A page that sets its own needs none of it.
 *
 * @example figureStyles.startsWith(':root{color:#1c2126') // true
 * @source common practice, no source
 */
export const figureStyles: string = styleRules(':root');

/** The patterns of a figure, under its own prefix: over is cross-hatched, attention dotted. */
export const patterns = (prefix: string): string =>
  element(
    'defs',
    {},
    element(
      'pattern',
      { id: `${prefix}-over`, width: 6, height: 6, patternUnits: 'userSpaceOnUse' },
      element('path', { d: 'M0 0L6 6M6 0L0 6', stroke: paint('over'), 'stroke-width': '1.4', fill: 'none' }),
    ),
    element(
      'pattern',
      { id: `${prefix}-attention`, width: 6, height: 6, patternUnits: 'userSpaceOnUse' },
      element('circle', { cx: 3, cy: 3, r: '1.6', fill: paint('attention') }),
    ),
  );

/** Reference to a pattern of `patterns`. */
export const pattern = (prefix: string, state: 'over' | 'attention'): string => `url(#${prefix}-${state})`;
