/**
 * Ratings and weights are different things, and these two maps say what may meet. Everything else does not compile.
 *
 * GVWR limits the whole laden trailer, tongue load included; GAWR limits what one axle system carries at the ground,
 * coupled; parts limit their share of that axle; hitch parts limit the gross weight and, separately, the tongue load.
 */

/** Rating -> the weight it limits. */
export interface Limits {
  GVWR: 'gross';
  GAWR: 'axle load';
  /** The weakest part of an axle whose label gives no GAWR. */
  'weakest part': 'axle load';
  'axle group': 'axle group load';
  tire: 'tire load';
  wheel: 'tire load';
  'coupler gross': 'gross';
  'coupler tongue': 'tongue';
  /** What a European coupling plate prints as D, Dc and V, as the weight that presses with that force; S is its limit on the tongue. */
  'coupling D': 'drawbar pull';
  'coupling Dc': 'drawbar pull';
  'coupling V': 'drawbar bounce';
  'coupling S': 'tongue';
  'ball gross': 'gross';
  'ball mount gross': 'gross';
  'ball mount tongue': 'tongue';
  'receiver gross': 'gross';
  'receiver tongue': 'tongue';
  'trailer tow rating': 'gross';
  'tow vehicle tongue': 'tongue';
  'tow vehicle GVWR': 'tow vehicle hitched';
  'tow vehicle front GAWR': 'tow vehicle front axle';
  'tow vehicle rear GAWR': 'tow vehicle rear axle';
  'occupant and cargo placard': 'tow vehicle load';
  GCWR: 'combination';
  'safety chains': 'gross';
  jack: 'jack load';
  'brake capacity': 'braked weight';
  'ramp pair, axle': 'machine axle load';
  'ramp pair, machine': 'machine weight';
  'rear legs': 'load on the rear legs';
}

/** Component -> the rating it must bear. */
export interface Supports {
  beam: 'GAWR';
  springs: 'GAWR';
  hubs: 'GAWR';
  wheels: 'GAWR';
  tires: 'GAWR';
  brakes: 'GAWR';
}

export type RatingKind = keyof Limits;
export type WeightKind = Limits[RatingKind];
export type ComponentKind = keyof Supports;
