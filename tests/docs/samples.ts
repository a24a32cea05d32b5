/** The figures that examples in doc comments speak of by name, chapter by chapter. All invented. */

import { readFileSync } from 'node:fs';
import { assessJson } from '../../src/assessment/index.js';
import { axleSystem } from '../../src/axles/index.js';
import { compare as compareBuilds } from '../../src/choose/index.js';
import { orThrow } from '../../src/errors.js';
import { crestsOf, securementNeed } from '../../src/load/index.js';
import { beam, type Load, publishedSection, statedAllowable } from '../../src/members/index.js';
import { rating } from '../../src/ratings/index.js';
import { federalRules, screen } from '../../src/rules/index.js';
import { decodeLocalRules, type SpecInput } from '../../src/spec/index.js';
import { range, study } from '../../src/study/index.js';
import { readTireDesignation, tireLoadRating } from '../../src/tires/index.js';
import { constant, given, sum } from '../../src/trace/index.js';
import { degree, inch, ksi, lb, lbf, psi, ratio } from '../../src/units/index.js';
import { r1 } from '../load/reference-case.js';

const grossWeight = sum('gross weight', [
  given('trailer weight', lb(3200), 'scale'),
  given('machine weight', lb(9200)),
]);
const gvwr = given('GVWR', lb(10000), 'label');
const axle = (of: string) => orThrow(axleSystem({ beam: lb(5200), tires: { each: lb(2600), count: 2 } }, of));
const tire = (designation: string) => orThrow(tireLoadRating({ designation }, { fitment: 'single', on: 'trailer' }));
const spec = JSON.parse(readFileSync('examples/tilt-deck.json', 'utf8')) as SpecInput;
const text = readFileSync('examples/local-rules.json', 'utf8');
const facts = { 'trailer GVWR': lb(10000), 'overall width': inch(102) };

const c5 = orThrow(publishedSection('C5X6.7'));

const spans = { leftOverhang: inch(0), span: inch(120), rightOverhang: inch(0) };
const loads: readonly Load[] = [{ kind: 'point', name: 'machine', force: lbf(1000), at: inch(40) }];
const allowable = orThrow(statedAllowable(ksi(15), 'stated'));
const answer = orThrow(beam(spans, loads, { E: ksi(29000), I: c5.Ix, S: c5.Sx, allowable }));

export const samples = {
  shared: { grossWeight },
  figures: { spec, c5, beamToDraw: { spans, loads, answer } },
  trace: { share: given('share', ratio('0.12')), curb: given('trailer weight', lb(3200), 'scale') },
  axles: {
    front: { at: given('axle 1 position', inch(187)), system: axle('axle 1') },
    rear: { at: given('axle 2 position', inch(221)), system: axle('axle 2') },
  },
  load: {
    lb2450: given('curb weight', lb(2450), 'scale'),
    share15: constant(ratio('0.15')),
    trailer: r1,
    need: orThrow(securementNeed(lb(9000), 'breaking strength', 'contained')),
    four: Array.from({ length: 4 }, () => ({ wll: lb(6600), runs: 'direct' })),
    crests: orThrow(crestsOf(degree(20), 'straight deck', inch(100))).crests,
    compact: {
      name: 'compact',
      items: [
        { name: 'trailer', weight: lb(3200), at: inch('161.5'), length: inch(300) },
        { name: 'machine', weight: lb(9200), at: inch(171), length: inch(120) },
      ],
    },
    spread: {
      name: 'spread',
      items: [
        { name: 'trailer', weight: lb(3200), at: inch('161.5'), length: inch(300) },
        { name: 'machine', weight: lb(7200), at: inch('169.06'), length: inch(120) },
        { name: 'front box', weight: lb(1000), at: inch(70), length: inch(0) },
        { name: 'rear box', weight: lb(1000), at: inch(286), length: inch(0) },
      ],
    },
    gvwr10000: { name: 'GVWR', on: 'gross', limit: gvwr },
    gvwrOf10000: rating('GVWR', gvwr),
  },
  tires: {
    d: orThrow(readTireDesignation('ST225/75R15 113/108L LRD')),
    designation: orThrow(readTireDesignation('ST225/75R15 LRD')),
    first: tire('ST225/75R15 LRD'),
    second: tire('ST205/75R15 LRC'),
    tires: [{ where: 'axle 1', designation: 'ST225/75R15 LRD', coldPressure: psi(65) }],
  },
  members: {
    member: { E: ksi(29000), I: c5.Ix, S: c5.Sx, allowable: orThrow(statedAllowable(ksi(20), 'an invented figure')) },
    c5,
    c6: orThrow(publishedSection('C6X8.2')),
  },
  rules: {
    text,
    table: orThrow(decodeLocalRules(JSON.parse(text))).stepTables[0],
    facts,
    finding: orThrow(screen(facts, federalRules)).findings[0],
  },
  towing: {
    barsOff: { steer: lb(3845), drive: lb(4955), trailer: lb(11000) },
    truckAlone: { steer: lb(4300), drive: lb(3100) },
    scaleDivision: lb(20),
  },
  spec: { spec, text },
  print: { spec, comparison: orThrow(compareBuilds({ now: spec, next: spec })) },
  assessment: { spec, assessment: orThrow(assessJson(spec)) },
  choose: { spec },
  study: {
    spec,
    s: orThrow(
      study({ base: spec, vary: { 'cargo.0.front': range('100 in', '140 in', 3) }, design: { kind: 'grid' } }),
    ),
  },
};
