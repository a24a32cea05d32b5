/** The figures that examples in doc comments speak of by name, chapter by chapter. All invented. */
import { axleSystem } from '../../src/axles/index.js';
import { orThrow } from '../../src/errors.js';
import { rating } from '../../src/ratings/index.js';
import { constant, given, sum } from '../../src/trace/index.js';
import { inch, lb, ratio } from '../../src/units/index.js';
import { readFileSync } from 'node:fs';

const grossWeight = sum('gross weight', [given('trailer weight', lb(3200), 'scale'), given('machine weight', lb(9200))]);
const gvwr = given('GVWR', lb(10000), 'label');
const axle = (of: string) => orThrow(axleSystem({ beam: lb(5200), tires: { each: lb(2600), count: 2 } }, of));

export const samples = {
  shared: { grossWeight },
  trace: { share: given('share', ratio('0.12')), curb: given('trailer weight', lb(3200), 'scale') },
  axles: { front: { at: given('axle 1 position', inch(187)), system: axle('axle 1') }, rear: { at: given('axle 2 position', inch(221)), system: axle('axle 2') } },
  load: {
    lb2450: given('curb weight', lb(2450), 'scale'), share15: constant(ratio('0.15')),
    gvwr10000: { name: 'GVWR', on: 'gross', limit: gvwr }, gvwrOf10000: rating('GVWR', gvwr),
  },
  assessment: { spec: JSON.parse(readFileSync('examples/tilt-deck.json', 'utf8')) as unknown },
};
