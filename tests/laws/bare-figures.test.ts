/** What a bare figure is taken to rest on where it is handed over: a rating on its label, a pass on its scale, an own bound on an estimate. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { axleSystem, brakeCapacity } from '../../src/axles/index.js';
import { capacity, checkPart, rating } from '../../src/ratings/index.js';
import {
  addedWeightLimit,
  coupledAxleLoad,
  federalRules,
  gcwrByDefinition,
  largestRatedCargo,
  placardLoadLeft,
  screen,
  surgeBrakes,
} from '../../src/rules/index.js';
import { estimateLoadAtPressure, tireLoadAsRun } from '../../src/tires/index.js';
import {
  couplerChecks,
  europeanCoupling,
  hitchedAxleLoads,
  hitchTestForces,
  jackLoad,
  largestTrailer,
  readScaleTickets,
  scaleDivision,
  towChecks,
  weakestHitchPart,
} from '../../src/towing/index.js';
import { given } from '../../src/trace/index.js';
import { inch, lb, psi, quantity, ratio } from '../../src/units/index.js';
import { basesIn } from '../helpers/bases.js';

const tire = { designation: 'ST225/75R15 117/112N LRE', molded: { single: lb(2830), pressure: psi(80) } };
const right = (asked: Either<unknown, unknown>): unknown => {
  if (isLeft(asked)) throw new Error(JSON.stringify(asked.left));
  return asked.right;
};

const questions: readonly (readonly [string, () => unknown, Readonly<Record<string, string>>])[] = [
  [
    'a rating and a component',
    () => checkPart(capacity('tires', lb(5080)), rating('GAWR', lb(5200))),
    { tires: 'label', GAWR: 'label' },
  ],
  [
    'the parts of an axle',
    () => right(axleSystem({ gawr: lb(5200), beam: lb(5300), tires: { each: lb(2700), count: 2 } }, 'axle 1')),
    { 'axle 1 GAWR': 'label', 'axle 1 beam': 'label', 'axle 1 each of tires': 'label' },
  ],
  [
    'brakes',
    () => right(brakeCapacity([{ of: 'axle 1', gawr: lb(7000), brakes: [lb(3500), lb(3400)] }])),
    { 'axle 1 GAWR': 'label', 'axle 1 left brake': 'label', 'axle 1 right brake': 'label' },
  ],
  [
    'a molded tire as it is run',
    () => right(tireLoadAsRun(tire, { fitment: 'single', on: 'trailer' }, psi(80))),
    { 'molded load, single': 'label', 'molded pressure': 'label' },
  ],
  [
    'a molded tire on a dual wheel',
    () =>
      right(
        tireLoadAsRun(
          { ...tire, molded: { ...tire.molded, dual: lb(2470) } },
          { fitment: 'dual', on: 'trailer' },
          psi(80),
        ),
      ),
    { 'molded load, dual': 'label' },
  ],
  [
    'an estimate between printed pressures',
    () => right(estimateLoadAtPressure('ST225/75R15', { load: lb(2540), pressure: psi(65) }, psi(50))),
    {
      'rated load': 'label',
      'rated pressure': 'label',
      'load-pressure exponent': 'estimated',
      'cold pressure': 'stated',
    },
  ],
  [
    'coupler and chains',
    () =>
      right(
        couplerChecks({
          gross: lb(12400),
          tongue: lb(1400),
          coupler: { gross: lb(14000), tongue: lb(1400) },
          chains: { each: lb(18000), count: 2 },
        }),
      ),
    {
      'coupler gross': 'label',
      'coupler tongue': 'label',
      'breaking strength of one chain': 'label',
      'trailer gross': 'stated',
      'tongue load': 'stated',
    },
  ],
  [
    'a coupling of European marking',
    () =>
      right(
        europeanCoupling({
          plate: { d: quantity(20, 'kN'), s: lb(300) },
          towVehicle: lb(7000),
          trailer: lb(7000),
          tongue: lb(200),
        }),
      ),
    {
      'S on the plate': 'label',
      'D on the plate': 'label',
      'T, tow vehicle': 'label',
      'R, trailer': 'label',
      'tongue load': 'stated',
    },
  ],
  [
    'a tow vehicle',
    () =>
      right(towChecks({ hitch: 'ball behind', gcwr: lb(11000), front: lb(2400), rear: lb(2100) }, { gross: lb(7500) })),
    { GCWR: 'label' },
  ],
  [
    'the largest trailer',
    () =>
      right(
        largestTrailer({
          vehicle: { hitch: 'ball behind', front: lb(3100), rear: lb(3100), overhang: 'unknown', rearGawr: lb(4000) },
          tongueShare: ratio('0.1'),
        }),
      ),
    { 'tow vehicle rear GAWR': 'label', 'overhang over wheelbase, bound': 'estimated' },
  ],
  [
    'the weakest part of a hitch',
    () => right(weakestHitchPart([{ part: 'ball', rating: lb(6000) }])),
    { 'ball rating': 'label' },
  ],
  [
    'a jack',
    () =>
      right(
        jackLoad({
          tongue: lb(1400),
          jackBehindBall: inch(20),
          axlesAt: inch(190),
          rating: lb(2000),
          margin: ratio(1),
        }),
      ),
    { 'jack rating': 'label' },
  ],
  [
    'scale tickets',
    () =>
      right(
        readScaleTickets({
          tickets: {
            barsOff: { steer: lb(3845), drive: lb(4955), trailer: lb(11000) },
            truckAlone: { steer: lb(4300), drive: lb(3100) },
            trailerAlone: lb(12400),
          },
          division: scaleDivision,
        }),
      ),
    {
      'steer, alone': 'scale',
      'drive, alone': 'scale',
      'steer, bars off': 'scale',
      'drive, bars off': 'scale',
      'trailer alone': 'scale',
      'trailer axles, bars off': 'scale',
    },
  ],
  [
    'the test forces of a hitch',
    () => right(hitchTestForces(lb(5000), 'weight carrying')),
    { 'trailer gross weight rating': 'label' },
  ],
  [
    'the rating of a combination',
    () =>
      right(
        gcwrByDefinition({
          powerUnit: { gvwr: lb(9900), gross: lb(9000) },
          towed: [{ gvwr: lb(7000), gross: lb(7600) }],
          labelGcwr: lb(17000),
        }),
      ),
    {
      'tow vehicle GVWR': 'label',
      'tow vehicle gross': 'stated',
      'trailer GVWR': 'label',
      'trailer gross': 'stated',
      'label GCWR': 'label',
    },
  ],
  [
    'surge brakes',
    () => right(surgeBrakes({ gvwr: lb(10500), gross: lb(9000) }, lb(6000))),
    { 'trailer GVWR': 'label', 'tow vehicle GVWR': 'label' },
  ],
  ['added weight', () => right(addedWeightLimit(lb(5000))), { 'trailer GVWR': 'label' }],
  [
    'a coupled trailer',
    () => right(coupledAxleLoad({ gvwr: lb(7000), tongueShare: ratio('0.1'), sumOfGawrs: lb(7000) })),
    { GVWR: 'label', 'sum of GAWRs': 'label', 'tongue share': 'stated' },
  ],
  [
    'the cargo a trailer is rated for',
    () => right(largestRatedCargo({ gvwr: lb(15000), unloaded: lb(8600), seats: 0 })),
    { GVWR: 'label', 'unloaded weight': 'stated', seats: 'published' },
  ],
  [
    'what a placard leaves',
    () => right(placardLoadLeft(lb(1400), [lb(150)])),
    { 'placard load': 'label', 'occupant 1': 'stated' },
  ],
  [
    'a screening',
    () => right(screen({ 'trailer GVWR': lb(12000), 'trailer gross': lb(9000) }, federalRules)),
    { 'trailer GVWR': 'label', 'trailer gross': 'stated' },
  ],
  [
    'a front axle over its rating',
    () => {
      const vehicle = {
        hitch: 'ball behind',
        front: lb(3500),
        rear: lb(3100),
        overhang: inch(50),
        wheelbase: inch(130),
      } as const;
      return right(
        largestTrailer({ vehicle: { ...vehicle, frontGawr: lb(3400), gcwr: lb(15000) }, tongueShare: ratio('0.1') }),
      );
    },
    { 'tow vehicle front GAWR': 'label' },
  ],
];

describe('bare figures', () => {
  it.each(questions)('of %s', (_, ask, wanted) => {
    expect(basesIn(ask())).toMatchObject(wanted);
  });
  it('that come with their basis keep it', () => {
    const scaled = rating('GVWR', given('GVWR', lb(7000), 'estimated'));
    expect(basesIn(scaled)).toEqual({ GVWR: 'estimated' });
    const hitched = right(
      hitchedAxleLoads({
        hitch: 'ball behind',
        front: given('front', lb(3000), 'scale'),
        rear: lb(3000),
        overhang: inch(50),
        wheelbase: inch(130),
        tongue: lb(500),
      }),
    );
    expect(basesIn(hitched)).toMatchObject({ front: 'scale', 'rear axle, truck alone': 'stated' });
  });
});
