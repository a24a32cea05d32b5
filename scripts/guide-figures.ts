/** The figures of the guides, from the same example the guides speak of. */
import { readFileSync } from 'node:fs';
import { type Assessment, assessJson } from '../src/assessment/index.js';
import { sureness } from '../src/choose/index.js';
import { orThrow } from '../src/errors.js';
import {
  beamDiagrams,
  type FigureOptions,
  payloadByLength,
  payloadByShare,
  placementBar,
  ratingBars,
  sectionOutline,
  sharesFrom,
  sideView,
  tornado,
} from '../src/figures/index.js';
import {
  allowableStress,
  beam,
  type Load,
  outlineOf,
  ownWeight,
  publishedSection,
  sectionProperties,
  steelDensity,
} from '../src/members/index.js';
import { type Check, checkLoad, rating, tightest, weight } from '../src/ratings/index.js';
import type { SpecInput } from '../src/spec/index.js';
import { levels, oneAtATime } from '../src/study/index.js';
import { given } from '../src/trace/index.js';
import { inch, ksi, lb, lbf, lbfPerFt } from '../src/units/index.js';

type Draw = (options: FigureOptions) => string;
interface Piece {
  front: string;
}

const spec = (front = '122 in'): unknown => {
  const read = JSON.parse(readFileSync('examples/tilt-deck.json', 'utf8')) as { cargo: Piece[] };
  for (const piece of read.cargo) piece.front = front;
  return read;
};
const now = orThrow(assessJson(spec()));
const forward = orThrow(assessJson(spec('100 in')));

/** Some checks as bars; the tightest of them governs. */
const bars =
  (checks: readonly Check[], more: Parameters<typeof ratingBars>[1] = {}): Draw =>
  (options) =>
    ratingBars({ checks, tightest: tightest(checks) }, { ...options, ...more });
const someOf = ({ checks }: Assessment, ids: RegExp): readonly Check[] => checks.filter(({ id }) => ids.test(id));

/** No share is promised: the whole band of the guideline counts. */
const atAnyShare = orThrow(assessJson({ ...(spec() as object), tongueShare: undefined }));
const shares: Draw = (options) => {
  const data = sharesFrom(atAnyShare);
  if (data === undefined) throw new Error('the example has a payload');
  return payloadByShare(data, options);
};

const rail = orThrow(publishedSection('C8X11.5'));
const formed = orThrow(
  sectionProperties(
    {
      kind: 'formed channel',
      name: 'formed 8 in',
      depth: inch(8),
      flangeWidth: inch('2.25'),
      thickness: inch('0.25'),
      insideRadius: inch('0.375'),
    },
    steelDensity,
  ),
);
const spans = { leftOverhang: inch(30), span: inch(180), rightOverhang: inch(60) };
const loads: readonly Load[] = [
  ownWeight(rail, inch(0), inch(270)),
  { kind: 'spread', name: 'deck', perLength: lbfPerFt(40), from: inch(30), to: inch(270) },
  { kind: 'point', name: 'machine, front', force: lbf(2600), at: inch(90) },
  { kind: 'point', name: 'machine, rear', force: lbf(1900), at: inch(150) },
];
const allowable = orThrow(allowableStress('ASD 1989, non-compact, braced', 'A36'));
const answer = orThrow(beam(spans, loads, { E: ksi(29000), I: rail.Ix, S: rail.Sx, allowable }));

const inWords: Readonly<Record<string, string>> = {
  'cargo.0.front': 'front of the excavator, 2 in',
  'cargo.0.weight': 'its weight, 200 lb',
  'cargo.0.balancePoint': 'its balance point, 2 in',
  'trailer.curb.tongue': 'empty tongue load, 20 lb',
};
const swings = orThrow(
  oneAtATime(
    {
      base: spec() as SpecInput,
      vary: {
        'cargo.0.front': levels('120 in', '124 in'),
        'cargo.0.weight': levels('8,800 lb', '9,200 lb'),
        'cargo.0.balancePoint': levels('58 in', '62 in'),
        'trailer.curb.tongue': levels('500 lb', '540 lb'),
      },
    },
    'left: tongue against ball mount tongue',
  ),
);

const tongueOnTicket = ([1600, 1520, 2000] as const).map((most) =>
  checkLoad(rating('ball mount tongue', lb(most), { part: `${most} lb` }), weight('tongue', lb(1500))),
);

const hitch = someOf(now, /^tow\/(?:receiver|ball|tongue)|^coupler/);
const sure = orThrow(sureness(now));
const whiskers = hitch.flatMap(({ id, limit: { value } }) => {
  const found = sure.checks.find((check) => check.id === id);
  if (found === undefined) return [];
  const most = value.value.toNumber();
  return [{ id, from: 1 - found.most.value.toNumber() / most, to: 1 - found.least.value.toNumber() / most }];
});

/** Each figure by its name. */
export const guideFigures: Readonly<Record<string, Draw>> = {
  plates: (options) => sideView(now, options),
  'three-checks': bars(someOf(forward, /^gvwr$|^axle-1\/gawr$|^tow\/ball-mount\/tongue$/)),
  'payload-by-share': shares,
  tires: bars(now.partChecks.filter(({ id }) => id.startsWith('axle-1/parts'))),
  window: (options) => placementBar(now, options),
  side: (options) => sideView(forward, options),
  truck: bars(someOf(now, /^tow\//)),
  ticket: bars(tongueOnTicket, {
    sure: tongueOnTicket.map(({ id, limit: { value } }) => ({
      id,
      from: 1460 / value.value.toNumber(),
      to: 1540 / value.value.toNumber(),
    })),
  }),
  sections: (options) => sectionOutline([{ ...rail, outline: orThrow(outlineOf(rail)) }, formed], options),
  beam: (options) => beamDiagrams({ spans, loads, answer }, options),
  lines: (options) =>
    tornado(
      {
        what: 'room below 26,001 lb of combination rating',
        unit: 'lb',
        base: 26_001 - 11_500 - 14_000,
        bars: [
          {
            factor: 'truck of 10,000 to 14,000 lb',
            low: 26_001 - 28_000,
            high: 26_001 - 24_000,
            swing: 4000,
          },
          {
            factor: 'trailer of 9,990 to 16,000 lb',
            low: 26_001 - 27_500,
            high: 26_001 - 21_490,
            swing: 6010,
          },
        ],
      },
      options,
    ),
  tornado: (options) =>
    tornado(
      {
        what: 'reserve, tongue against ball mount tongue',
        unit: 'lb',
        base: swings.base,
        bars: swings.bars.map((bar) => ({ ...bar, factor: inWords[bar.factor] ?? bar.factor })),
      },
      options,
    ),
  lengths: (options) =>
    payloadByLength({ rows: now.deckGrowth?.byLength.rows ?? [], gvwr: given('GVWR', lb(14000), 'label') }, options),
  sure: bars(hitch, { sure: whiskers }),
};

/** The files of a figure: for a wide page and for a narrow one, each standing alone. */
export const guideFiles = (name: string, draw: Draw): readonly (readonly [file: string, svg: string])[] => [
  [`${name}.svg`, draw({ idPrefix: name, standalone: true })],
  [`${name}-narrow.svg`, draw({ idPrefix: name, standalone: true, width: 340 })],
];
