/** The fields of the form: where each figure stands in the spec, what it is called, where one reads it. */
import type { State } from './state.js';

export type Fold = 'trailer' | 'truck' | 'cargo';

export interface Field {
  readonly path: string;
  readonly fold: Fold;
  readonly name: string;
  /** Where one reads it, with its unit. */
  readonly hint: string;
}

const field =
  (fold: Fold) =>
  (path: string, name: string, hint: string): Field => ({ path, fold, name, hint });

const onTrailer = field('trailer');
const onTruck = field('truck');
const onCargo = field('cargo');

const axleFields = (i: number): readonly Field[] => [
  onTrailer(`trailer.axles.${i}.at`, `axle ${i + 1}, behind the coupler`, 'by tape along the frame: in, ft, mm'),
  onTrailer(`trailer.axles.${i}.gawr`, `axle ${i + 1} GAWR`, 'certification label: lb, kg'),
  onTrailer(`trailer.axles.${i}.tires.designation`, `axle ${i + 1} tire size`, 'sidewall'),
  onTrailer(`trailer.axles.${i}.tires.molded.single`, `axle ${i + 1} molded load of a tire`, 'sidewall: lb, kg'),
  onTrailer(`trailer.axles.${i}.tires.pressure`, `axle ${i + 1} cold pressure`, 'gauge, cold: psi, kPa'),
];

const trailerFields: readonly Field[] = [
  onTrailer('trailer.gvwr', 'GVWR', 'certification label: lb, kg'),
  onTrailer('trailer.curb.weight', 'empty weight', 'scale, options fitted: lb, kg'),
  onTrailer('trailer.curb.tongue', 'empty tongue load', 'tongue scale: lb, kg'),
  onTrailer('trailer.coupler.gross', 'coupler, gross', 'stamped on the coupler: lb, kg'),
  onTrailer('trailer.coupler.tongue', 'coupler, tongue', 'stamped on the coupler: lb, kg'),
  onTrailer('trailer.deck.front', 'front of the deck', 'by tape from the coupler: in, ft, mm'),
  onTrailer('trailer.deck.rear', 'rear of the deck', 'by tape from the coupler: in, ft, mm'),
  onTrailer('trailer.rearLegs', 'rear legs, together', 'rating by their maker; set while loading: lb, kg'),
  onTrailer('trailer.ballAboveLevel', 'ball above level', 'how far the ball stands above the level trailer: in, mm'),
  onTrailer('tongueShare', 'tongue share to load to', 'of the gross weight: %'),
];

const truckFields: readonly Field[] = [
  onTruck('tow.front', 'front axle, truck alone', 'scale: lb, kg'),
  onTruck('tow.rear', 'rear axle, truck alone', 'scale: lb, kg'),
  onTruck('tow.gvwr', 'GVWR of the truck', 'door label: lb, kg'),
  onTruck('tow.frontGawr', 'front GAWR', 'door label: lb, kg'),
  onTruck('tow.rearGawr', 'rear GAWR', 'door label: lb, kg'),
  onTruck('tow.gcwr', 'GCWR', 'owner manual: lb, kg'),
  onTruck('tow.wheelbase', 'wheelbase', 'owner manual or tape: in, mm'),
  onTruck('tow.overhang', 'rear axle to ball', 'by tape: in, mm'),
  onTruck('tow.receiver.tongue', 'receiver, tongue', 'receiver label: lb, kg'),
  onTruck('tow.ballMount.tongue', 'ball mount, tongue', 'stamped on the ball mount: lb, kg'),
  onTruck('tow.ball.gross', 'ball, gross', 'stamped on the ball: lb, kg'),
  onTruck('tow.trailerRating', 'trailer tow rating', 'owner manual: lb, kg'),
  onTruck('tow.tongueRating', 'tongue rating of the truck', 'owner manual: lb, kg'),
  onTruck('tow.placard.limit', 'occupant and cargo limit', 'door placard: lb, kg'),
];

const cargoFields = (i: number, name: string): readonly Field[] => [
  onCargo(`cargo.${i}.weight`, `${name}: weight`, 'scale, attachment on: lb, kg'),
  onCargo(`cargo.${i}.front`, `${name}: front face`, 'by tape from the coupler: in, ft, mm'),
  onCargo(`cargo.${i}.balancePoint`, `${name}: balance point`, 'behind its front face: in, mm'),
  onCargo(`cargo.${i}.uncertainty`, `${name}: balance point sure to`, 'either way: in, mm'),
  onCargo(`cargo.${i}.length`, `${name}: length`, 'by tape: in, mm'),
];

/** The fields for a state; `names` are those of its machines. */
export const fieldsFor = (state: State, axles: number, names: readonly string[]): readonly Field[] => [
  ...trailerFields,
  ...Array.from({ length: axles }, (_, i) => axleFields(i)).flat(),
  ...(state.truck === 'none' ? [] : truckFields),
  ...names.flatMap((name, i) => cargoFields(i, name)),
];
