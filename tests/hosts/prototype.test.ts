/** Every key of a spec put on `Object.prototype` by somebody else in the process: nothing of it is read, nothing throws. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { answerOf, assessJson, ruleFindings } from '../../src/assessment/index.js';
import { auditSheet, boundsFrom, compare, dutyOf, fitStock, sureness } from '../../src/choose/index.js';
import { describeError } from '../../src/errors.js';
import { report } from '../../src/print/index.js';
import { keyRows } from '../../src/spec/keys.js';
import { levels, study, toCsv } from '../../src/study/index.js';
import { rightOf } from '../helpers/either.js';
import { tiltDeck } from '../helpers/specs.js';

const keys = [...new Set(keyRows.flatMap(({ rows }): readonly string[] => rows.map(([key]) => key)))];
const bare = { trailer: { hitch: 'ball', axles: [{ gawr: '7,000 lb' }] } };
const tilt = tiltDeck();
const job = { tow: tilt.tow, cargo: tilt.cargo };

/** Everything that is said to a spec, as one text. */
function answersTo(spec: unknown): string {
  const answer = assessJson(spec);
  if (isLeft(answer)) return describeError(answer.left);
  const { right } = answer;
  const outcomes = ruleFindings(right.rules).map(({ id, outcome }) => `${id} ${outcome}`);
  return [report(right), JSON.stringify(answerOf(right)), ...outcomes].join('\n');
}

/** The questions over whole answers, and a small study. */
const questions: Readonly<Record<string, () => unknown>> = {
  study: () => [
    ...toCsv(rightOf(study({ base: tilt, vary: { 'cargo.0.weight': levels('8,000 lb') }, design: { kind: 'grid' } }))),
  ],
  compare: () => rightOf(compare({ a: tilt, b: tilt })).rows.map(({ what }) => what),
  sureness: () => rightOf(sureness(rightOf(assessJson(tilt)))).checks,
  fitStock: () => rightOf(fitStock({ stock: { a: tilt }, ...job } as never)).others.map(({ reason }) => reason),
  dutyOf: () => dutyOf({ trailer: tilt, tow: job.tow, trips: [{ name: 'a', cargo: job.cargo as never, count: 4 }] }),
  boundsFrom: () => rightOf(boundsFrom(bare)).checks,
  auditSheet: () => auditSheet({ gvwr: '14,000 lb', emptyWeight: '3,650 lb', payload: '10,500 lb' }),
};

/** What is said while a key stands on the prototype of all records. */
function polluted(key: string, value: unknown, say: () => string): string {
  Object.defineProperty(Object.prototype, key, { value, configurable: true, writable: true, enumerable: true });
  try {
    return say();
  } catch (thrown) {
    return `throws: ${(thrown as Error).message}`;
  } finally {
    delete (Object.prototype as Record<string, unknown>)[key];
  }
}

describe.each([
  ['a record', {}],
  ['a list', []],
  ['a text', '1 lb'],
] as const)('each key as %s on the prototype', (kind, value) => {
  const specs = kind === 'a record' ? { tilt, bare } : { bare };
  it.each(Object.entries(specs))('%s is answered as before', { timeout: 300_000 }, (_, spec) => {
    const before = answersTo(spec);
    expect(keys.length).toBeGreaterThan(150);
    expect(keys.filter((key) => polluted(key, value, () => answersTo(spec)) !== before)).toEqual([]);
  });
});

it.each(Object.entries(questions))(
  '%s is answered as before with tow, cargo, at on the prototype',
  (_, ask) => {
    const say = (): string => JSON.stringify(ask());
    const before = say();
    for (const [key, value] of Object.entries({ tow: {}, cargo: [], at: {} }))
      expect(polluted(key, value, say), key).toBe(before);
  },
  300_000,
);
