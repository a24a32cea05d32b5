/** Which part of the rig a check refers to; sets the order of the bars. */
import type { Check } from '../ratings/index.js';

export const groups = ['whole trailer', 'axles and tires', 'hitch', 'truck', 'other'] as const;

export type Group = (typeof groups)[number];

const groupByKind: Readonly<Record<Check['kind'], Group>> = {
  GVWR: 'whole trailer',
  GAWR: 'axles and tires',
  'weakest part': 'axles and tires',
  'axle group': 'axles and tires',
  tire: 'axles and tires',
  wheel: 'axles and tires',
  'brake capacity': 'axles and tires',
  beam: 'axles and tires',
  springs: 'axles and tires',
  hubs: 'axles and tires',
  wheels: 'axles and tires',
  tires: 'axles and tires',
  brakes: 'axles and tires',
  'coupler gross': 'hitch',
  'coupler tongue': 'hitch',
  'coupling D': 'hitch',
  'coupling Dc': 'hitch',
  'coupling V': 'hitch',
  'coupling S': 'hitch',
  'ball gross': 'hitch',
  'ball mount gross': 'hitch',
  'ball mount tongue': 'hitch',
  'receiver gross': 'hitch',
  'receiver tongue': 'hitch',
  'safety chains': 'hitch',
  'trailer tow rating': 'truck',
  'tow vehicle tongue': 'truck',
  'tow vehicle GVWR': 'truck',
  'tow vehicle front GAWR': 'truck',
  'tow vehicle rear GAWR': 'truck',
  'occupant and cargo placard': 'truck',
  GCWR: 'truck',
  jack: 'other',
  'ramp pair, axle': 'other',
  'ramp pair, machine': 'other',
  'rear legs': 'other',
};

/** The group of a check. */
export const groupOf = ({ kind }: Pick<Check, 'kind'>): Group => groupByKind[kind];
