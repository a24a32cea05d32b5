/** How the figures of an answer are rounded: once, at the edge, capacities down and loads up. */
import type { Derived } from '../../trace/index.js';
import {
  convert,
  type Quantity,
  quantity,
  roundCapacityDown,
  roundLoadUp,
  roundNearest,
  type Unit,
} from '../../units/index.js';
import { roundLoadAway } from '../../units/internal.js';
import { figureText } from './node-list.js';
import type { FigureText } from './node-shape.js';

/** Weights and forces to the whole pound or kilogram, everything else to a hundredth. */
export const edgeStep = (unit: string): '1' | '0.01' => (['lb', 'kg', 'lbf', 'N', 'mm'].includes(unit) ? '1' : '0.01');

/** The step of a share, in percent. */
export const shareStep = '0.1';

const stepOf = (figure: Quantity<Unit>): Quantity<Unit> => quantity(edgeStep(figure.unit), figure.unit);
const inPercent = (share: Quantity<'ratio'>): Quantity<'%'> => convert(share, '%');

/** A load, rounded up; one that lifts, away from zero. */
export const loadText = ({ value }: Derived<Unit>): FigureText => figureText(roundLoadAway(value, stepOf(value)));
/** A rating, a reserve, a payload, rounded down. */
export const capacityText = ({ value }: Derived<Unit>): FigureText =>
  figureText(roundCapacityDown(value, stepOf(value)));
/** A figure that is neither. */
export const nearestText = ({ value }: Derived<Unit>): FigureText => figureText(roundNearest(value, stepOf(value)));
/** The share of a rating that is used, in percent, rounded up. */
export const usedText = ({ value }: Derived<'ratio'>): FigureText =>
  figureText(roundLoadUp(inPercent(value), quantity(shareStep, '%')));
/** A share of the tongue band, in percent. */
export const shareText = ({ value }: Derived<'ratio'>): FigureText =>
  figureText(roundNearest(inPercent(value), quantity(shareStep, '%')));
