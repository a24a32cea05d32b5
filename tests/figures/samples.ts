/** The figures of the yard's example and a few hard cases, for the snapshots and the pictures. */

import { readFileSync } from 'node:fs';
import { assess, assessJson } from '../../src/assessment/index.js';
import { orThrow } from '../../src/errors.js';
import {
  beamDiagrams,
  type FigureOptions,
  payloadByLength,
  payloadByShare,
  placementBar,
  ratingBars,
  type SharesToDraw,
  sectionOutline,
  sharesFrom,
  sideView,
  tornado,
} from '../../src/figures/index.js';
import { guidelineFor, type LadenLimit } from '../../src/load/index.js';
import {
  allowableStress,
  beam,
  type Load,
  outlineOf,
  ownWeight,
  publishedSection,
  sectionProperties,
  steelDensity,
} from '../../src/members/index.js';
import { levels, oneAtATime } from '../../src/study/index.js';
import { asDerived, given } from '../../src/trace/index.js';
import { inch, ksi, lb, lbf, lbfPerFt, ratio } from '../../src/units/index.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const asItStands = orThrow(assess(tiltDeck()));
const overloaded = orThrow(
  assess(changed(changed(tiltDeck(), 'cargo.0.weight', '11,400 lb'), 'cargo.0.front', '100 in')),
);

/** The ball below level, the machine told by its balance point, tires by their size. */
const offLevel = orThrow(
  assess(
    [
      ['trailer.ballAboveLevel', '-3 in'],
      ['cargo.0.front', undefined],
      ['cargo.0.at', '182 in'],
      ['cargo.0.balancePoint', '60 in'],
    ].reduce((spec, [path, value]) => changed(spec, path as string, value), tiltDeck()),
  ),
);
const placed = (front: string | undefined) => orThrow(assess(changed(tiltDeck(), 'cargo.0.front', front)));
/** So far back that the tongue lifts; and a machine whose place is not told. */
const [lifting, unplaced] = [placed('160.3 in'), placed(undefined)];
/** So heavy that it has no place. */
const nowhere = orThrow(assess(changed(tiltDeck(), 'cargo.0.weight', '13,000 lb')));
/** A gooseneck on duals with an excavator. */
const gooseneck = orThrow(
  assessJson(JSON.parse(readFileSync(new URL('../print/rigs/05-gooseneck-duals.json', import.meta.url), 'utf8'))),
);

const atAnyShare = orThrow(assess(changed(tiltDeck(), 'tongueShare', undefined)));

const rail = orThrow(publishedSection('C8X11.5'));
const formed = orThrow(
  sectionProperties(
    {
      kind: 'formed channel',
      name: 'plate 1/4 in bent to 8 in',
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
  { kind: 'spread', name: 'deck', perLength: lbfPerFt(120), from: inch(30), to: inch(270) },
  { kind: 'point', name: 'machine, front', force: lbf(2600), at: inch(90) },
  { kind: 'point', name: 'machine, rear', force: lbf(1900), at: inch(150) },
];
const answer = orThrow(
  beam(spans, loads, {
    E: ksi(29000),
    I: rail.Ix,
    S: rail.Sx,
    allowable: orThrow(allowableStress('ASD 1989, non-compact, braced', 'A36')),
  }),
);

const swings = orThrow(
  oneAtATime(
    {
      base: tiltDeck(),
      vary: {
        'cargo.0.front': levels('110 in', '134 in'),
        'cargo.0.weight': levels('8,600 lb', '9,400 lb'),
        'cargo.0.balancePoint': levels('58 in', '62 in'),
        'trailer.curb.tongue': levels('480 lb', '560 lb'),
      },
    },
    'left: tongue against ball mount tongue',
  ),
);

const limits: readonly LadenLimit[] = [
  { name: 'GVWR', on: 'gross', limit: given('GVWR', lb(14000), 'label') },
  { name: 'coupler gross', on: 'gross', limit: given('coupler gross', lb(15000), 'label') },
  { name: 'ball', on: 'gross', limit: given('ball', lb(16000), 'label') },
  { name: 'ball mount', on: 'gross', limit: given('ball mount', lb(16000), 'label') },
  { name: 'axles', on: 'axles', limit: given('axles', lb(12000), 'label') },
  { name: 'tires', on: 'axles', limit: given('tires', lb(12400), 'label') },
  { name: 'ball mount tongue', on: 'tongue', limit: given('ball mount tongue', lb(1600), 'label') },
  { name: 'coupler tongue', on: 'tongue', limit: given('coupler tongue', lb(2000), 'label') },
  { name: 'receiver tongue', on: 'tongue', limit: given('receiver tongue', lb(2000), 'label') },
  { name: 'tow vehicle tongue', on: 'tongue', limit: given('tow vehicle tongue', lb(1800), 'label') },
];

/** Each figure by its name. */
export const samples: Readonly<Record<string, (options: FigureOptions) => string>> = {
  placement: (options) => placementBar(asItStands, options),
  'placement-over': (options) => placementBar(overloaded, options),
  'placement-none': (options) => placementBar(nowhere, options),
  'side-view': (options) => sideView(asItStands, options),
  'side-view-over': (options) => sideView(overloaded, options),
  'side-view-metric': (options) => sideView(asItStands, { ...options, units: 'metric' }),
  'side-view-lifting': (options) => sideView(lifting, options),
  'side-view-unplaced': (options) => sideView(unplaced, options),
  'side-view-off-level': (options) => sideView(offLevel, options),
  'side-view-gooseneck': (options) => sideView(gooseneck, options),
  'rating-bars': (options) => ratingBars(asItStands, options),
  'rating-bars-over': (options) => ratingBars(overloaded, { ...options, sure: [{ id: 'gvwr', from: 1.02, to: 1.12 }] }),
  'payload-by-share': (options) =>
    payloadByShare(
      {
        curb: given('trailer weight', lb(3650), 'scale'),
        limits,
        band: guidelineFor('ball'),
        best: given('best', lb(9773)),
        anywhere: given('anywhere', lb(7016)),
        now: { share: given('share', ratio('0.1178')), payload: given('cargo', lb(9000)) },
      },
      options,
    ),
  'payload-by-share-yard': (options) => payloadByShare(sharesFrom(atAnyShare) as SharesToDraw, options),
  'payload-by-share-metric': (options) =>
    payloadByShare(sharesFrom(atAnyShare) as SharesToDraw, { ...options, units: 'metric' }),
  'payload-by-length': (options) => {
    const { deckGrowth, spec } = asItStands;
    return payloadByLength(
      { rows: deckGrowth?.byLength.rows ?? [], gvwr: asDerived('GVWR', spec.trailer.gvwr as never) },
      options,
    );
  },
  'payload-by-length-axles': (options) => {
    const { deckGrowth, spec } = asItStands;
    const rows = deckGrowth?.byLength.rows ?? [];
    return payloadByLength(
      {
        rows,
        gvwr: asDerived('GVWR', spec.trailer.gvwr as never),
        axlePlaces: rows.map((_, i) => `axles ${180 + 6 * i} in`),
      },
      options,
    );
  },
  'tornado-far-from-limit': (options) =>
    tornado(
      {
        what: 'what is left of the tongue rating of the ball mount',
        unit: 'lb',
        base: 1490,
        bars: [
          { factor: 'place of the machine, measured from the coupler to its front', low: 940, high: 1990, swing: 1050 },
          { factor: 'weight', low: 1480, high: 1500, swing: 20 },
        ],
      },
      options,
    ),
  'tornado-plain': (options) =>
    tornado(
      {
        what: 'tongue load',
        unit: 'lb',
        base: 1490,
        wall: 'none',
        bars: [
          { factor: 'place', low: 940, high: 1990, swing: 1050 },
          { factor: 'weight', low: 1480, high: 1500, swing: 20 },
        ],
      },
      options,
    ),
  tornado: (options) => tornado({ what: 'reserve, tongue against ball mount tongue', unit: 'lb', ...swings }, options),
  sections: (options) => sectionOutline([{ ...rail, outline: orThrow(outlineOf(rail)) }, formed], options),
  'sections-hollow': (options) =>
    sectionOutline(
      [
        orThrow(publishedSection('W8X10')),
        orThrow(publishedSection('HSS4X2X1/4')),
        orThrow(publishedSection('L3X3X1/4')),
        orThrow(publishedSection('S5X10')),
      ].map((section) => ({ ...section, outline: orThrow(outlineOf(section)) })),
      options,
    ),
  beam: (options) => beamDiagrams({ spans, loads, answer }, options),
};
