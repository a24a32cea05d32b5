/** The figures of a spec, with their plausible ranges: values outside are rejected as typing errors. */
import type { Basis, Derived } from '../../trace/index.js';
import {
  degree,
  inch,
  lb,
  lbPerFt,
  lbPerFt2,
  lbPerFt3,
  lbPerInch,
  psi,
  quantity,
  ratio,
  type UnitOf,
} from '../../units/index.js';
import type {
  AngleInput,
  ForceInput,
  LengthInput,
  PressureInput,
  ShareInput,
  WeightInput,
  WeightPerLengthInput,
} from '../types/figures.js';
import { figure, figureAsWritten } from './figure.js';
import type { Coded } from './kind.js';
import type { Naming } from './naming.js';

const heaviest = lb(200000);
const longest = inch(1200);

/** A rating from a label or a stamping: above zero. */
export const ratingOf = (symbol: Naming): Coded<Derived<'lb'>, WeightInput> =>
  figure('mass', { symbol, basis: 'label', least: lb(1), most: heaviest });

/** A weight: zero or more, or above a least. */
export const weightOf = (symbol: Naming, basis: Basis = 'stated', least = 0): Coded<Derived<'lb'>, WeightInput> =>
  figure('mass', { symbol, basis, least: lb(least), most: heaviest });

/** A place along the trailer, or a size; `least` may be negative for what is ahead of the coupler. */
export const lengthOf = (symbol: Naming, least = 0, basis: Basis = 'stated'): Coded<Derived<'in'>, LengthInput> =>
  figure('length', { symbol, basis, least: inch(least), most: longest });

/** A cold pressure. */
export const pressureOf = (symbol: Naming): Coded<Derived<'psi'>, PressureInput> =>
  figure('pressure', { symbol, least: psi(1), most: psi(200) });

/** A force on the plate of a coupling, in the unit it was written in. */
export const forceOf = (symbol: Naming): Coded<Derived<UnitOf<'force'>>, ForceInput> =>
  figureAsWritten('force', { symbol, basis: 'label', least: quantity(1, 'N'), most: quantity(1000, 'kN') });

/** A share of one, written as a percentage or a plain number. */
export const shareOf = (symbol: Naming, least = '0.001', most = '0.999'): Coded<Derived<'ratio'>, ShareInput> =>
  figure('ratio', { symbol, least: ratio(least), most: ratio(most) });

/** An angle from level. */
export const angleOf = (symbol: Naming): Coded<Derived<'deg'>, AngleInput> =>
  figure('angle', { symbol, least: degree(0), most: degree(80) });

/** A spring rate. */
export const rateOf = (symbol: Naming): Coded<Derived<'lb/in'>, WeightPerLengthInput> =>
  figure('weight per length', { symbol, least: lbPerInch(1), most: lbPerInch(100000) });

/** Sizes and weights of a cut list and a deck keep the unit they were written in: the members chapter converts them. */
export const cutLength = (symbol: Naming) => figureAsWritten('length', { symbol, least: inch(-120), most: longest });
/** A size of a line of a cut list or a deck: above zero. */
export const cutSize = (symbol: Naming) => figureAsWritten('length', { symbol, least: inch('0.01'), most: longest });
/** The weight of a line of a cut list. */
export const cutWeight = (symbol: Naming) => figureAsWritten('mass', { symbol, least: lb('0.01'), most: heaviest });
/** A weight per foot of a member. */
export const weightPerFootOf = (symbol: Naming): Coded<Derived<'lb/ft' | 'lb/in' | 'kg/m'>, WeightPerLengthInput> =>
  figureAsWritten('weight per length', { symbol, least: lbPerFt(0), most: lbPerFt(5000) });
/** A weight per square foot of a deck. */
export const weightPerAreaOf = (symbol: Naming) =>
  figureAsWritten('weight per area', { symbol, least: lbPerFt2(0), most: lbPerFt2(1000) });
/** A density. */
export const densityOf = (symbol: Naming) =>
  figureAsWritten('density', { symbol, least: lbPerFt3(0), most: lbPerFt3(2000) });
/** A share of moisture in wood: from zero to many times the dry weight. */
export const moistureOf = (symbol: Naming) => figureAsWritten('ratio', { symbol, least: ratio(0), most: ratio(10) });
