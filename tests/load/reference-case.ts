/** The constructed reference case that several tests share: 14,000 lb trailer, 9,200 lb machine. */

import { type Guideline, guideline, type MachineToPlace, type TrailerForPlacing } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { fromMemory, given } from '../../src/trace/index.js';
import { inch, lb, percent } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';

export const band = (low: number, high: number): Guideline =>
  rightOf(guideline(percent(low), percent(high), fromMemory('a band for the test')));

export const r1: TrailerForPlacing = {
  items: [{ name: 'trailer', weight: lb(3200), tongue: lb(480) }],
  axlesAt: inch(190),
  deck: { front: inch(58), rear: inch(298) },
  guideline: band(10, 15),
  tongueLimits: [rating('receiver tongue', lb(1400))],
  axleLimits: [rating('axle group', lb(14000))],
};

export const machine: MachineToPlace = {
  weight: given('machine weight', lb(9200), 'scale', 'cargo.0.weight'),
  length: inch(120),
  balancePoint: inch(52),
  uncertainty: inch(2),
};
