/** Materials, woods and boards in a spec. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import {
  aluminiumDensity,
  type Board,
  board,
  densityOfWood,
  type MembersError,
  steelDensity,
  steelDensityByPlate,
  wordsForMembers,
} from '../../members/index.js';
import { type AnyDensity, type Derived, wordsForTrace } from '../../trace/index.js';
import { type Unit, wordsForUnits } from '../../units/index.js';
import { isRecord, own } from '../codec/fault.js';
import { densityOf, moistureOf } from '../codec/figures.js';
import { forms, type Refusal, wordsOr } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { choice, shortText } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DecodedMaterial, MaterialInput, NamedMaterial } from '../types/made.js';
import type { BoardInput, DecodedBoard, DecodedWood, WoodInput } from '../types/member.js';

/** What the members chapter says against it, in one sentence, at its place. */
export function refusal(error: MembersError, path: string): Refusal {
  const at = error.path ?? path;
  if (error.chapter === 'trace') return { says: wordsForTrace(error), path: at };
  if (error.chapter === 'units') return { says: wordsForUnits(error), path: at };
  return { says: wordsForMembers(error), path: at };
}

/** The same answer, or the refusal at its place. */
export const orRefused = <A>(found: Either<MembersError, A>, path: string): Either<Refusal, A> =>
  isLeft(found) ? left(refusal(found.left, path)) : found;

const densities = {
  steel: steelDensity,
  'steel at 40.8 lb/ft2 per inch': steelDensityByPlate,
  aluminium: aluminiumDensity,
} as const satisfies Readonly<Record<NamedMaterial, Derived<Unit>>>;

/** `steel`, `aluminium`, or a density. */
export const materialCodec: Coded<DecodedMaterial, MaterialInput> = wordsOr(
  Object.keys(densities) as NamedMaterial[],
  densityOf('density'),
);

/** The density of a material. */
export const densityOfMaterial = (material: DecodedMaterial): AnyDensity =>
  typeof material === 'string' ? densities[material] : material;

const end = choice('low', 'high');
const woods = {
  'NDS gravity': record(
    'WoodByNdsGravity',
    'a wood by NDS gravity',
    { by: choice('NDS gravity'), species: shortText, moisture: moistureOf('moisture') },
    {},
  ),
  'handbook gravity at 12 %': record(
    'WoodByHandbookGravity',
    'a wood by handbook gravity',
    { by: choice('handbook gravity at 12 %'), species: shortText },
    {},
  ),
  'air-dry range': record(
    'WoodByAirDryRange',
    'a wood by its air-dry range',
    { by: choice('air-dry range'), species: shortText, end },
    {},
  ),
  treated: record(
    'TreatedWood',
    'a treated wood',
    { by: choice('treated'), state: choice('freshly treated', 'treated, dried'), end },
    {},
  ),
  density: record(
    'WoodByDensity',
    'a wood by density',
    { by: choice('density'), density: densityOf('wood density') },
    {},
  ),
} as const;
const ways = Object.keys(woods);
const isWay = (by: unknown): by is keyof typeof woods => typeof by === 'string' && Object.hasOwn(woods, by);

/** A wood: `by` says how its density is known. */
export const woodCodec: Coded<DecodedWood, WoodInput> = forms('Wood', 'a wood', Object.values(woods), (input) => {
  const by = isRecord(input) ? own(input, 'by') : undefined;
  return isWay(by) ? woods[by] : `a record with the key "by": one of ${ways.map((way) => `"${way}"`).join(', ')}`;
});

/** A board: its size and its wood. */
export const boardCodec: Coded<DecodedBoard, BoardInput> = record(
  'Board',
  'a board',
  { size: shortText, wood: woodCodec },
  {},
);

/** What the members chapter makes of a board. */
export function boardOf({ size, wood }: DecodedBoard, path: string): Either<Refusal, Board> {
  const density = orRefused(densityOfWood(wood), `${path}.wood`);
  if (isLeft(density)) return density;
  const found = orRefused(board(size, wood), `${path}.size`);
  return isLeft(found) ? found : right(found.right);
}
