/**
 * "What do I torque these lugs to? And what bolt pattern do I have? I cannot measure across a five-lug."
 *
 * The charts disagree, so both are shown. A bolt circle follows from two neighbouring studs; it says which wheel goes on and
 * nothing of what the axle carries.
 */
import assert from 'node:assert/strict';
import { boltCircle, retorqueAfterMiles, usualHub, wheelNutTorque } from '../../src/axles/index.js';
import { orThrow } from '../../src/errors.js';
import { inch, lb, show } from '../../src/units/index.js';
import { inches, tell } from './yard.js';

const { charts, disagree } = orThrow(wheelNutTorque('16 in and 16.5x6.75', '9/16'));
const five = orThrow(boltCircle(inch('2.645'), 5));
const eight = orThrow(boltCircle(inch('2.487'), 8));
const { row: hub } = orThrow(usualHub(lb(7000)));
const circles = hub.boltCircles.map(
  ({ circle, grade }) => `${circle} (${grade === 'memory' ? 'from memory' : `grade ${grade}`})`,
);
const lines = charts.flatMap(({ chart, final }) =>
  final ? [`- chart ${chart}: ${show(final.low.value)} to ${show(final.high.value)}`] : [],
);

tell(
  'What lug torque, and which bolt pattern?',
  [
    'For 16 in wheels on 9/16 studs the charts print:',
    ...lines,
    `${disagree ? "They disagree: the wheel maker's own figure decides. " : ''}Dry threads, crosswise, in stages, and again after ${retorqueAfterMiles.join(', ')} miles.`,
    `Two neighbouring studs 2.645 in apart on a five-lug hub: a circle of ${inches(five)}. On the TD-14, eight studs 2.487 in apart: ${inches(eight)}.`,
    `7,000 lb axles usually have ${circles.join(' or ')}. The pattern says which wheel fits, never what the hub may carry.`,
  ],
  ...charts.flatMap(({ final }) => (final ? [final.low, final.high] : [])),
  five,
  eight,
);

assert.deepEqual(lines, [
  '- chart a: 120 lbf\u00b7ft to 130 lbf\u00b7ft',
  '- chart b: 90 lbf\u00b7ft to 120 lbf\u00b7ft',
]);
assert.deepEqual([inches(five), inches(eight), disagree], ['4.5 in', '6.5 in', true]);
