/** The words of a tire and loading placard for a trailer of 10,000 lb or less. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import {
  asDerived,
  constant,
  converted,
  type Decision,
  type Derived,
  decide,
  difference,
  type Known,
  roundedDown,
} from '../trace/index.js';
import { kg, lb, show, showBrief } from '../units/index.js';
import { showCrossed, showInWords } from '../units/internal.js';
import { designationOf } from './designation/cache.js';
import type { Designation } from './designation/designation.js';
import { showSize } from './designation/show-designation.js';
import type { TiresError } from './errors.js';
import { inPounds, inPsi } from './load/known-figures.js';

export interface PlacardTire {
  /** `axle 1`, `spare`. */
  readonly where: string;
  readonly designation: string | Designation;
  readonly coldPressure: Known<'psi' | 'kPa'>;
}

export interface PlacardFacts {
  readonly gvwr: Known<'lb' | 'kg'>;
  /** The trailer as it is equipped, without cargo. */
  readonly unloaded: Known<'lb' | 'kg'>;
  readonly tires: readonly PlacardTire[];
}

export interface Placard {
  readonly cargo: Derived<'lb'>;
  readonly cargoKg: Derived<'kg'>;
  readonly tires: readonly {
    readonly where: string;
    readonly size: string;
    readonly psi: Derived<'psi'>;
    readonly kPa: Derived<'kPa'>;
  }[];
  /** One line each; our own words, not the wording that the rule prescribes. */
  readonly text: string;
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

/** 10,000 lb and 4,536 kg are printed side by side; each is compared in its own unit and neither is converted. */
const most = { lb: constant(lb(10000), 'placard limit'), kg: constant(kg(4536), 'placard limit') };

function withinLimit(gvwr: Derived<'lb' | 'kg'>): Decision {
  return gvwr.value.unit === 'kg'
    ? decide(gvwr as Derived<'kg'>, '<=', most.kg)
    : decide(gvwr as Derived<'lb'>, '<=', most.lb);
}

const labelGoverns = note(
  'LabelGoverns',
  'the label of the trailer maker governs; these are the data for one, not the label',
);

/**
 * What belongs on the tire and loading placard of this trailer?
 *
 * `cargo capacity = GVWR - unloaded weight`, rounded down to 1 lb, and from the unrounded figure to 1 kg. Sizes and cold
 * pressures as given.
 *
 * Only for a GVWR of 10,000 lb (4,536 kg) or less; heavier trailers have no cargo statement by this rule. Each optioned
 * build has its own unloaded weight and its own figure. The maker's label governs.
 *
 * @param facts GVWR from the certification label, unloaded weight as equipped from a scale, tires with cold pressures from the
 * maker, in lb or kg, psi or kPa
 * @returns figures and text; Left `NoPlacardAbove`, `UnloadedAboveGvwr`, `NoTires`, `NotPositive`, `UnreadableDesignation`
 * @example placard({ gvwr: lb(7000), unloaded: lb(2450), tires }) // Right: cargo 4,550 lb, 2,063 kg
 * @source 49 CFR 571.110 S4.3, S4.3.5, partly read
 */
export function placard(facts: PlacardFacts): Either<TiresError, Placard> {
  const label = asDerived('GVWR', facts.gvwr, 'label');
  const gvwr = inPounds('GVWR', label);
  if (isLeft(gvwr)) return gvwr;
  const unloaded = inPounds('unloaded weight', facts.unloaded);
  if (isLeft(unloaded)) return unloaded;
  const rule = withinLimit(label);
  if (!rule.holds)
    return left({
      chapter: 'tires',
      tag: 'NoPlacardAbove',
      gvwr: showInWords(gvwr.right.value, 'up'),
      most: '10,000 lb (4,536 kg)',
    });
  const fits = decide(unloaded.right, '<=', gvwr.right);
  if (!fits.holds) {
    const [empty, rated] = showCrossed(unloaded.right.value, gvwr.right.value);
    return left({ chapter: 'tires', tag: 'UnloadedAboveGvwr', gvwr: rated, unloaded: empty });
  }
  if (facts.tires.length === 0) return left({ chapter: 'tires', tag: 'NoTires' });
  const tires = [];
  for (const tire of facts.tires) {
    const line = readTire(tire);
    if (isLeft(line)) return line;
    tires.push(line.right);
  }
  const room = difference('room for cargo', gvwr.right, unloaded.right);
  const cargo = roundedDown('cargo capacity', room, lb(1));
  const cargoKg = roundedDown('cargo capacity in kg', converted('room for cargo in kg', room, 'kg'), kg(1));
  const text = [
    `Cargo: at most ${show(cargoKg.value)} or ${show(cargo.value)}`,
    ...tires.map(
      (tire) =>
        `Tires, ${tire.where}: ${tire.size}, ${showBrief(tire.kPa.value, 0)} (${showBrief(tire.psi.value, 0)}) cold`,
    ),
  ].join('\n');
  return right({ cargo, cargoKg, tires, text, notes: [labelGoverns], decisions: [rule, fits] });
}

function readTire({ where, designation, coldPressure }: PlacardTire): Either<TiresError, Placard['tires'][number]> {
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const figure = asDerived('cold pressure', coldPressure);
  const pressure = inPsi('cold pressure', figure);
  if (isLeft(pressure)) return pressure;
  const range = read.right.range === undefined ? '' : ` load range ${read.right.range.letter}`;
  return right({
    where,
    size: `${showSize(read.right)}${range}`,
    psi: pressure.right,
    kPa: converted<'psi' | 'kPa', 'kPa'>('cold pressure in kPa', figure, 'kPa'),
  });
}
