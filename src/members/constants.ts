/** Numbers that belong to the formulas of this chapter, and the densities that have a name and a source. */
import { constant, type Derived, fromMemory, fromTable, over, result, type Source } from '../trace/index.js';
import { lbPerFt3, quantity, ratio } from '../units/index.js';

/** The ratio of a circle's circumference to its diameter, to the digits this library carries. */
export const pi: Derived<'ratio'> = constant(ratio('3.141592653589793238462643383279503'), 'pi');

const steelSource: Source = Object.freeze({
  id: 'iowa-im-569',
  title: 'Iowa DOT Instructional Memorandum 569',
  grade: 'A',
  note: '40.83 lb/ft2 per inch; 0.28356 lb/in3',
});

/** Carbon steel, 490 lb/ft3: the density behind printed weights of shapes and plate. */
export const steelDensity: Derived<'lb/ft3'> = fromTable('steel density', lbPerFt3(490), {
  table: 'densities',
  key: 'steel',
  source: steelSource,
});

/** Carbon steel at the other figure in use, 40.8 lb/ft2 per inch of thickness: 0.08 % less. */
export const steelDensityByPlate: Derived<'lb/ft3'> = fromTable('steel density', lbPerFt3('489.6'), {
  table: 'densities',
  key: 'steel at 40.8 lb/ft2 per inch',
  source: { id: 'plate-40-8', title: 'plate tables at 40.8 lb/ft2 per inch', grade: 'C' },
});

/** Structural aluminium, 0.098 lb/in3: the mean of weight over area in published shapes, which run from 1.167 to 1.184 lb/ft per in2. */
export const aluminiumDensity: Derived<'lb/in3'> = fromTable('aluminium density', quantity('0.098', 'lb/in3'), {
  table: 'densities',
  key: 'aluminium',
  source: { id: 'aluminium-shapes', title: 'weight over area of published aluminium shapes, mean', grade: 'derived' },
});

/** Water, for densities from specific gravity. */
export const waterDensity: Derived<'lb/ft3'> = constant(lbPerFt3('62.4'), 'water density', {
  id: 'water-62-4',
  title: 'common practice, no source',
  grade: 'memory',
});

/** One in six: the slope of the inner flange face of American standard channels (C) and beams (S). MC slopes differ by size. */
export const standardTaper: Derived<'ratio'> = result(
  'flange slope',
  over(1, 6),
  fromMemory('inner flange slope of C and S shapes, borne out by the published properties'),
);
