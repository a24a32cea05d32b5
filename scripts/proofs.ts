/**
 * The proofs of the questions over whole answers, at length: `npm run proofs -- sureness 100000 SEED`. Prints the seed and every
 * counterexample, records what ran in docs/proof/results.json, and repeats exactly with the same seed.
 */
import { proveBounds } from '../tests/proofs/bounds.js';
import { proveDerivatives } from '../tests/proofs/derivatives.js';
import type { Proof } from '../tests/proofs/proof.js';
import { proveRemedies, proveSmallest } from '../tests/proofs/remedies.js';
import { proveSheets } from '../tests/proofs/sheet.js';
import { proveStock } from '../tests/proofs/stock.js';
import { proveSureness } from '../tests/proofs/sureness.js';
import { record } from './proof/record.js';

/** Each proof, and its size by default. */
const proofs: Readonly<Record<string, readonly [prove: (count: number, seed: number) => Proof, count: number]>> = {
  bounds: [proveBounds, 1000],
  derivatives: [proveDerivatives, 5000],
  remedies: [proveRemedies, 1000],
  sheets: [proveSheets, 500],
  smallest: [proveSmallest, 100],
  stock: [proveStock, 200],
  sureness: [proveSureness, 100_000],
};

const [name = '', counted, seeded = '1'] = process.argv.slice(2);
const chosen = proofs[name];
if (chosen === undefined) {
  console.error(`no such proof; there are ${Object.keys(proofs).join(', ')}`);
  process.exitCode = 2;
} else {
  const [prove, usual] = chosen;
  const [count, seed] = [Number(counted ?? usual), Number(seeded)];
  console.log(`${name} ${count}, seed ${seed}`);
  const { figures, against } = prove(count, seed);
  for (const line of against.slice(0, 20)) console.log(line);
  console.log(figures, `${against.length} against`);
  record(`choose: ${name}, seed ${seed}`, `npm run proofs -- ${name} ${count} ${seed}`, {
    ...figures,
    counterexamples: against.length,
  });
  process.exitCode = against.length === 0 ? 0 : 1;
}
