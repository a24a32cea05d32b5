/** Runs one mutant after the other, each in a fresh reading of the bundle, and says which test saw it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Script } from 'node:vm';

interface Question {
  readonly mutant: number;
  readonly order: readonly string[] | undefined;
}
interface Globals {
  __mutant: number;
  __runTests: (
    order: readonly string[] | undefined,
  ) => Promise<{ failed?: string; took: Readonly<Record<string, number>> }>;
}

const [bundle = ''] = process.argv.slice(2);
const script = new Script(`(function (require, module, exports) {${readFileSync(bundle, 'utf8')}\n})`, {
  filename: bundle,
});
const run = script.runInThisContext() as (require: unknown, module: unknown, exports: unknown) => void;
const globals = globalThis as unknown as Globals;

process.on('message', ({ mutant, order }: Question) => {
  globals.__mutant = mutant;
  const answer = async (): Promise<object> => {
    try {
      const module = { exports: {} };
      run(createRequire(bundle), module, module.exports);
      return await globals.__runTests(order);
    } catch (problem) {
      return { failed: `loading: ${problem instanceof Error ? problem.message : 'a throw'}`, took: {} };
    }
  };
  void answer().then((said) => process.send?.(said));
});
process.send?.('ready');
