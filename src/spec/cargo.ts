/** What lies on the trailer, piece by piece, and what ties it down. */
import { lengthOf, ratingOf, weightOf } from './codec/figures.js';
import type { Coded } from './codec/kind.js';
import { choice, list, shortText, yesOrNo } from './codec/plain.js';
import { record } from './codec/record.js';
import type { CargoInput, DecodedCargo } from './types/cargo.js';

/** A tiedown: what is marked on its weakest part, or a chain or strap by the printed tables. */
const tiedown = record(
  'Tiedown',
  'a tiedown',
  { runs: choice('direct', 'same side', 'other side') },
  {
    marked: ratingOf('marked working load limit'),
    chain: record(
      'Chain',
      'chain by size and grade',
      { size: shortText, grade: choice('30', '43', '70', '80', '100', 'unmarked') },
      {},
    ),
    webbing: shortText,
  },
);

const lowPoint = record(
  'LowPoint',
  'lowest point between the axles',
  { behindFrontAxle: lengthOf('low point behind the front axle'), height: lengthOf('low point height') },
  {},
);

const machineAxle = record(
  'MachineAxle',
  'an axle of the machine on the ramps',
  { gauge: lengthOf('gauge'), tireWidth: lengthOf('tire width', 1) },
  {},
);

/** A piece of cargo. */
export const cargoCodec: Coded<DecodedCargo, CargoInput> = record(
  'Cargo',
  'a piece of cargo',
  { name: shortText, weight: weightOf({ item: 'weight' }) },
  {
    at: lengthOf({ item: 'position' }, -120),
    front: lengthOf({ item: 'front face' }, -120),
    balancePoint: lengthOf({ item: 'balance point' }),
    length: lengthOf({ item: 'length' }, 1),
    width: lengthOf({ item: 'width' }, 1),
    rightOfMiddle: lengthOf('right of the middle', -60),
    uncertainty: lengthOf('uncertainty of the balance point'),
    wheelbase: lengthOf('wheelbase of the machine', 1),
    lowPoint,
    gauges: list('axles of the machine on the ramps', machineAxle, 12),
    axles: list('axle loads of the machine', weightOf('axle load of the machine', 'stated', 1), 12),
    tiedowns: list('tiedowns', tiedown, 100),
    section: choice('general', 'heavy equipment', 'light vehicle'),
    blockedForward: yesOrNo,
  },
);
