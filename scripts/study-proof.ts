/**
 * The long form of the tests of studies: `npm run study:proof`, or `npm run study:proof -- SEED FRACTIONS ASSESSED`. So many rows of
 * tie-rich grids against fractions of whole numbers, verdict and governing check; so many rows of random designs against `assess`,
 * refusals included: 1,000,000 and 30,000 without counts. Ends in an error at the first design that differs; records the rest.
 */
import {
  againstAssess,
  againstFractions,
  type Compared,
  nothingCompared,
  together,
} from '../tests/oracle/studies/against.js';
import { plainDesign, type RoundDesign, wholeDesign } from '../tests/oracle/studies/round-designs.js';
import { record } from './proof/record.js';

const [seed = 1, fractions = 1_000_000, assessed = 30_000] = process.argv.slice(2).map(Number);

function compare(least: number, one: (design: RoundDesign) => Compared, design: (n: number) => RoundDesign): Compared {
  let all = nothingCompared;
  for (let n = 0; all.rows < least; n += 1) {
    all = together(all, one(design(n)));
    if (all.wrong.length > 0) throw new Error(`design ${n} of seed ${seed}: ${all.wrong.join('\n')}`);
    if (n % 20 === 19) console.log(`${all.rows.toLocaleString('en-US')} rows of ${n + 1} designs`);
  }
  return all;
}

if (fractions > 0) {
  const { rows, answered, tied, exact } = compare(fractions, againstFractions, (n) => plainDesign(seed, n));
  record('studies against fractions', `npm run study:proof -- ${seed} ${fractions} 0`, {
    'rows of tie-rich grids': rows,
    answered,
    'with a tie for the tightest check': tied,
    'decided exactly': exact,
    differences: 0,
  });
}
if (assessed > 0) {
  const whole = (n: number): RoundDesign => wholeDesign(seed + 2, n);
  const { rows, answered, tied } = together(
    compare(
      assessed / 2,
      (design) => againstAssess(design, 1),
      (n) => plainDesign(seed + 1, n),
    ),
    compare(assessed / 2, (design) => againstAssess(design, 1), whole),
  );
  record('studies against assess', `npm run study:proof -- ${seed} 0 ${assessed}`, {
    'rows of random designs': rows,
    answered,
    refused: rows - answered,
    'with a tie for the tightest check': tied,
    differences: 0,
  });
}
