/** The density of wood: by species and moisture, two kinds of specific gravity kept apart. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  type AnyDensity,
  type AnyShare,
  aboveZero,
  allHold,
  asDerived,
  between,
  constant,
  converted,
  type Derived,
  findRow,
  fromTable,
  inPoundsPerCubicFoot,
  inUnit,
  over,
  plus,
  result,
  type Table,
  times,
  zeroIn,
} from '../../trace/index.js';
import { lbPerFt3, percent, ratio } from '../../units/index.js';
import { waterDensity } from '../constants.js';
import { ndsGravity } from '../data/nds-gravity.js';
import { treatedWood } from '../data/treated-wood.js';
import { woodDensity } from '../data/wood-density.js';
import type { MembersError } from '../errors.js';
import type { TreatedWoodRow } from './stock-rows.js';

/**
 * How the density of a board is known. The gravity of the NDS is by oven-dry volume, that of the handbook by the volume at 12 %:
 * they are two figures for one species, and each goes with its own formula.
 */
export type Wood =
  | { readonly by: 'NDS gravity'; readonly species: string; readonly moisture: AnyShare }
  | { readonly by: 'handbook gravity at 12 %'; readonly species: string }
  | { readonly by: 'air-dry range'; readonly species: string; readonly end: 'low' | 'high' }
  | { readonly by: 'treated'; readonly state: TreatedWoodRow['state']; readonly end: 'low' | 'high' }
  | { readonly by: 'density'; readonly density: AnyDensity };

const gravity = (species: string, digits: string, table: Table<unknown>, source = table.source): Derived<'ratio'> =>
  fromTable(`${species} specific gravity`, ratio(digits), { table: table.name, key: species, source });

const empty = (table: Table<unknown>, row: string, column: string): Either<MembersError, never> =>
  left({ chapter: 'members', tag: 'ColumnEmpty', table: table.name, row, column });

/** Above about 30 % the volume no longer follows the water (fibre saturation, from memory). */
const mostMoisture = constant(percent(30), 'fibre saturation');

function byNds(species: string, moisture: AnyShare): Either<MembersError, Derived<'lb/ft3'>> {
  const found = findRow(ndsGravity, (row) => row.species, species);
  if (isLeft(found)) return found;
  const share = converted('moisture', asDerived('moisture', moisture), '%');
  const tested = allHold(between('moisture', share, zeroIn('%'), mostMoisture, 'included'));
  if (isLeft(tested)) return tested;
  const G = gravity(species, found.right.gravity, ndsGravity);
  const m = inUnit(share, 'ratio');
  return right(
    result(
      `${species} density`,
      times(over(times(waterDensity, G), plus(1, times(0.9, G, m))), plus(1, m)),
      ndsGravity.source,
    ),
  );
}

/**
 * What does this wood weigh per cubic foot?
 *
 * - NDS gravity G (oven-dry weight and volume), moisture m in %: `62.4 x G / (1 + 0.009 G m) x (1 + m/100)`.
 * - Handbook gravity G12 (oven-dry weight, volume at 12 %): `62.4 x G12 x 1.12`, at 12 % only.
 * - Air-dry range, and treated boards: the low or the high end of the printed range, which you name.
 *
 * Not above 30 % moisture: wet boards are weighed, or named as freshly treated (70 to 73 lb/ft3 where dry ones have 40 to 41).
 * The basic gravity of the table is for green volume and is not used here: no formula takes the oaks from it to 12 % rightly.
 *
 * @param wood how the density is known; moisture by meter, or 12 to 19 % for boards under a roof (common practice, no source)
 * @returns lb/ft3; Left `NotTabulated` with the nearest species, `ColumnEmpty`, `OutsideItsRange`, `OutsideItsRange`
 * @example densityOfWood({ by: 'NDS gravity', species: 'Southern Pine', moisture: percent(12) }) // Right 36.28 lb/ft3
 * @source NDS 2018 Table 12.3.3A, reproduction; Wood Handbook figures by several copies, row by row
 */
export function densityOfWood(wood: Wood): Either<MembersError, Derived<'lb/ft3'>> {
  switch (wood.by) {
    case 'NDS gravity':
      return byNds(wood.species, wood.moisture);
    case 'handbook gravity at 12 %': {
      const found = findRow(woodDensity, (row) => row.species, wood.species);
      if (isLeft(found)) return found;
      if (!('at12' in found.right)) return empty(woodDensity, wood.species, 'specific gravity at 12 %');
      const at12 = gravity(wood.species, found.right.at12, woodDensity, found.right.source);
      return right(result(`${wood.species} density at 12 %`, times(waterDensity, at12, 1.12)));
    }
    case 'air-dry range': {
      const found = findRow(woodDensity, (row) => row.species, wood.species);
      if (isLeft(found)) return found;
      if (!('airDryLow' in found.right)) return empty(woodDensity, wood.species, 'air-dry density');
      const { airDryLow, airDryHigh, source } = found.right;
      return right(
        fromTable(
          `${wood.species} air-dry density, ${wood.end}`,
          lbPerFt3(wood.end === 'low' ? airDryLow : airDryHigh),
          { table: woodDensity.name, key: wood.species, source },
        ),
      );
    }
    case 'treated': {
      const found = findRow(treatedWood, (row) => row.state, wood.state);
      return isLeft(found)
        ? found
        : right(
            fromTable(`${wood.state} density, ${wood.end}`, lbPerFt3(found.right[wood.end]), {
              table: treatedWood.name,
              key: wood.state,
              source: treatedWood.source,
            }),
          );
    }
    case 'density': {
      const density = inPoundsPerCubicFoot('wood density', wood.density);
      const tested = allHold([aboveZero('wood density', density)]);
      return isLeft(tested) ? tested : right(density);
    }
  }
}
