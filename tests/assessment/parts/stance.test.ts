/** Side-to-side share, off-level loads, yaw inertia, ramp settings and the tongue by a beam, in a whole assessment. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { report } from '../../../src/print/index.js';
import { leftOf, plain, rightOf } from '../../helpers/either.js';
import { expectReplays } from '../../helpers/working.js';

/** The constructed reference case: 3,200 lb trailer with 480 lb on the tongue, axles at 190 in, 9,200 lb machine at 171 in. */
const r1 = (trailer: object = {}, cargo: object = {}): unknown => ({
  trailer: {
    hitch: 'ball',
    gvwr: '14,000 lb',
    sharing: 'equalised',
    curb: { weight: '3,200 lb', tongue: '480 lb' },
    axles: [
      { at: '173 in', beam: '7,000 lb' },
      { at: '207 in', beam: '7,000 lb' },
    ],
    ...trailer,
  },
  cargo: [{ name: 'machine', weight: '9,200 lb', at: '171 in', ...cargo }],
});
const missing = (spec: unknown): readonly string[] =>
  rightOf(assessJson(spec)).notChecked.map(({ what, missing: fact }) => `${what}: ${fact}`);

describe('spread of weight', () => {
  it('has the radius of gyration of the reference layout, 53.3 in (constructed; plain statics)', () => {
    const { stance: attitude } = rightOf(assessJson(r1({ length: '300 in' }, { length: '120 in' })));
    expect(attitude.yaw && plain(attitude.yaw.radius)).toBeCloseTo(53.3, 1);
    expectReplays(attitude.yaw?.radius as NonNullable<typeof attitude.yaw>['radius']);
  });
  it('says what counts as a point, and names no safe speed', () => {
    const assessment = rightOf(assessJson(r1()));
    expect(assessment.notes.map(({ says }) => says).join()).toContain('for want of a length: trailer, machine');
    expect(report(assessment)).toContain('no safe speed');
  });
});

describe('side to side', () => {
  it('puts half the axle load and the moment over the track on the right, as the ball takes no roll: 5,500 lb + 9,200 lb x 4 in / 80 in (statics)', () => {
    const { stance: attitude } = rightOf(assessJson(r1({ track: '80 in' }, { rightOfMiddle: '4 in' })));
    expect(attitude.sides && plain(attitude.sides.right)).toBeCloseTo(5500 + (9200 * 4) / 80, 9);
    expect(attitude.sides && plain(attitude.sides.left) + plain(attitude.sides.right)).toBeCloseTo(11000, 9);
    // Moments about the left wheels, with the ball's 1,400 lb and the trailer's weight in the middle.
    expect(attitude.sides && plain(attitude.sides.right) * 80).toBeCloseTo(3200 * 40 + 9200 * 44 - 1400 * 40, 6);
  });
  it('divides nothing by an axle load of zero: what stands on the ball alone leaves the sides open', () => {
    const spec = r1(
      { track: '80 in', curb: { weight: '3,200 lb', tongue: '3,200 lb' } },
      { at: '0 in', rightOfMiddle: '4 in' },
    );
    const { stance, verdict, notChecked } = rightOf(assessJson(spec));
    expect([stance.sides, verdict]).toEqual([undefined, 'attention']);
    expect(notChecked.find(({ id }) => id === 'side-to-side')?.missing).toBe('a load on the axles');
  });
  it('asks the tires of the heavier side, and can find them over where the mean is within', () => {
    const tires = {
      designation: 'ST235/80R16 LRE',
      count: 2,
      fitment: 'single',
      molded: { single: '2,800 lb', pressure: '80 psi' },
      pressure: '80 psi',
    };
    const axles = [
      { at: '173 in', beam: '7,000 lb', tires },
      { at: '207 in', beam: '7,000 lb', tires },
    ];
    const { checks, verdict: whole } = rightOf(assessJson(r1({ track: '80 in', axles }, { rightOfMiddle: '4 in' })));
    const verdicts = checks
      .filter(({ what }) => what.startsWith('tire load'))
      .map(({ what, verdict }) => `${verdict}: ${what}`);
    expect(verdicts).toEqual([
      'within: tire load against axle 1 tire',
      'within: tire load against axle 2 tire',
      'over: tire load against axle 1 heavier side tire',
      'over: tire load against axle 2 heavier side tire',
    ]);
    expect(whole).toBe('over');
  });
  it('is open without the track, or without the place of the cargo', () => {
    expect(missing(r1())).toContain('side to side: track of the trailer');
    expect(missing(r1({ track: '80 in' }))).toContain('side to side: how far the cargo stands from the middle');
  });
});

describe('independent axles off level', () => {
  const axles = [
    { at: '173 in', beam: '7,000 lb', rate: '2,000 lb/in' },
    { at: '207 in', beam: '7,000 lb', rate: '2,000 lb/in' },
  ];
  const at = (ballAboveLevel: string) => rightOf(assessJson(r1({ sharing: 'independent', axles, ballAboveLevel })));
  it('loads the rear axle with the ball high and the front axle with the ball low, by k dh (a2 - a1)(a1 + a2) / (a1^2 + a2^2) (statics)', () => {
    const [high, low] = [at('2 in').stance.offLevel, at('-2 in').stance.offLevel];
    const [front, rear] = (high?.loads ?? []).map(plain) as [number, number];
    expect(rear).toBeGreaterThan(front);
    expect((low?.loads ?? []).map(plain)[0]).toBeGreaterThan((low?.loads ?? []).map(plain)[1] as number);
    expect(rear - front).toBeCloseTo((2000 * 2 * 34 * 380) / (173 ** 2 + 207 ** 2), 6);
    expectReplays(...(high?.loads ?? []));
  });
  it('is level at level', () => expect((at('0 in').stance.offLevel?.loads ?? []).map(plain)).toEqual([5500, 5500]));
  it('is open without rates', () =>
    expect(missing(r1({ sharing: 'independent' }))).toContain(
      'independent axles off level: spring rates, and how far the ball stands from level',
    ));
});

describe('ramp settings', () => {
  const setting = { width: '18 in', margin: '1 in', closest: '40 in', widest: '70 in' };
  const ramps = { length: '96 in', height: '34 in', setting };
  it('are 50 to 58 in for a gauge of 54 and a tire of 12 on an 18 in ramp with 1 in beside it (notes on ramps, worked figures)', () => {
    const { loading } = rightOf(assessJson(r1({ ramps }, { gauges: [{ gauge: '54 in', tireWidth: '12 in' }] })));
    expect([loading.setting?.lower.at, loading.setting?.upper.at].map((end) => end && plain(end))).toEqual([50, 58]);
  });
  it('say when no setting serves', () => {
    const gauges = [
      { gauge: '40 in', tireWidth: '12 in' },
      { gauge: '60 in', tireWidth: '12 in' },
    ];
    expect(report(rightOf(assessJson(r1({ ramps }, { gauges }))))).toContain('NO setting serves');
  });
  it('are open without the gauges', () =>
    expect(missing(r1({ ramps }))).toContain('where to set the ramps: gauge and tire width of the machine'));
});

describe('the tongue by a beam and a scale', () => {
  const tongueByLever = { reading: '180 lb', beamTare: '20 lb', pipeToTongue: '1 ft', tongueToScale: '2 ft' };
  it('is three times the reading less the beam for 1 ft and 2 ft (hitch how-to pages): 480 lb', () => {
    const { weights: weighed } = rightOf(assessJson(r1({ curb: { weight: '3,200 lb', tongueByLever } })));
    expect(weighed.balance && plain(weighed.balance.tongue)).toBeCloseTo(1400, 9);
  });
  it('is outranked by a tongue that was weighed', () => {
    const { weights: weighed } = rightOf(
      assessJson(r1({ curb: { weight: '3,200 lb', tongue: '500 lb', tongueByLever } })),
    );
    expect(weighed.balance && plain(weighed.balance.tongue)).toBeCloseTo(1420, 9);
  });
  it('is refused below the weight of the beam, with its place', () => {
    const error = leftOf(
      assessJson(r1({ curb: { weight: '3,200 lb', tongueByLever: { ...tongueByLever, reading: '10 lb' } } })),
    );
    expect([error.tag, error.path]).toEqual(['UndecodableSpec', 'trailer.curb.tongueByLever.beamTare']);
  });
});
