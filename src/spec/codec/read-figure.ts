/** What a person or a program wrote for a figure, and what it says: text, a wire record, or a `Quantity`. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Basis, bases, isBasis } from '../../trace/index.js';
import {
  type Dimension,
  dimensionOf,
  isUnit,
  parseAny,
  parseMeasure,
  parseQuantity,
  type Quantity,
  quantity,
  show,
  type Unit,
  type UnitOf,
  wireQuantity,
} from '../../units/index.js';
import { neededToRead } from '../../units/internal.js';
import type { FaultTag } from '../errors.js';
import { isRecord, own } from './fault.js';
import { writtenFigure } from './needed.js';

/** A figure and what somebody says it rests on. */
export interface Said {
  readonly figure: unknown;
  readonly basis: Basis | undefined;
}

/** What is wrong with a figure, and what to write. */
export interface Wrong {
  readonly fault: FaultTag;
  readonly needed: string;
}

export const isWrong = (found: object): found is Wrong => Object.hasOwn(found, 'fault');

/** Whether this is a figure that a program made: of any unit. */
export const isQuantity = (input: unknown): input is Quantity<Unit> =>
  isRecord(input) &&
  typeof input['unit'] === 'string' &&
  isUnit(input['unit']) &&
  typeof input['value'] !== 'string' &&
  wireQuantity(dimensionOf(input['unit'])).is(input);

/** Takes the basis off a record, leaving the text or the wire record. */
export function said(input: unknown): Said | Wrong {
  if (!isRecord(input) || isQuantity(input)) return { figure: input, basis: undefined };
  const [text, basis] = [own(input, 'text'), own(input, 'basis')];
  const others = Object.entries(input).filter(([key]) => key !== 'text' && key !== 'basis');
  if (text !== undefined && others[0] !== undefined) {
    const stray = others[0][0].slice(0, 40);
    return { fault: 'unknown key', needed: `a known key: text, basis (there is "${stray}")` };
  }
  if (basis !== undefined && (typeof basis !== 'string' || !isBasis(basis)))
    return { fault: 'wrong kind', needed: `a basis: one of ${bases.join(', ')}` };
  return { figure: text === undefined ? Object.fromEntries(others) : text, basis };
}

const bareNumber = /^-?[\d,.\s]+$/;

/** The unit that people would have written behind a bare number. */
const usualUnits: Readonly<Record<Dimension, Unit> | Partial<Record<Dimension, Unit>>> = {
  mass: 'lb',
  length: 'in',
  pressure: 'psi',
  ratio: '%',
  angle: 'deg',
  'weight per length': 'lb/in',
  'weight per area': 'lb/ft2',
  density: 'lb/ft3',
};

/** The same digits with the usual unit: `"9,990 lb"` for `9990`. */
function withUnit(digits: string, dimension: Dimension): Wrong {
  const unit = usualUnits[dimension] ?? 'lb';
  const read = parseAny(`${digits.trim()} ${unit}`);
  const example = isLeft(read) ? writtenFigure(dimension) : `the unit, e.g. "${show(read.right)}"`;
  return { fault: isLeft(read) ? 'unreadable' : 'no unit', needed: example };
}

function fromText<D extends Dimension>(text: string, dimension: D): Quantity<UnitOf<D>> | Wrong {
  const parsed = parseMeasure(text, dimension);
  if (!isLeft(parsed)) return parsed.right;
  if (bareNumber.test(text)) return withUnit(text, dimension);
  return { fault: 'unreadable', needed: neededToRead(parsed.left) };
}

function fromWire<D extends Dimension>(
  record: Readonly<Record<string, unknown>>,
  dimension: D,
): Quantity<UnitOf<D>> | Wrong {
  const [value, unit] = [own(record, 'value'), own(record, 'unit')];
  if (typeof value !== 'string' || typeof unit !== 'string')
    return { fault: 'wrong kind', needed: 'digits as text and the name of a unit' };
  if (!isUnit(unit)) return { fault: 'unreadable', needed: `a unit of ${dimension}` };
  const parsed = parseQuantity(unit === 'ratio' ? value : `${value} ${unit}`, unit);
  if (isLeft(parsed)) return { fault: 'unreadable', needed: neededToRead(parsed.left) };
  return fromAnyUnit(parsed.right, dimension);
}

function fromAnyUnit<D extends Dimension>(figure: Quantity<Unit>, dimension: D): Quantity<UnitOf<D>> | Wrong {
  return dimensionOf(figure.unit) === dimension
    ? (figure as Quantity<UnitOf<D>>)
    : {
        fault: 'unreadable',
        needed: `a figure of ${dimension}: ${figure.unit} is a unit of ${dimensionOf(figure.unit)}`,
      };
}

/** The figure that somebody wrote. */
export function readFigure<D extends Dimension>(input: unknown, dimension: D): Quantity<UnitOf<D>> | Wrong {
  if (typeof input === 'string') return fromText(input, dimension);
  if (isQuantity(input)) return fromAnyUnit(quantity(input.value, input.unit), dimension);
  if (isRecord(input) && Object.keys(input).sort().join() === 'unit,value') return fromWire(input, dimension);
  if (typeof input === 'number') return withUnit(String(input), dimension);
  return { fault: 'wrong kind', needed: `${writtenFigure(dimension)}: ${dimension}` };
}
