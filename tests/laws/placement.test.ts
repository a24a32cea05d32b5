/** Laws of placing, over random trailers. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  balance,
  heaviestMachine,
  placeForTongueShare,
  placementWindow,
  type TrailerForPlacing,
} from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { compare, convert, inch, lb, percent, type Quantity } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { band } from '../load/reference-case.js';

const trailers = fc.record({
  axlesAt: fc.integer({ min: 120, max: 260 }),
  weight: fc.integer({ min: 1500, max: 5000 }),
  noseShare: fc.integer({ min: 5, max: 15 }),
  hitch: fc.integer({ min: 500, max: 3000 }),
  axles: fc.integer({ min: 7000, max: 20000 }),
  machine: fc.integer({ min: 1000, max: 14000 }),
  share: fc.integer({ min: 5, max: 20 }),
});
type Drawn = typeof trailers extends fc.Arbitrary<infer T> ? T : never;

const build = ({ axlesAt, weight, noseShare, hitch, axles }: Drawn): TrailerForPlacing => ({
  items: [{ name: 'trailer', weight: lb(weight), tongue: lb((weight * noseShare) / 100) }],
  axlesAt: inch(axlesAt),
  deck: { front: inch(50), rear: inch(axlesAt + 110) },
  guideline: band(10, 15),
  tongueLimits: [rating('receiver tongue', lb(hitch))],
  axleLimits: [rating('axle group', lb(axles))],
});
const shape = { length: inch(120), balancePoint: inch(52), uncertainty: inch(0) };
const near = (a: Quantity<'lb'>, b: Quantity<'lb'>): boolean => a.value.minus(b.value).abs().lt('1e-20');

describe('placing', () => {
  it('a place put back into the balance gives its share, and moving never changes the gross', () => {
    fc.assert(
      fc.property(trailers, (drawn) => {
        const trailer = build(drawn);
        const place = rightOf(placeForTongueShare(trailer, lb(drawn.machine), percent(drawn.share)));
        const there = rightOf(
          balance([...trailer.items, { name: 'machine', weight: lb(drawn.machine), at: place.at }], trailer),
        );
        const elsewhere = rightOf(
          balance([...trailer.items, { name: 'machine', weight: lb(drawn.machine), at: inch(100) }], trailer),
        );
        expect(near(there.tongue.value, place.tongue.value)).toBe(true);
        expect(compare(there.gross.value, elsewhere.gross.value)).toBe(0);
      }),
    );
  });
  it('inside the window every limit holds; at its ends the balance agrees', () => {
    fc.assert(
      fc.property(trailers, (drawn) => {
        const trailer = build(drawn);
        const window = rightOf(placementWindow(trailer, { ...shape, weight: lb(drawn.machine) }));
        for (const end of [window.lower, window.upper]) {
          const there = rightOf(
            balance([...trailer.items, { name: 'machine', weight: lb(drawn.machine), at: end.at }], trailer),
          );
          expect(near(there.tongue.value, end.tongue.value)).toBe(true);
          if (!window.empty) {
            expect(there.tongue.value.value.lte(drawn.hitch + 1e-9)).toBe(true);
            expect(there.axleLoad.value.value.lte(drawn.axles + 1e-9)).toBe(true);
            expect(
              there.tongueShare.value.value.gte(0.1 - 1e-12) && there.tongueShare.value.value.lte(0.15 + 1e-12),
            ).toBe(true);
          }
        }
      }),
    );
  });
  it('the heaviest machine has a window that closes; a pound more has none', () => {
    fc.assert(
      fc.property(trailers, (drawn) => {
        const trailer = build(drawn);
        const answer = rightOf(heaviestMachine(trailer, shape));
        fc.pre(answer.exists);
        const at = (weight: Quantity<'lb'>): boolean => rightOf(placementWindow(trailer, { ...shape, weight })).empty;
        expect(at(answer.heaviest.value)).toBe(false);
        expect(at(lb(answer.heaviest.value.value.plus(1)))).toBe(true);
      }),
    );
  });
  it('the unit system does not matter', () => {
    fc.assert(
      fc.property(trailers, (drawn) => {
        const trailer = build(drawn);
        const metric = {
          ...trailer,
          axlesAt: convert(inch(drawn.axlesAt), 'mm'),
          deck: { front: convert(inch(50), 'cm'), rear: convert(inch(drawn.axlesAt + 110), 'm') },
        };
        const plain = rightOf(placementWindow(trailer, { ...shape, weight: lb(drawn.machine) }));
        const other = rightOf(placementWindow(metric, { ...shape, weight: convert(lb(drawn.machine), 'kg') }));
        expect(compare(plain.lower.at.value, other.lower.at.value)).toBe(0);
        expect(compare(plain.upper.at.value, other.upper.at.value)).toBe(0);
      }),
    );
  });
});
