/**
 * The long form of the test of tie-rich grids: `npm run oracle:study [seed] [seconds]`. Against fractions of whole numbers, then
 * against `assess` row by row, until 200,000 rows are compared with `assess`, or the time is over. Ends in an error at the first
 * design that differs.
 */
import {
  againstAssess,
  againstFractions,
  type Compared,
  nothingCompared,
  together,
} from '../tests/study/oracle/against.js';
import { plainDesign, type RoundDesign, wholeDesign } from '../tests/study/oracle/round-designs.js';

const [seed = 1, seconds = 3600] = process.argv.slice(2).map(Number);
const until = Date.now() + seconds * 1000;

function compare(
  title: string,
  least: number,
  share: number,
  one: (design: RoundDesign) => Compared,
  design: (n: number) => RoundDesign,
): void {
  const end = Date.now() + (until - Date.now()) * share;
  let all = nothingCompared;
  let n = 0;
  for (; all.rows < least && Date.now() < end; n += 1) {
    all = together(all, one(design(n)));
    if (all.wrong.length > 0) throw new Error(`design ${n} of seed ${seed}: ${all.wrong.join('\n')}`);
  }
  const { rows, answered, tied } = all;
  console.log(
    `${title}: ${rows.toLocaleString('en-US')} rows of ${n} designs, ${answered.toLocaleString('en-US')} answered, ${tied.toLocaleString('en-US')} with a tie for the tightest check: 0 differences`,
  );
}

console.log(`seed ${seed}, at most ${seconds} s`);
compare('against fractions', 1_000_000, 0.4, againstFractions, (n) => plainDesign(seed, n));
compare(
  'against assess, plain trailer',
  170_000,
  0.7,
  (d) => againstAssess(d, 1),
  (n) => plainDesign(seed + 1, n),
);
compare(
  'against assess, whole example',
  30_000,
  1,
  (d) => againstAssess(d, 1),
  (n) => wholeDesign(seed + 2, n),
);
