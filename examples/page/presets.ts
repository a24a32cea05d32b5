/** Marlow Yard, invented: what the page lets one choose from. Every figure is written as a person writes it. */
import tiltDeck from '../tilt-deck.json' with { type: 'json' };
import tiltDeck16 from '../tilt-deck-16.json' with { type: 'json' };

export type Json = Record<string, unknown>;

export interface Preset {
  readonly name: string;
  readonly spec: Json;
}

const axle = (at: string): Json => ({
  at,
  gawr: '5,200 lb',
  beam: '5,200 lb',
  springs: '5,400 lb',
  hubs: '5,200 lb',
  wheels: { each: '2,600 lb', count: 2 },
  brakes: { left: '2,600 lb', right: '2,600 lb' },
  tires: {
    designation: 'ST225/75R15 LRE',
    count: 2,
    fitment: 'single',
    molded: { single: '2,830 lb', pressure: '80 psi' },
    pressure: '80 psi',
  },
});

const flatDeck: Json = {
  name: 'Marlow Yard FD-10, an invented trailer',
  hitch: 'ball',
  gvwr: '9,990 lb',
  sharing: 'equalised',
  curb: { weight: '2,780 lb', tongue: '400 lb' },
  axles: [axle('168 in'), axle('201 in')],
  coupler: { gross: '12,500 lb', tongue: '1,500 lb' },
  chains: { each: '12,000 lb', count: 2 },
  jack: { rating: '2,000 lb', at: '18 in', margin: '125 %' },
  deck: { front: '56 in', rear: '272 in' },
  ramps: { length: '72 in', height: '24 in', rating: '8,000 lb', basis: 'machine' },
  width: '96 in',
  length: '24 ft',
  track: '86 in',
};

/** The trailers. The first is the one the page opens with. */
export const trailers = {
  td14: { name: 'TD-14 tilt deck, 14,000 lb', spec: tiltDeck.trailer },
  td16: { name: 'TD-16 tilt deck, 16,000 lb', spec: tiltDeck16.trailer },
  fd10: { name: 'FD-10 flat deck, 9,990 lb', spec: flatDeck },
} as const satisfies Record<string, Preset>;

/** The tires; the first keeps those on the trailer. */
export const tires = {
  own: { name: 'as on the trailer', spec: {} },
  st225e: {
    name: 'ST225/75R15 LRE at 80 psi, molded 2,830 lb',
    spec: { designation: 'ST225/75R15 LRE', molded: { single: '2,830 lb', pressure: '80 psi' }, pressure: '80 psi' },
  },
  st235e: {
    name: 'ST235/80R16 LRE at 80 psi, molded 3,520 lb',
    spec: { designation: 'ST235/80R16 LRE', molded: { single: '3,520 lb', pressure: '80 psi' }, pressure: '80 psi' },
  },
  st235g: {
    name: 'ST235/85R16 LRG at 110 psi, molded 4,400 lb',
    spec: { designation: 'ST235/85R16 LRG', molded: { single: '4,400 lb', pressure: '110 psi' }, pressure: '110 psi' },
  },
} as const satisfies Record<string, Preset>;

/** The tow vehicles. */
export const trucks = {
  yard: { name: 'the yard truck', spec: tiltDeck.tow },
  pickup: {
    name: 'a customer’s pickup',
    spec: {
      front: '3,150 lb',
      rear: '2,550 lb',
      gvwr: '7,000 lb',
      frontGawr: '3,750 lb',
      rearGawr: '3,800 lb',
      gcwr: '17,000 lb',
      wheelbase: '145 in',
      overhang: '50 in',
      trailerRating: '11,000 lb',
      placard: { limit: '1,400 lb', people: '400 lb', cargo: '150 lb' },
    },
  },
  none: { name: 'not told', spec: {} },
} as const satisfies Record<string, Preset>;

const strap: Json = { marked: '3,333 lb', runs: 'direct' };

/** The machines. */
export const machines = {
  excavator: { name: 'excavator, 9,000 lb', spec: tiltDeck.cargo[0] as Json },
  skid: {
    name: 'skid steer, 6,200 lb',
    spec: {
      name: 'skid steer',
      weight: '6,200 lb',
      front: '104 in',
      balancePoint: '70 in',
      length: '136 in',
      uncertainty: '2 in',
      rightOfMiddle: '0 in',
      section: 'heavy equipment',
      tiedowns: [strap, strap, strap, strap],
    },
  },
  roller: {
    name: 'roller, 3,300 lb',
    spec: {
      name: 'roller',
      weight: '3,300 lb',
      front: '150 in',
      balancePoint: '43 in',
      length: '88 in',
      uncertainty: '1 in',
      rightOfMiddle: '0 in',
      section: 'general',
      tiedowns: [strap, strap, strap, strap],
    },
  },
  pallet: {
    name: 'pallet of blocks, 1,500 lb',
    spec: {
      name: 'pallet of blocks',
      weight: '1,500 lb',
      front: '70 in',
      balancePoint: '20 in',
      length: '40 in',
      uncertainty: '0 in',
      rightOfMiddle: '0 in',
      section: 'general',
      tiedowns: [strap, strap],
    },
  },
} as const satisfies Record<string, Preset>;

export type TrailerKey = keyof typeof trailers;
export type TireKey = keyof typeof tires;
export type TruckKey = keyof typeof trucks;
export type MachineKey = keyof typeof machines;

/** What goes with every choice: the share it is loaded to, and the facts that rules ask for. */
export const common: Json = {
  tongueShare: tiltDeck.tongueShare,
  rules: { commercial: true, interstate: true, actualWithinRatings: true, labelGcwr: 'not shown' },
};
