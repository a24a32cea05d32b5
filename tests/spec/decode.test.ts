/** What cannot be read is a Left with path, got and needed: never an exception, never a NaN, never a silent pass. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { describeError, wordsFor } from '../../src/errors.js';
import { decodeSpec, readJson, specCodec, wordsForProblem } from '../../src/spec/index.js';
import { show } from '../../src/units/index.js';
import { leftOf, rightOf } from '../helpers/either.js';
import { changed, tiltDeck, workingsIn } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

/** The first problem of a spec with one place changed. */
function problem(path: string, value: unknown): { path: string; got: string; needed: string } {
  const error = leftOf(assessJson(changed(tiltDeck(), path, value)));
  if (error.tag !== 'UndecodableSpec') throw new Error(describeError(error));
  return error.problems[0] as { path: string; got: string; needed: string };
}

describe('text that is not JSON', () => {
  it.each(['', '{', '{"trailer": }', "{'trailer': {}}", '\u0000', 'undefined', '[1,]', 'NaN'])('%j', (text) => {
    const error = leftOf(readJson(text));
    expect([error.chapter, error.tag]).toEqual(['spec', 'MalformedJson']);
    expect(error.says).toMatch(/unexpected|expected|JSON/i); // what the language says
    expect(error.says).not.toBe('a text that is not JSON');
    expect(wordsFor(error)).toContain('a text in JSON');
  });
  it('of more than a million characters is refused unread; a million are read', () => {
    expect(leftOf(readJson(' '.repeat(1_000_001))).says).toContain('1000001');
    expect(rightOf(readJson(`${' '.repeat(999_998)}{}`))).toEqual({});
    expect(rightOf(readJson('\uFEFF{"trailer":1}'))).toEqual({ trailer: 1 });
  });
  it('may be nested as deep as it likes', () => {
    const deep = '['.repeat(100_000) + ']'.repeat(100_000);
    const read = readJson(deep);
    expect(isLeft(read) || isLeft(decodeSpec(read.right))).toBe(true);
    expect(problem('trailer.gvwr', JSON.parse(`${'{"text":'.repeat(5_000)}1${'}'.repeat(5_000)}`))).toMatchObject({
      path: 'trailer.gvwr',
    });
  });
});

describe('values that are no spec', () => {
  it.each([null, undefined, true, 0, NaN, '', 'trailer', [], [[]], new Date(0), () => 1, Symbol('s'), 10n])(
    '%s',
    (input) => {
      expect(leftOf(assessJson(input))).toMatchObject({ chapter: 'spec', tag: 'UndecodableSpec' });
    },
  );
  it('needs a trailer with a hitch and axles', () => {
    expect(leftOf(decodeSpec({})).problems).toMatchObject([{ path: 'trailer', got: 'nothing' }]);
    expect(leftOf(decodeSpec({ trailer: {} })).problems.map(({ path }) => path)).toEqual([
      'trailer.hitch',
      'trailer.axles',
    ]);
  });
  it('names every place at once', () => {
    const { problems } = leftOf(decodeSpec(changed(changed(tiltDeck(), 'trailer.gvwr', 1), 'cargo.0.weight', 'heavy')));
    expect(problems.map(({ path }) => path).sort()).toEqual(['cargo.0.weight', 'trailer.gvwr']);
  });
});

describe('keys nobody knows', () => {
  it.each([
    ['trailer.gvrw', 'gvwr'],
    ['trailer.axels', 'axles'],
    ['cargo.0.wieght', 'weight'],
    ['trailer.coupler.tounge', 'tongue'],
    ['trailer.axles.1.tires.designaton', 'designation'],
    ['tungueShare', 'tongueShare'],
  ])('%s: the nearest is %s', (path, nearest) => {
    const { path: at, needed } = problem(path, '1 lb');
    expect([at, needed.startsWith(`a known key: ${nearest}`)]).toEqual([path, true]);
  });
  it.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'])(
    '%s is a key like any other',
    (key) => {
      const text = JSON.stringify(tiltDeck()).replace('"trailer":{', `"trailer":{"${key}":{"gvwr":"1 lb"},`);
      expect(leftOf(assessJson(rightOf(readJson(text))))).toMatchObject({
        tag: 'UndecodableSpec',
        path: `trailer.${key}`,
      });
      expect(({} as Record<string, unknown>)['gvwr']).toBeUndefined();
    },
  );
  it('are told back to their fortieth character', () => {
    const key = 'k'.repeat(60);
    expect(problem(`trailer.${key}`, '1 lb').path).toBe(`trailer.${'k'.repeat(40)}`);
    expect(problem('trailer.gvwr', { text: '14,000 lb', [key]: 1 }).needed).toBe(
      `a known key: text, basis (there is "${'k'.repeat(40)}")`,
    );
  });
  it('beside a text are refused too', () => {
    expect(problem('trailer.gvwr', { text: '14,000 lb', bassis: 'label' })).toMatchObject({
      path: 'trailer.gvwr',
      needed: 'a known key: text, basis (there is "bassis")',
    });
    expect(problem('trailer.gvwr', { text: '14,000 lb', basis: 'hearsay' }).needed).toContain(
      'scale, label, published',
    );
    expect(problem('trailer.gvwr', { value: '14000', unit: 'lb', note: 'x' })).toMatchObject({ path: 'trailer.gvwr' });
  });
  it('are not read from a prototype', () => {
    const spec = Object.create(tiltDeck()) as unknown;
    expect(leftOf(assessJson(spec))).toMatchObject({ path: 'trailer' });
  });
});

describe('figures that are none', () => {
  it.each([
    ['trailer.gvwr', 14000, '14000'],
    ['trailer.gvwr', '14000', '"14000"'],
    ['trailer.gvwr', '14.000,5 lb', '"14.000,5 lb"'],
    ['trailer.gvwr', '1e4 lb', '"1e4 lb"'],
    ['trailer.gvwr', '14,000 lb or so', '"14,000 lb or so"'],
    ['trailer.gvwr', '14,000 ft', '"14,000 ft"'],
    ['trailer.gvwr', 'NaN lb', '"NaN lb"'],
    ['trailer.gvwr', 'Infinity lb', '"Infinity lb"'],
    ['trailer.gvwr', null, 'null'],
    ['trailer.gvwr', [], 'a list of 0'],
    ['trailer.gvwr', {}, 'a record'],
    ['trailer.gvwr', '', '""'],
    ['trailer.gvwr', { value: 14000, unit: 'lb' }, 'a record'],
    ['trailer.gvwr', { value: 'NaN', unit: 'lb' }, 'a record'],
    ['trailer.gvwr', { value: '1', unit: 'stone' }, 'a record'],
    ['trailer.axles.0.at', '187 lb', '"187 lb"'],
    ['trailer.axles.0.tires.pressure', '80', '"80"'],
    ['tongueShare', '12 lb', '"12 lb"'],
  ])('%s = %j', (path, value, got) => {
    const found = problem(path, value);
    expect([found.path, found.got, found.needed.length > 5]).toEqual([path, got, true]);
  });
  it('a plain number that was meant as a percentage is told with its sign', () => {
    const share = (value: string) => problem('tongueShare', { value, unit: 'ratio' }).needed;
    expect(share('12')).toBe('a percentage: 12 is 1,200 %; write 12 %');
    expect(share('100')).toBe('a figure from 0.1 % to 99.9 %');
    expect(share('0')).toBe('a figure from 0.1 % to 99.9 %');
  });
  it('points at the character', () => expect(problem('trailer.gvwr', '14,0x0 lb').needed).toContain('at character'));
});

describe('figures outside their range', () => {
  it.each([
    ['cargo.0.weight', '-1 lb', '0 lb', '200,000 lb'],
    ['cargo.0.weight', '200,000.01 lb', '200,000 lb', '0 lb'],
    ['trailer.gvwr', '0.99 lb', '1 lb', '200,000 lb'],
    ['trailer.gvwr', '91 t', '90 t', '1 kg'],
    ['trailer.axles.0.at', '0 in', '187 in', '16 ft'],
    ['trailer.axles.0.tires.pressure', '0 psi', '80 psi', '75 psi'],
    ['tongueShare', '0 %', '10 %', '99.9 %'],
    ['tongueShare', '100 %', '12 %', '0.1 %'],
    ['tongueShare', '-10 %', '0.12', '15 %'],
  ])('%s = %s is refused; %s and %s are not', (path, bad, ...good) => {
    expect(problem(path, bad)).toMatchObject({
      path,
      got: `"${bad}"`,
      needed: expect.stringMatching(/^a figure from /) as string,
    });
    for (const value of good) expect(isLeft(decodeSpec(changed(tiltDeck(), path, value)))).toBe(false);
  });
  it.each([
    ['trailer.axles.0.tires.count', 0],
    ['trailer.axles.0.tires.count', 9],
    ['trailer.axles.0.tires.count', 1.5],
    ['trailer.axles.0.tires.count', '2'],
    ['trailer.chains.count', 3],
  ])('%s = %s is no count', (path, value) => {
    expect(problem(path, value).needed).toMatch(/^a whole number from /);
  });
  it.each([
    ['trailer.hitch', 'balls'],
    ['trailer.sharing', 'equal'],
    ['trailer.axles.0.tires.fitment', 'triple'],
  ])('%s = %s is not one of the words', (path, value) => {
    expect(problem(path, value).needed).toMatch(/^one of "/);
  });
  it.each(['', 'x'.repeat(201), 'two\nlines', 'tab\there', '\u001b[31m', 7, null])('a name of %j is none', (value) => {
    expect(problem('cargo.0.name', value).needed).toBe('a text of 1 to 200 characters, on one line');
  });
});

describe('facts that contradict each other', () => {
  const refused = (path: string, value: unknown) => leftOf(assessJson(changed(tiltDeck(), path, value)));
  it('no axles', () => expect(refused('trailer.axles', [])).toMatchObject({ chapter: 'spec', path: 'trailer.axles' }));
  it('a GAWR above its beam, in words', () => {
    expect(describeError(refused('trailer.axles.1.beam', '6,999 lb'))).toBe(
      'trailer.axles.1.gawr: this is 7,000 lb; it must be at most 6,999 lb, the rating of its beam; ' +
        'trailer.axles.1.beam: this is 6,999 lb for the axle; it must be at least 7,000 lb, the GAWR on the label',
    );
  });
  it('a tongue heavier than the trailer, whether or not the rest can be balanced', () => {
    for (const spec of [
      tiltDeck(),
      changed(tiltDeck(), 'trailer.axles.0.at', undefined),
      changed(tiltDeck(), 'cargo.0.front', undefined),
    ]) {
      expect(leftOf(assessJson(changed(spec, 'trailer.curb.tongue', '3,651 lb')))).toMatchObject({
        chapter: 'spec',
        path: 'trailer.curb.tongue',
      });
    }
  });
  it('a trailer and cargo of no weight', () => {
    expect(
      leftOf(assessJson(changed(changed(tiltDeck(), 'trailer.curb', { weight: '0 lb', tongue: '0 lb' }), 'cargo', []))),
    ).toMatchObject({ tag: 'UndecodableSpec', path: 'trailer.curb.weight' });
    const air = { items: [{ name: 'air', weight: '0 lb', at: '10 in' }] };
    const { weights, notChecked } = rightOf(assessJson(changed(tiltDeck(), 'trailer.curb', air)));
    expect(weights.gross).toBeUndefined();
    expect(notChecked.find(({ id }) => id === 'gross')?.paths).toContain('trailer.curb.items');
  });
  it('local rules that are a list in a hundred thousand lists', () => {
    const deep = JSON.parse('['.repeat(100_000) + ']'.repeat(100_000)) as unknown;
    expect(leftOf(assessJson(changed(tiltDeck(), 'rules.local', deep)))).toMatchObject({
      chapter: 'spec',
      path: 'rules.local',
    });
  });
  it('a channel formed of next to nothing', () => {
    const member = {
      formedChannel: {
        depth: '6 in',
        flangeWidth: '2 in',
        thickness: `0.${'0'.repeat(60)}1 in`,
        insideRadius: '3/16 in',
        material: 'steel',
      },
    };
    expect(
      leftOf(
        assessJson(
          changed(tiltDeck(), 'trailer.curb', {
            frame: [{ name: 'rails', member, length: '20 ft', count: 2, from: '48 in' }],
          }),
        ),
      ),
    ).toMatchObject({
      tag: 'UndecodableSpec',
      path: expect.stringMatching(/^trailer\.curb\.frame/),
      problems: [{ needed: expect.stringContaining('from 0.01 in') }],
    });
  });
  it('a figure without its unit, in words that say so', () => {
    const needed = (path: string, value: unknown): string => {
      const error = leftOf(assessJson(changed(tiltDeck(), path, value)));
      return error.tag === 'UndecodableSpec' ? error.problems[0]!.needed : error.tag;
    };
    expect(needed('trailer.gvwr', '14000')).toBe('the unit, e.g. "14,000 lb"');
    expect(needed('trailer.axles.0.tires.pressure', 80)).toBe('the unit, e.g. "80 psi"');
    expect(describeError(leftOf(assessJson(changed(tiltDeck(), 'trailer.gvwr', '9990'))))).toBe(
      'trailer.gvwr: "9990" has no unit; write the unit, e.g. "9,990 lb"',
    );
  });
});

describe('kilograms', () => {
  it('are read as kilograms wherever they are written, never guessed', () => {
    const metric = rightOf(assessJson(changed(tiltDeck(), 'cargo.0.weight', '4082.33133 kg')));
    expectReplays(...workingsIn(metric));
    expect(show(metric.weights.gross?.value ?? (metric.checks[0]?.load.value as never))).toBe('12,650 lb');
    const slip = rightOf(assessJson(changed(tiltDeck(), 'cargo.0.weight', '9,000 kg')));
    expect(slip.verdict !== 'over').toBe(false);
  });
});

describe('a key in the wrong record', () => {
  it.each([
    ['trailer.gawr', '7,000 lb', 'trailer.axles[]'],
    ['gvwr', '14,000 lb', 'trailer, tow'],
    ['trailer.axles.0.tongue', '900 lb', 'trailer.curb, trailer.coupler, tow.receiver'],
    ['cargo.0.gcwr', '30,000 lb', 'tow'],
    ['trailer.cargo', [], 'the spec itself, tow.placard'],
    ['trailer.curb.frame.0.gawr', '7,000 lb', 'trailer.axles[]'],
  ])('%s belongs to another', (path, value, homes) => {
    const [first] = leftOf(decodeSpec(changed(tiltDeck(), path, value))).problems;
    expect(first).toMatchObject({ path, fault: 'misplaced key', needed: homes });
  });
  it('is told in one sentence', () => {
    const { problems } = leftOf(decodeSpec(changed(tiltDeck(), 'trailer.gawr', '7,000 lb')));
    expect(problems.map(wordsForProblem)).toEqual([
      'the key "gawr" does not belong here; it belongs to trailer.axles[]',
    ]);
  });
});

describe('a prototype that somebody has written into', () => {
  const polluted: Readonly<Record<string, unknown>> = {
    gvwr: '1 lb',
    text: '5 lb',
    basis: 'scale',
    unit: 'lb',
    value: '7',
    trailer: { hitch: 'ball' },
    why: { kind: 'given' },
    at: '1 in',
    weight: '1 lb',
    spacing: '1 in',
    says: 'nothing',
    fault: 'none',
    name: 'nobody',
  };
  it('neither feeds the reader nor breaks it', () => {
    const bad = changed(tiltDeck(), 'trailer.gvwr', { text: '14,000 lb', bassis: 'label' });
    const bare = changed(changed(tiltDeck(), 'trailer.gvwr', undefined), 'name', undefined);
    const read = (): readonly unknown[] =>
      [tiltDeck(), bare, bad, {}, { trailer: {} }].map((spec) => {
        const found = decodeSpec(spec);
        return isLeft(found) ? found.left.problems : specCodec.encode(found.right);
      });
    const clean = JSON.stringify(read());
    const prototype = Object.prototype as Record<string, unknown>;
    for (const [key, value] of Object.entries(polluted))
      Object.defineProperty(prototype, key, { value, configurable: true, writable: true });
    const dirty: unknown[] = [];
    try {
      dirty.push(JSON.stringify(read()));
      const again = decodeSpec(bare);
      dirty.push(isLeft(again) ? again.left : [again.right.name, again.right.trailer.gvwr]);
    } finally {
      for (const key of Object.keys(polluted)) delete prototype[key];
    }
    expect(dirty).toEqual([clean, [undefined, undefined]]);
  });
});
