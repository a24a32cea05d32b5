/** Random trailers, all invented: one to three axles, any unit, facts left out, round figures so that ties are common. */
import fc from 'fast-check';

type Json = Readonly<Record<string, unknown>>;

const pounds = (least: number, most: number, step: number): fc.Arbitrary<string> =>
  fc.integer({ min: least / step, max: most / step }).map((n) => `${n * step} lb`);
const mass = (least: number, most: number, step: number): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 4, arbitrary: pounds(least, most, step) },
    {
      weight: 1,
      arbitrary: fc.integer({ min: Math.ceil(least / 2.2), max: Math.floor(most / 2.3) }).map((kg) => `${kg} kg`),
    },
  );
const inches = (least: number, most: number): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.integer({ min: least, max: most }).map((n) => `${n} in`) },
    {
      weight: 1,
      arbitrary: fc.integer({ min: Math.ceil(least / 12), max: Math.floor(most / 12) }).map((n) => `${n} ft`),
    },
  );

const tires = fc.record(
  {
    designation: fc.constantFrom('ST235/80R16 LRE', 'ST225/75R15 LRD', 'ST205/75R15 LRC', 'P205/75R15 97S'),
    count: fc.constant(2),
    fitment: fc.constant('single'),
    molded: fc.record(
      { single: pounds(2000, 3600, 20), pressure: fc.constantFrom('65 psi', '80 psi') },
      { requiredKeys: ['single'] },
    ),
    pressure: fc.constantFrom('50 psi', '62 psi', '65 psi', '80 psi'),
  },
  { requiredKeys: ['designation', 'count', 'fitment'] },
);

const axle = fc.record(
  {
    gawr: pounds(3000, 5000, 500),
    beam: pounds(5000, 8000, 500),
    springs: pounds(5000, 8000, 200),
    hubs: mass(5000, 8000, 500),
    wheels: fc.record({ each: pounds(2500, 4000, 250), count: fc.constant(2) }),
    tires,
  },
  { requiredKeys: ['beam'] },
);

const curb = fc.oneof(
  fc.record({ weight: mass(2400, 4400, 50), tongue: pounds(200, 700, 20) }),
  fc.record({
    items: fc.array(
      fc.record({ name: fc.constantFrom('frame', 'deck', 'axles'), weight: mass(400, 1600, 50), at: inches(90, 210) }),
      { minLength: 1, maxLength: 3 },
    ),
  }),
  fc.record({ weight: mass(2400, 4400, 50) }),
);

const cargo = fc.oneof(
  fc.record({ name: fc.constant('machine'), weight: mass(2000, 11000, 100), at: inches(140, 220) }),
  fc.record({
    name: fc.constant('machine'),
    weight: mass(2000, 11000, 100),
    front: inches(90, 140),
    balancePoint: inches(40, 70),
  }),
);

/** A spec that `assess` may or may not answer. */
export const spec: fc.Arbitrary<Json> = fc
  .tuple(
    fc.array(axle, { minLength: 1, maxLength: 3 }),
    fc.integer({ min: 170, max: 230 }),
    fc.integer({ min: 30, max: 40 }),
    fc.boolean(),
    curb,
    fc.array(cargo, { minLength: 1, maxLength: 2 }),
    fc.record(
      {
        gvwr: mass(7000, 16000, 500),
        coupler: fc.record({ gross: pounds(8000, 15000, 1000), tongue: pounds(800, 2000, 200) }, { requiredKeys: [] }),
      },
      { requiredKeys: [] },
    ),
    fc.option(fc.integer({ min: 8, max: 18 }), { nil: undefined }),
  )
  .map(([axles, first, spread, alike, empty, pieces, labels, share]) => ({
    trailer: {
      hitch: 'ball',
      ...labels,
      sharing: 'equalised',
      curb: empty,
      axles: axles.map((each, i) => ({ ...(alike ? axles[0] : each), at: `${first + i * spread} in` })),
    },
    cargo: pieces,
    ...(share === undefined ? {} : { tongueShare: `${share} %` }),
  }));

/** Figures of a spec that may be varied: their paths and texts. */
export function figuresOf(part: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof part === 'string') return /^-?[\d.]+ (lb|kg|in|ft|psi|%)$/.test(part) ? [[path, part]] : [];
  if (typeof part !== 'object' || part === null) return [];
  return Object.entries(part).flatMap(([key, value]) => figuresOf(value, path === '' ? key : `${path}.${key}`));
}

/** A figure of a spec and the levels it takes on: its own value and some below and above it. */
export const levelsOf = (part: Json): fc.Arbitrary<readonly (readonly [string, readonly string[]])[]> =>
  fc.subarray([...figuresOf(part)], { minLength: 1, maxLength: 3 }).chain((picked) =>
    fc.tuple(
      ...picked.map(([path, text]) => {
        const [digits = '0', unit = ''] = text.split(' ');
        return fc
          .subarray([0.5, 0.8, 0.9, 0.99, 1, 1.01, 1.1, 1.25, 2], { minLength: 2, maxLength: 4 })
          .map(
            (scales) =>
              [path, scales.map((scale) => `${Math.max(1, Math.round(Number(digits) * scale))} ${unit}`)] as const,
          );
      }),
    ),
  );
