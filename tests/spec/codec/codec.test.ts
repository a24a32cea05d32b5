/** A codec knows what it has read from anything else, whatever that is, and never throws over it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cutListCodec, deckCodec } from '../../../src/spec/frame/cut-list.js';
import { decodeSpec, specCodec } from '../../../src/spec/index.js';
import { localRulesCodec } from '../../../src/spec/local/local-rules.js';
import { constant, given, sum } from '../../../src/trace/index.js';
import { inch, lb, ratio } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { tiltDeck } from '../../helpers/specs.js';

const spec = rightOf(decodeSpec(tiltDeck()));
const weighing = (gvwr: unknown): unknown => ({ ...spec, trailer: { ...spec.trailer, gvwr } });
const frame = rightOf(
  cutListCodec.decode([{ name: 'rails', member: 'C6x8.2', length: '20 ft', count: '2', from: '48 in' }]),
);
const counting = (count: unknown): unknown => [{ ...frame[0], count }];
const file = rightOf(localRulesCodec.decode(JSON.parse(readFileSync('examples/local-rules.json', 'utf8'))));
const testing = (condition: unknown): unknown => ({ ...file, rules: [{ ...file.rules[0], all: [condition] }] });

const noFigures: readonly unknown[] = [
  undefined,
  null,
  7,
  '14,000 lb',
  [],
  {},
  { value: lb(1) },
  { why: {} },
  { why: null },
  { value: lb(1), why: null },
  { value: lb(1), why: {} },
  { value: lb(1), why: { kind: 'given' } },
  { value: lb(1), why: { kind: 'given', value: { unit: 'lb' } } },
  { value: { unit: 'lb', value: '1' }, why: given('GVWR', lb(1)).why },
  { value: lb(1), why: { kind: 'computed', operation: 'convert' } },
  { value: lb(1), why: { kind: 'computed', operation: 'convert', of: [] } },
  constant(lb(1)),
  sum('gross', [given('a', lb(1)), given('b', lb(1))]),
];

describe('what was read', () => {
  it('is known again', () => {
    expect(specCodec.is(spec)).toBe(true);
    expect(cutListCodec.is(frame)).toBe(true);
    expect(localRulesCodec.is(file)).toBe(true);
  });
  it.each([
    ['a rating', given('GVWR', lb(14000)), true],
    ['its least', given('GVWR', lb(1)), true],
    ['below its least', given('GVWR', lb('0.99')), false],
    ['above its most', given('GVWR', lb(200001)), false],
    ['of another dimension', given('GVWR', inch(14000)), false],
  ])('a figure: %s', (_, figure, is) => {
    expect(specCodec.is(weighing(figure))).toBe(is);
  });
  it.each([
    [1, true],
    [1000, true],
    [0, false],
    [1001, false],
    ['1.5', false],
  ])('a count of %s', (n, is) => {
    expect(cutListCodec.is(counting(given('number of rails', ratio(n))))).toBe(is);
  });
  it('is no figure without its leaf', () => {
    for (const [i, wrong] of noFigures.entries()) {
      if (wrong !== undefined) expect(specCodec.is(weighing(wrong)), `${i}`).toBe(false);
      expect(cutListCodec.is(counting(wrong)), `${i}`).toBe(false);
    }
    expect(cutListCodec.is(counting(given('number of rails', lb(2))))).toBe(false);
  });
  it('is no list of more or fewer than can be read', () => {
    const [place] = file.jurisdictions;
    const places = (count: number): unknown => ({ ...file, jurisdictions: Array.from({ length: count }, () => place) });
    expect([0, 1, 1000, 1001].map((count) => localRulesCodec.is(places(count)))).toEqual([true, true, true, false]);
    const [table] = file.stepTables;
    const [step] = table?.steps ?? [];
    const steps = (count: number): unknown => ({
      ...file,
      stepTables: [{ ...table, steps: Array.from({ length: count }, () => step) }],
    });
    expect([0, 1, 1000, 1001].map((count) => localRulesCodec.is(steps(count)))).toEqual([false, true, true, false]);
  });
  it('is no area of deck without its surface', () => {
    const area = { name: 'deck', length: '18 ft', width: '83 in', from: '60 in', surface: { floorPlate: '1/8' } };
    const [read] = rightOf(deckCodec.decode([area]));
    expect(deckCodec.is([read])).toBe(true);
    for (const key of Object.keys(read as object))
      expect(deckCodec.is([{ ...read, [key]: undefined }]), key).toBe(key === 'grain');
    for (const wrong of [undefined, null, 'deck', [], {}]) expect(deckCodec.is([wrong])).toBe(false);
  });
  it('is no condition without its line', () => {
    const [condition] = file.rules[0]?.all ?? [];
    expect(localRulesCodec.is(testing(condition))).toBe(true);
    for (const wrong of [undefined, null, 'x', [], {}, { ...condition, line: undefined }, { ...condition, line: 'x' }])
      expect(localRulesCodec.is(testing(wrong)), JSON.stringify(wrong)).toBe(false);
  });
});
