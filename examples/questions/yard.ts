/**
 * Marlow Yard, invented: one tilt deck, the machines that ride on it, two trucks that pull. The figures of the TD-14 are
 * those of `examples/tilt-deck.json` (a test compares them). Below them, the few lines every question prints with.
 */
import { orThrow } from '../../src/errors.js';
import { balance, type CoupledItem, type PlacedItem } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import type { TowVehicle } from '../../src/towing/index.js';
import { type Derived, explain, given } from '../../src/trace/index.js';
import {
  convert,
  inch,
  lb,
  percent,
  ratio,
  roundCapacityDown,
  roundLoadUp,
  roundNearest,
  show,
  type Unit,
} from '../../src/units/index.js';
import { wrapText } from '../../src/units/internal.js';

/** The trailer as it stands in the yard: places in inches behind the coupler, by tape along the frame. */
export const trailer = {
  gvwr: given('GVWR', lb(14000), 'label'),
  gawrs: [given('axle 1 GAWR', lb(7000), 'label'), given('axle 2 GAWR', lb(7000), 'label')] as const,
  empty: given('trailer weight', lb(3650), 'scale'),
  emptyTongue: given('trailer tongue load', lb(520), 'scale'),
  axlesAt: given('axle group position', inch(204), 'scale'),
  axleSpacing: inch(34),
  deck: { front: inch(62), rear: inch(302) },
  coupler: {
    gross: given('coupler gross rating', lb(15000), 'label'),
    tongue: given('coupler tongue rating', lb(2000), 'label'),
  },
  chains: { each: given('breaking strength of a chain', lb(16200), 'label'), count: 2 } as const,
  jack: { rating: given('jack rating', lb(5000), 'label'), at: inch(20), margin: percent(125) },
  ramps: { length: inch(66), height: inch(16), rated: rating('ramp pair, machine', lb(14000)) },
};

/** An excavator on tracks. Its balance point was found by the maker's sheet, good to two inches. */
export const excavator = {
  weight: given('excavator weight', lb(9000), 'stated'),
  length: inch(168),
  balancePoint: inch(60),
  uncertainty: inch(2),
  front: inch(122),
};

/** A skid steer on wheels, weighed with its bucket on, one axle at a time. */
export const skidSteer = {
  frontAxle: given('machine front axle', lb(3700), 'scale'),
  rearAxle: given('machine rear axle', lb(2500), 'scale'),
  wheelbase: inch(44),
  frontFaceToAxle: inch(52),
  axles: [
    { name: 'front', gauge: inch(58), tireWidth: inch(12) },
    { name: 'rear', gauge: inch(58), tireWidth: inch(12) },
  ],
};

/** The empty trailer and the excavator on it, as the seesaw sees them. */
export const emptyTrailer: CoupledItem = { name: 'trailer', weight: trailer.empty, tongue: trailer.emptyTongue };
export const excavatorOnDeck: PlacedItem = {
  name: 'excavator',
  weight: excavator.weight,
  at: given('excavator position', inch(182), 'stated'),
};
export const loaded = orThrow(balance([emptyTrailer, excavatorOnDeck], { axlesAt: trailer.axlesAt }));

/** The yard's own truck: heavy, weighed alone with its driver; the hitch parts were still on the bench. */
export const yardTruck: TowVehicle = {
  hitch: 'ball behind',
  front: given('front axle, truck alone', lb(5150), 'scale'),
  rear: given('rear axle, truck alone', lb(3650), 'scale'),
  gvwr: lb(11800),
  frontGawr: lb(6000),
  rearGawr: lb(9650),
  gcwr: lb(30000),
  wheelbase: inch(176),
  overhang: inch(54),
  hitchHardware: lb(60),
  receiver: { gross: lb(20000), tongue: lb(2000) },
  ballMount: { gross: lb(16000), tongue: lb(1600) },
  ball: { gross: lb(16000) },
  trailerRating: lb(18000),
  tongueRating: lb(1800),
  placard: { limit: lb(4200), people: lb(400), cargo: lb(250) },
};

/** A customer's pickup: a big tow rating in the brochure, a small placard on the door. */
export const pickup = {
  hitch: 'ball behind',
  front: given('front axle, truck alone', lb(3150), 'scale'),
  rear: given('rear axle, truck alone', lb(2550), 'scale'),
  gvwr: lb(7000),
  frontGawr: lb(3750),
  rearGawr: lb(3800),
  gcwr: lb(17000),
  wheelbase: inch(145),
  overhang: inch(50),
  trailerRating: lb(11000),
  placard: { limit: lb(1400), people: lb(400), cargo: lb(150) },
} as const satisfies TowVehicle;

/** What the customer pulls with it: a smaller trailer, loaded. */
export const smallTrailer = {
  gross: given('trailer gross', lb(7500), 'scale'),
  tongue: given('tongue load', lb(950), 'scale'),
  axlesAt: inch(170),
  axleGroup: lb(7000),
};

const places = (digits: number) => `${'0.'.padEnd(digits + 1, '0')}1`;
/** A load in whole pounds, up. */
export const loadUp = ({ value }: Derived<'lb'>): string => show(roundLoadUp(value, lb(1)));
/** A capacity in whole pounds, down. */
export const capacityDown = ({ value }: Derived<'lb'>): string => show(roundCapacityDown(value, lb(1)));
/** A length to the nearest tenth of an inch. */
export const inches = ({ value }: Derived<'in'>): string => show(roundNearest(value, inch(places(1))));
/** A share in percent, to the nearest hundredth. */
export const share = ({ value }: Derived<'ratio'>): string =>
  show(roundNearest(convert(value, '%'), percent(places(2))));
/** A plain number, to the nearest hundredth. */
export const number = ({ value }: Derived<'ratio'>): string => show(roundNearest(value, ratio(places(2))));

/** Prints one answer: the question in short, the answer in sentences, the working below it. */
export function tell(question: string, answer: readonly string[], ...working: readonly Derived<Unit>[]): void {
  console.log(
    [question, '', ...answer.map((line) => wrapText(line, 80, '  ')), '', 'WORKING', explain(...working)].join('\n'),
  );
}
