/** Deck surfaces in a spec: a record with the one key that says what it is. */
import type { Either } from 'fp-ts/lib/Either.js';
import { map } from 'fp-ts/lib/Either.js';
import {
  expandedMetalWeight,
  floorPlateWeight,
  type GaugeSystem,
  gaugeSystems,
  plateWeight,
  sheetWeight,
} from '../../members/index.js';
import type { AnyAreaWeight } from '../../trace/index.js';
import { has } from '../codec/fault.js';
import { cutSize, weightPerAreaOf } from '../codec/figures.js';
import { forms, type Refusal } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { choice, count, shortText } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DecodedSurface, SurfaceInput } from '../types/deck.js';
import { byOnlyKey } from './member.js';
import { boardCodec, boardOf, densityOfMaterial, materialCodec, orRefused } from './wood.js';

const kinds = {
  boards: boardCodec,
  plate: record('Plate', 'plain plate', { thickness: cutSize('thickness'), material: materialCodec }, {}),
  sheet: record(
    'Sheet',
    'sheet by its gauge',
    { gauge: count(3, 30), system: choice(...(Object.keys(gaugeSystems) as GaugeSystem[])) },
    {},
  ),
} as const;

const keyed = [
  record('BoardSurface', 'boards laid edge to edge', { boards: kinds.boards }, {}),
  record('PlateSurface', 'plain plate', { plate: kinds.plate }, {}),
  record('SheetSurface', 'sheet by its gauge', { sheet: kinds.sheet }, {}),
  record('FloorPlateSurface', 'raised-pattern floor plate', { floorPlate: shortText }, {}),
  record('ExpandedMetalSurface', 'expanded metal', { expandedMetal: shortText }, {}),
  record(
    'StatedSurface',
    'anything whose weight per square foot is known',
    { weightPerSquareFoot: weightPerAreaOf('weight per square foot') },
    {},
  ),
] as const;
const keys = ['boards', 'plate', 'sheet', 'floorPlate', 'expandedMetal', 'weightPerSquareFoot'];

/** A surface as it was written. */
export const surfaceCodec: Coded<DecodedSurface, SurfaceInput> = forms('Surface', 'a deck surface', keyed, (input) =>
  byOnlyKey(input, keys, keyed),
);

const weightOfIt = map(({ weight }: { readonly weight: AnyAreaWeight }) => weight);

/** What a surface weighs per square foot. */
export function surfaceOf(form: DecodedSurface, path: string): Either<Refusal, AnyAreaWeight> {
  if (has(form, 'boards'))
    return map(({ weightPerSquareFoot }: { readonly weightPerSquareFoot: AnyAreaWeight }) => weightPerSquareFoot)(
      boardOf(form.boards, `${path}.boards`),
    );
  if (has(form, 'plate')) {
    const { thickness, material } = form.plate;
    return orRefused(plateWeight(thickness, densityOfMaterial(material)), `${path}.plate`);
  }
  if (has(form, 'sheet'))
    return weightOfIt(orRefused(sheetWeight(form.sheet.gauge, form.sheet.system), `${path}.sheet.gauge`));
  if (has(form, 'floorPlate')) return weightOfIt(orRefused(floorPlateWeight(form.floorPlate), `${path}.floorPlate`));
  if (has(form, 'expandedMetal'))
    return weightOfIt(orRefused(expandedMetalWeight(form.expandedMetal), `${path}.expandedMetal`));
  return map(() => form.weightPerSquareFoot)(orRefused({ _tag: 'Right', right: undefined }, path));
}
