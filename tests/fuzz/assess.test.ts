/** Whatever is done to a spec, `assess` gives a Left or an answer of finite figures, and the report can be written. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { describeError } from '../../src/errors.js';
import { report } from '../../src/print/index.js';
import { changed, tiltDeck, workingsIn } from '../helpers/specs.js';

function pathsOf(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const at = path === '' ? key : `${path}.${key}`;
    return [at, ...pathsOf(inner, at)];
  });
}
const paths = pathsOf(tiltDeck());

const units = ['lb', 'kg', 't', 'in', 'ft', 'mm', 'psi', 'kPa', '%', 'lb/in', '', 'stone'];
const figure = fc
  .tuple(
    fc.oneof(
      fc.integer({ min: -10, max: 300_000 }).map(String),
      fc.double({ min: -1e6, max: 1e6, noNaN: false }).map(String),
      fc.constantFrom('0', '-0', '1', '0.000001', '1e9', 'NaN', ''),
    ),
    fc.constantFrom(...units),
  )
  .map(([digits, unit]) => `${digits} ${unit}`.trim());
const junk = fc.oneof(
  { weight: 6, arbitrary: figure },
  { weight: 2, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      undefined,
      null,
      true,
      0,
      2,
      8,
      [],
      {},
      'ball',
      'gooseneck',
      'independent',
      'dual',
      'unknown',
      'ST225/75R15 LRD',
      'P225/75R15',
      'LT235/85R16 LRE',
    ),
  },
);
const mutations = fc.array(fc.tuple(fc.constantFrom(...paths), junk), { minLength: 1, maxLength: 4 });

/** Changes what can be changed; a path that an earlier change has cut off is left alone. */
function mutated(changes: readonly (readonly [string, unknown])[]): unknown {
  return changes.reduce<Record<string, unknown>>((spec, [path, value]) => {
    try {
      return changed(spec, path, value);
    } catch {
      return spec;
    }
  }, tiltDeck());
}

/** What a hole in a text looks like. (A name may be "NaN lb", and is told back.) */
const unsaid = /\bundefined\b|\[object/;

function expectSound(input: unknown): boolean {
  const answer = assessJson(input);
  if (isLeft(answer)) {
    expect(describeError(answer.left)).not.toMatch(unsaid);
    return false;
  }
  for (const { value, why } of workingsIn(answer.right)) {
    expect(value.value.isFinite(), why.symbol ?? why.kind).toBe(true);
    expect(why.value.value.isFinite()).toBe(true);
  }
  expect(report(answer.right)).not.toMatch(unsaid);
  return true;
}

describe('mutated specs', () => {
  it('one place changed, or a few', () => {
    fc.assert(
      fc.property(mutations, (changes) => {
        expectSound(mutated(changes));
      }),
      { numRuns: 400 },
    );
  });
  it('any JSON at all', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (input) => {
        expectSound(input);
      }),
      { numRuns: 300 },
    );
  });
  it('plausible figures in every place give answers, not only refusals', () => {
    const plausible = fc.tuple(
      fc.integer({ min: 0, max: 30_000 }),
      fc.integer({ min: -120, max: 400 }),
      fc.integer({ min: 1, max: 8_000 }),
      fc.integer({ min: 1, max: 220 }),
      fc.integer({ min: 1, max: 100 }),
    );
    let answers = 0;
    fc.assert(
      fc.property(plausible, ([cargo, front, curb, at, psi]) => {
        const spec = (
          [
            ['cargo.0.weight', `${cargo} lb`],
            ['cargo.0.front', `${front} in`],
            ['trailer.curb', { weight: `${curb} lb`, tongue: `${curb / 10} lb` }],
            ['trailer.axles.0.at', `${at} in`],
            ['trailer.axles.0.tires.pressure', `${psi} psi`],
          ] as const
        ).reduce((so, [path, value]) => changed(so, path, value), tiltDeck());
        if (expectSound(spec)) answers += 1;
      }),
      { numRuns: 150 },
    );
    expect(answers).toBeGreaterThan(75);
  });
});
