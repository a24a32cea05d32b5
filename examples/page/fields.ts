/** The fields of the form: the path of each figure in the spec, its name, where one reads it. */
import { specKeys } from '../../src/spec/index.js';
import type { State } from './state.js';

export type Fold = 'trailer' | 'truck' | 'cargo';

export interface Field {
  readonly path: string;
  readonly fold: Fold;
  readonly name: string;
  /** Where one reads it, and how it is written. */
  readonly hint: string;
}

const known = new Map(specKeys.map((key) => [key.path, key]));

/** Where one reads a figure, and one as it is written: from the table of the keys of a spec. */
function hintFor(path: string): string {
  const key = known.get(path.replace(/\.\d+(?=\.|$)/g, '[]'));
  if (key === undefined) return '';
  const { where, example } = key;
  const text = typeof example === 'object' && example !== null && 'text' in example ? example.text : example;
  return `${where}; for instance ${String(text)}`;
}

const field =
  (fold: Fold) =>
  (path: string, name: string): Field => ({ path, fold, name, hint: hintFor(path) });

const onTrailer = field('trailer');
const onTruck = field('truck');
const onCargo = field('cargo');

const axleFields = (i: number): readonly Field[] => [
  onTrailer(`trailer.axles.${i}.at`, `axle ${i + 1}, behind the coupler`),
  onTrailer(`trailer.axles.${i}.gawr`, `axle ${i + 1} GAWR`),
  onTrailer(`trailer.axles.${i}.tires.designation`, `axle ${i + 1} tire size`),
  onTrailer(`trailer.axles.${i}.tires.molded.single`, `axle ${i + 1} molded load of a tire`),
  onTrailer(`trailer.axles.${i}.tires.pressure`, `axle ${i + 1} cold pressure`),
];

const trailerFields: readonly Field[] = [
  onTrailer('trailer.gvwr', 'GVWR'),
  onTrailer('trailer.curb.weight', 'empty weight'),
  onTrailer('trailer.curb.tongue', 'empty tongue load'),
  onTrailer('trailer.coupler.gross', 'coupler, gross'),
  onTrailer('trailer.coupler.tongue', 'coupler, tongue'),
  onTrailer('trailer.deck.front', 'front of the deck'),
  onTrailer('trailer.deck.rear', 'rear of the deck'),
  onTrailer('trailer.rearLegs', 'rear legs, together'),
  onTrailer('trailer.ballAboveLevel', 'ball above level'),
  onTrailer('tongueShare', 'tongue share to load to'),
];

const truckFields: readonly Field[] = [
  onTruck('tow.front', 'front axle, truck alone'),
  onTruck('tow.rear', 'rear axle, truck alone'),
  onTruck('tow.gvwr', 'GVWR of the truck'),
  onTruck('tow.frontGawr', 'front GAWR'),
  onTruck('tow.rearGawr', 'rear GAWR'),
  onTruck('tow.gcwr', 'GCWR'),
  onTruck('tow.wheelbase', 'wheelbase'),
  onTruck('tow.overhang', 'rear axle to ball'),
  onTruck('tow.receiver.tongue', 'receiver, tongue'),
  onTruck('tow.ballMount.tongue', 'ball mount, tongue'),
  onTruck('tow.ball.gross', 'ball, gross'),
  onTruck('tow.trailerRating', 'trailer tow rating'),
  onTruck('tow.tongueRating', 'tongue rating of the truck'),
  onTruck('tow.placard.limit', 'occupant and cargo limit'),
];

const cargoFields = (i: number, name: string): readonly Field[] => [
  onCargo(`cargo.${i}.weight`, `${name}: weight`),
  onCargo(`cargo.${i}.front`, `${name}: front face`),
  onCargo(`cargo.${i}.balancePoint`, `${name}: balance point`),
  onCargo(`cargo.${i}.uncertainty`, `${name}: balance point sure to`),
  onCargo(`cargo.${i}.length`, `${name}: length`),
];

/** The fields for a state; `names` are those of its machines. */
export const fieldsFor = (state: State, axles: number, names: readonly string[]): readonly Field[] => [
  ...trailerFields,
  ...Array.from({ length: axles }, (_, i) => axleFields(i)).flat(),
  ...(state.truck === 'none' ? [] : truckFields),
  ...names.flatMap((name, i) => cargoFields(i, name)),
];
