/** Ids of checks: one each, made of a closed alphabet, the same whatever the figures; and the keys a check rests on. */
import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assess, assessJson } from '../../src/assessment/index.js';
import { specKeys } from '../../src/spec/index.js';
import { pathsBehind } from '../../src/trace/index.js';
import { rightOf } from '../helpers/either.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { changed, heavier, tiltDeck } from '../helpers/specs.js';
import { spec as randomSpec } from '../study/random-specs.js';

const withBars = changed(changed(tiltDeck(), 'tow.bars', { restore: '50 %' }), 'trailer.ballAboveLevel', '1.5 in');
const independent = changed(withBars, 'trailer.sharing', 'independent');
const rated = ['trailer.axles.0.rate', 'trailer.axles.1.rate'].reduce(
  (spec, path) => changed(spec, path, '2,200 lb/in'),
  independent,
);
const noGawr = changed(heavier(), 'trailer.axles.0.gawr', undefined);
const examples: Readonly<Record<string, unknown>> = {
  'tilt deck': tiltDeck(),
  'one class up': heavier(),
  'with bars': withBars,
  'independent, with bars, off level': rated,
  'no GAWR': noGawr,
};
const idsOf = ({ checks, partChecks }: Assessment): readonly string[] => [...checks, ...partChecks].map(({ id }) => id);
const form = /^[a-z0-9-]+(\/[a-z0-9-]+)*(@[a-z0-9-]+(\+[a-z0-9-]+)*)?$/;

describe('the ids of checks', () => {
  it.each(Object.entries(examples))('are one each: %s', (_, spec) => {
    const ids = idsOf(rightOf(assessJson(spec)));
    expect(ids.length).toBeGreaterThan(25);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !form.test(id))).toEqual([]);
  });
  it('are one each in random specs, and hang on the questions alone, not on the figures', () => {
    fc.assert(
      fc.property(randomSpec, (spec) => {
        const answer = assessJson(spec);
        if (isLeft(answer)) return;
        const ids = idsOf(answer.right);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 200 },
    );
    const lighter = rightOf(assessJson(changed(withBars, 'cargo.0.weight', '4,000 kg')));
    expect(idsOf(lighter)).toEqual(idsOf(rightOf(assessJson(withBars))));
  });
  it('are those that a program was told', () => {
    const ids = idsOf(rightOf(assessJson(rated)));
    for (const id of [
      'gvwr',
      'axle-1/gawr',
      'axle-2/tire',
      'axle-1/heavier-side/tire',
      'axle-1/parts/beam',
      'axle-1/left/brake-capacity',
      'brake-capacity',
      'coupler/tongue',
      'chains@each',
      'tow/receiver/tongue',
      'tow/front-gawr@bars-on',
      'axle-1/gawr@bars-on',
      'jack',
      'ramps/machine',
    ])
      expect(ids, id).toContain(id);
    expect(idsOf(rightOf(assessJson(noGawr)))).toContain('axle-1/weakest-part');
  });
});

describe('the keys a check rests on', () => {
  const { checks } = rightOf(assessJson(tiltDeck()));
  const keysOf = (wanted: string): readonly string[] =>
    checks.filter(({ id }) => id === wanted).flatMap(({ limit, load }) => [...pathsBehind([limit, load])]);
  it('are those of its limit and its load, each once', () => {
    expect([...keysOf('gvwr')].sort()).toEqual(['cargo.0.weight', 'trailer.curb.weight', 'trailer.gvwr']);
    expect([...keysOf('coupler/tongue')].sort()).toEqual([
      'cargo.0.balancePoint',
      'cargo.0.front',
      'cargo.0.weight',
      'trailer.axles.0.at',
      'trailer.axles.1.at',
      'trailer.coupler.tongue',
      'trailer.curb.tongue',
      'trailer.curb.weight',
    ]);
  });
});

describe('open questions', () => {
  const paths = (value: unknown, path = ''): readonly string[] =>
    typeof value !== 'object' || value === null
      ? []
      : Object.entries(value).flatMap(([key, inner]) => {
          const at = path === '' ? key : `${path}.${key}`;
          return at.startsWith('rules.local') ? [] : [at, ...paths(inner, at)];
        });
  const known = new Set(specKeys.map(({ path }) => path.replaceAll('[]', '')));
  const isKey = (path: string): boolean => known.has(path.replaceAll(/\.\d+/g, ''));
  it('have an id each and the keys that would answer them, whatever is taken out of the example', () => {
    const ids = new Set<string>();
    for (const path of paths(withBars)) {
      const answer = assessJson(changed(withBars, path, undefined));
      if (isLeft(answer)) continue;
      const { notChecked } = answer.right;
      expect(new Set(notChecked.map(({ id }) => id)).size, path).toBe(notChecked.length);
      for (const { id, paths: keys, what } of notChecked) {
        expect(id, what).toMatch(/^[a-z0-9-]+(\/[a-z0-9-]+)*(:[A-Za-z0-9.]+)?$/);
        expect(id, what).not.toMatch(/^other/);
        expect([what, ...keys.filter((key) => !isKey(key))]).toEqual([what]);
        ids.add(id);
      }
    }
    for (const id of [
      'gvwr',
      'axle-2/gawr',
      'balance',
      'tow/receiver/tongue',
      'tow/gcwr',
      'sharing',
      'placement',
      'tiedowns',
    ])
      expect(
        [...ids].some((each) => each === id || each.startsWith(`${id}:`)),
        id,
      ).toBe(true);
  });
  it('have one id each, and name no key that is told already, in random specs, whole and with a key taken out', () => {
    const told = (spec: unknown, path: string): unknown =>
      path.split('.').reduce<unknown>((at, key) => (at as Readonly<Record<string, unknown>> | undefined)?.[key], spec);
    const whole = randomSpecs(150);
    const specs = [
      ...whole,
      ...whole.map((spec, i) => changed(spec, paths(spec)[(i * 17) % paths(spec).length] ?? '', undefined)),
    ];
    // An overhang told as unknown, a record that lacks what is asked of it.
    const mayBeTold =
      /^(tow\.overhang|tickets|trailer\.axles\.\d+\.tires\.molded|rules\.local\.stepTables\.\d+\.steps)$/;
    let asked = 0;
    for (const spec of specs) {
      const answer = assessJson(spec);
      if (isLeft(answer)) continue;
      const { notChecked } = answer.right;
      expect(new Set(notChecked.map(({ id }) => id)).size, JSON.stringify(spec)).toBe(notChecked.length);
      for (const { paths: keys, what } of notChecked) {
        expect([what, ...keys.filter((key) => !isKey(key))]).toEqual([what]);
        expect([what, ...keys.filter((key) => told(spec, key) !== undefined && !mayBeTold.test(key))]).toEqual([what]);
        asked += 1;
      }
    }
    expect(asked).toBeGreaterThan(1000);
  });
  it('would be answered by the facts that the tow side calls by name: each has its key', () => {
    const bare = changed(changed(tiltDeck(), 'tow', {}), 'trailer.coupler', undefined);
    for (const { id, missing, paths: keys } of rightOf(assessJson(bare)).notChecked)
      if (/^(tow|coupler)\//.test(id))
        expect(keys, id).toHaveLength(missing.split(', ').filter((fact) => fact !== 'truck alone').length);
  });
  it('are answered by their keys: what is put back closes the question', () => {
    const whole = rightOf(assess(withBars));
    const open = (answer: Assessment): readonly string[] =>
      answer.notChecked.map(({ what, missing }) => `${what} ${missing}`);
    for (const path of [
      'trailer.gvwr',
      'trailer.sharing',
      'trailer.curb.tongue',
      'tow.gcwr',
      'trailer.axles.1.gawr',
      'trailer.track',
      'tow.receiver.gross',
    ]) {
      const without = rightOf(assessJson(changed(withBars, path, undefined)));
      const fresh = without.notChecked.filter(({ what, missing }) => !open(whole).includes(`${what} ${missing}`));
      expect(fresh.length, path).toBeGreaterThan(0);
      expect(
        fresh.some(({ paths: keys }) => keys.includes(path)),
        `${path}: ${JSON.stringify(fresh)}`,
      ).toBe(true);
    }
  });
});
