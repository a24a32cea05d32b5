/**
 * "It says 14,000 on the label. So I can put 14,000 pounds on it? Or more, since the truck carries the tongue?"
 *
 * The label is the whole laden trailer. What it may carry is the least of what every limit leaves after the empty weight.
 */
import assert from 'node:assert/strict';
import { auditSheet } from '../../src/choose/index.js';
import { orThrow } from '../../src/errors.js';
import { payload, payloadClaim } from '../../src/load/index.js';
import { rating } from '../../src/ratings/index.js';
import { given, sum } from '../../src/trace/index.js';
import { ratio } from '../../src/units/index.js';
import { capacityDown, loadUp, share, tell, trailer } from './yard.js';

const onTongue = given('tongue share', ratio('0.12'), 'stated');
const { anywhere } = orThrow(
  payload(trailer.empty, { low: onTongue, high: onTongue }, [
    { name: 'GVWR', on: 'gross', limit: trailer.gvwr },
    { name: 'axles', on: 'axles', limit: sum('axles together', trailer.gawrs) },
    { name: 'coupler gross', on: 'gross', limit: trailer.coupler.gross },
    { name: 'coupler tongue', on: 'tongue', limit: trailer.coupler.tongue },
  ]),
);
assert(anywhere);
const { weight: most, governing, limits } = anywhere;
const claim = payloadClaim(trailer.empty, onTongue, rating('GVWR', trailer.gvwr));

// A sheet that was sent along: does it agree with itself?
const sent = { gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,500 lb' };
const { conflicts } = orThrow(auditSheet(sent));

tell(
  'How much can it carry?',
  [
    `${capacityDown(most)}, set by ${governing.map(({ name }) => name).join(' and ')}, with ${share(onTongue)} of the gross weight on the tongue.`,
    ...limits.map(({ name, limit }) => `- by ${name}: ${capacityDown(limit)}`),
    `Adding the tongue load on top, as some sellers do, claims ${loadUp(claim.claimed)}. Loaded so, it would weigh ${loadUp(claim.gross)}: ${claim.check.verdict} its GVWR by the tongue load.`,
    ...conflicts.flatMap(({ arithmetic }) =>
      arithmetic.map((line) => `A sheet that prints ${sent.payload} cannot be right: ${line}.`),
    ),
    'Tires, wheels, hubs and the truck may allow less: assess() asks them all in one call.',
  ],
  most,
  claim.gross,
);

assert.deepEqual([capacityDown(most), governing.map(({ name }) => name)], ['10,350 lb', ['GVWR']]);
assert.deepEqual(
  conflicts.map(({ figures }) => figures.map(({ path }) => path).join()),
  ['gvwr,emptyWeight,payload'],
);
assert.deepEqual([loadUp(claim.claimed), claim.check.verdict], ['12,030 lb', 'over']);
