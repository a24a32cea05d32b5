/**
 * "Does it need brakes on both axles, and are these big enough?"
 *
 * Big enough is arithmetic: each brake against half its axle. Required is law: the federal line is printed here, the
 * State's must be asked.
 */
import assert from 'node:assert/strict';
import { brakeCapacity } from '../../src/axles/index.js';
import { orThrow } from '../../src/errors.js';
import { federalRules, findingText, screen } from '../../src/rules/index.js';
import { lb } from '../../src/units/index.js';
import { capacityDown, loaded, loadUp, tell, trailer } from './yard.js';

const pair = [lb(3500), lb(3500)] as const;
const axles = trailer.gawrs.map((gawr, i) => ({ of: `axle ${i + 1}`, gawr, brakes: pair }));
const both = orThrow(brakeCapacity(axles));
const one = orThrow(brakeCapacity(axles.map(({ brakes, ...axle }, i) => (i === 0 ? { ...axle, brakes } : axle))));
const { findings } = orThrow(
  screen(
    {
      commercial: true,
      interstate: true,
      'trailer GVWR': trailer.gvwr,
      'trailer gross': loaded.gross,
      'tow vehicle GVWR': lb(14000),
      'tow vehicle gross': lb(8860),
      'label GCWR': 'not shown',
      'full trailer': false,
      'actual weights within ratings': true,
    },
    federalRules,
  ),
);
const [exception, brakes] = ['brake-3000', 'brake-all'].map((id) => findings.find((finding) => finding.id === id));
const over = (checks: typeof both.checks): number => checks.filter(({ verdict }) => verdict === 'over').length;
assert(brakes && exception);

tell(
  'Are brakes required, and are these big enough?',
  [
    `Brakes on both axles come to ${capacityDown(both.total)} for ${loadUp(both.checks[0]?.load ?? both.total)} of axle rating; ${over(both.checks)} of ${both.checks.length} checks are over.`,
    `Brakes on one axle come to ${capacityDown(one.total)}; ${over(one.checks)} is over. ${one.notes.map(({ says }) => says).join(' ')}`,
    `The published duty for carriers: ${findingText(brakes)}`,
    `Its exception: ${findingText(exception)}`,
    'Private towing follows State law, whose lines start at different weights: ask the State. A rating says nothing of adjustment, heat or the controller.',
  ],
  both.total,
  one.total,
);

assert.deepEqual(
  [capacityDown(both.total), over(both.checks), capacityDown(one.total), over(one.checks)],
  ['14,000 lb', 0, '7,000 lb', 1],
);
assert.equal(brakes.outcome, 'applies');
