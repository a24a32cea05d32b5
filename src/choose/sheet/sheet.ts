/** A sheet as it is printed: figures, and what each was rounded to. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { convert, parseMeasure, type Quantity, type Unit } from '../../units/index.js';
import type { ChooseError } from '../errors.js';

/** A figure as printed, `"14,000 lb"`; or with what it was rounded to, `{ text: "10,350 lb", rounding: "50 lb" }`. */
export type PrintedFigure = string | { readonly text: string; readonly rounding: string };

/** What a maker's sheet prints. All but `tires.count` may be left out. */
export interface Sheet {
  /** Gross vehicle weight rating. */
  readonly gvwr?: PrintedFigure;
  /** Weight of the empty trailer. */
  readonly emptyWeight?: PrintedFigure;
  /** Payload: GVWR less the empty weight. */
  readonly payload?: PrintedFigure;
  /** The rating of each axle, from the front. */
  readonly axles?: readonly PrintedFigure[];
  /** The rating of all axles together, when the sheet prints it. */
  readonly axleCapacity?: PrintedFigure;
  /** The tires, alike on all axles: what each carries, and how many there are on one axle. */
  readonly tires?: { readonly each: PrintedFigure; readonly count: number };
  /** What all tires carry together, when the sheet prints it. */
  readonly tireCapacity?: PrintedFigure;
  /** Gross rating of the coupler. */
  readonly coupler?: PrintedFigure;
  /** Greatest share of the gross weight that the maker allows on the tongue, in percent; 15 % by default. */
  readonly tongueShareMost?: string;
  /** Overall length, coupler to tail. */
  readonly overallLength?: PrintedFigure;
  /** Length of the tongue, coupler to the front of the deck. */
  readonly tongueLength?: PrintedFigure;
  /** Length of the deck, dovetail included. */
  readonly deckLength?: PrintedFigure;
  /** Length of the flat part of the deck. */
  readonly flatLength?: PrintedFigure;
  /** Length of the dovetail, along the deck. */
  readonly dovetailLength?: PrintedFigure;
  /** Over everything, fenders too; marker lamps are left out. */
  readonly overallWidth?: PrintedFigure;
  /** Width of the deck. */
  readonly deckWidth?: PrintedFigure;
}

/** A figure that was read: its name, its path, and the ends between which the true figure lies. */
export interface ReadFigure {
  /** Its key on the sheet: `axles.0`. */
  readonly path: string;
  /** Its name: `axle 1`. */
  readonly name: string;
  /** As it is printed. */
  readonly printed: string;
  /** The figure, in lb or in. */
  readonly at: number;
  /** The least that prints so. */
  readonly low: number;
  /** The most that prints so. */
  readonly high: number;
}

const weights = [
  ['gvwr', 'GVWR'],
  ['emptyWeight', 'empty weight'],
  ['payload', 'payload'],
  ['axleCapacity', 'capacity of all axles'],
  ['tireCapacity', 'capacity of all tires'],
  ['coupler', 'coupler gross rating'],
] as const;
const lengths = [
  ['overallLength', 'overall length'],
  ['tongueLength', 'tongue length'],
  ['deckLength', 'deck length'],
  ['flatLength', 'flat deck length'],
  ['dovetailLength', 'dovetail length'],
  ['overallWidth', 'overall width'],
  ['deckWidth', 'deck width'],
] as const;

type Measured = 'mass' | 'length';
const units = { mass: 'lb', length: 'in' } as const;

function numberIn(text: unknown, dimension: Measured): number | undefined {
  if (typeof text !== 'string') return undefined;
  const read = parseMeasure(text, dimension);
  if (isLeft(read)) return undefined;
  const value = (convert(read.right as Quantity<'kg'>, units[dimension] as 'lb') as Quantity<Unit>).value.toNumber();
  return value >= 0 ? value : undefined;
}

/** Half of what it was rounded to, either way; a pound or an inch by default. */
function readOne(
  figure: PrintedFigure,
  path: string,
  name: string,
  dimension: Measured,
): Either<ChooseError, ReadFigure> {
  const { text, rounding } =
    typeof figure === 'object' && figure !== null ? figure : { text: figure, rounding: `1 ${units[dimension]}` };
  const at = numberIn(text, dimension);
  const to = numberIn(rounding, dimension);
  if (at === undefined || at === 0 || to === undefined)
    return left({
      chapter: 'choose',
      tag: 'UnusableFigure',
      path,
      found: at === undefined || at === 0 ? String(text).slice(0, 40) : String(rounding).slice(0, 40),
      needed: `a ${dimension === 'mass' ? 'weight, such as "14,000 lb"' : 'length, such as "20 ft"'}, above zero`,
    });
  return right({ path, name, printed: text, at, low: at - to / 2, high: at + to / 2 });
}

/** All figures of a sheet, in order. */
export function readSheet(sheet: Sheet): Either<ChooseError, readonly ReadFigure[]> {
  const wanted: (readonly [PrintedFigure | undefined, string, string, Measured])[] = [
    ...weights.map(([key, name]) => [sheet[key], key, name, 'mass'] as const),
    ...(sheet.axles ?? []).map((each, i) => [each, `axles.${i}`, `axle ${i + 1}`, 'mass'] as const),
    [sheet.tires?.each, 'tires.each', 'each tire', 'mass'],
    ...lengths.map(([key, name]) => [sheet[key], key, name, 'length'] as const),
  ];
  const found: ReadFigure[] = [];
  for (const [figure, path, name, dimension] of wanted) {
    if (figure === undefined) continue;
    const read = readOne(figure, path, name, dimension);
    if (isLeft(read)) return read;
    found.push(read.right);
  }
  return right(found);
}

/** The greatest tongue share, as a plain number. */
export function tongueShareOf({ tongueShareMost = '15 %' }: Sheet): Either<ChooseError, number> {
  const read = parseMeasure(tongueShareMost, 'ratio');
  const share = isLeft(read) ? undefined : convert(read.right as Quantity<'%'>, 'ratio').value.toNumber();
  return share !== undefined && share > 0 && share < 1
    ? right(share)
    : left({
        chapter: 'choose',
        tag: 'UnusableFigure',
        path: 'tongueShareMost',
        found: tongueShareMost.slice(0, 40),
        needed: 'a share such as "15 %"',
      });
}

/** A figure in the unit it is calculated in, for print. */
export const inPrint = (at: number, unit: 'lb' | 'in'): string =>
  `${(Math.round(at * 100) / 100).toLocaleString('en-US', { maximumFractionDigits: 2 })} ${unit}`;
