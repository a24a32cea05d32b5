/** Deck surfaces as they stand in JSON. */

import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import type { AnyAreaWeight } from '../trace/index.js';
import type { MembersError } from './errors.js';
import { at, closed, decodeAt, measure, oneOf, onlyKey, placed, under } from './measure-codec.js';
import { readBoard } from './member-codec.js';
import {
  expandedMetalWeight,
  floorPlateWeight,
  type GaugeSystem,
  gaugeSystems,
  plateWeight,
  sheetWeight,
} from './stock/plate.js';
import { readMaterial } from './wood-codec.js';

const plate = closed('a plate', { thickness: measure('length'), material: t.unknown });
const sheet = closed('a sheet', {
  gauge: t.number,
  system: oneOf(...(Object.keys(gaugeSystems) as [GaugeSystem, ...GaugeSystem[]])),
});

/** A surface: a record with one of `boards`, `plate`, `sheet`, `floorPlate`, `expandedMetal`, `weightPerSquareFoot`. @example readSurface({ weightPerSquareFoot: '4.75 lb/ft2' }, 'deck.0.surface') // Right 4.75 lb/ft2 */
export function readSurface(input: unknown, path: string): Either<MembersError, AnyAreaWeight> {
  const chosen = onlyKey(
    input,
    ['boards', 'plate', 'sheet', 'floorPlate', 'expandedMetal', 'weightPerSquareFoot'],
    path,
  );
  if (isLeft(chosen)) return chosen;
  const { kind, inside, path: here } = chosen.right;
  switch (kind) {
    case 'boards': {
      const read = readBoard(inside, here);
      return isLeft(read) ? read : right(read.right.weightPerSquareFoot);
    }
    case 'plate': {
      const read = decodeAt(plate, inside, here);
      if (isLeft(read)) return read;
      const material = readMaterial(read.right.material, under(here, 'material'));
      return isLeft(material)
        ? material
        : at(here, plateWeight(placed('thickness', read.right.thickness, under(here, 'thickness')), material.right));
    }
    case 'sheet': {
      const read = decodeAt(sheet, inside, here);
      if (isLeft(read)) return read;
      const found = at(here, sheetWeight(read.right.gauge, read.right.system));
      return isLeft(found) ? found : right(found.right.weight);
    }
    case 'floorPlate':
    case 'expandedMetal': {
      const read = decodeAt(t.string, inside, here);
      if (isLeft(read)) return read;
      const found = at(here, kind === 'floorPlate' ? floorPlateWeight(read.right) : expandedMetalWeight(read.right));
      return isLeft(found) ? found : right(found.right.weight);
    }
    case 'weightPerSquareFoot': {
      const read = decodeAt(measure('weight per area'), inside, here);
      return isLeft(read) ? read : right(placed('weight per square foot', read.right, here));
    }
  }
}
