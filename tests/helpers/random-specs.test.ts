/** The generators that other tests rest on: they repeat, most of what they make is read, and what is broken is refused at its place. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { brokenSpecs } from './broken-specs.js';
import { randomSpec, randomSpecs } from './random-specs.js';

describe('random specs', () => {
  it('repeat by their seed', () => {
    expect(randomSpecs(20, 7)).toEqual(randomSpecs(20, 7));
    expect(randomSpec(8)).toEqual(randomSpecs(5, 7)[1]);
    expect(new Set(randomSpecs(100).map((spec) => JSON.stringify(spec))).size).toBe(100);
  });
  it('are answered in at least two of three', () => {
    const answered = randomSpecs(300).filter((spec) => !isLeft(assessJson(spec))).length;
    expect(answered).toBeGreaterThan(200);
  });
  it('cover what trailers are', () => {
    const all = JSON.stringify(randomSpecs(300));
    for (const part of ['gooseneck', 'independent', 'dual', 'ballAboveLevel', 'bars', 'frame', 'tickets', ' kg', ' mm'])
      expect(all).toContain(part);
  });
});

describe('broken specs', () => {
  it('are refused at the path of the edit', () => {
    for (const { edit, spec, path } of brokenSpecs(300)) {
      const answer = assessJson(spec);
      const where = isLeft(answer) && 'problems' in answer.left ? answer.left.problems.map((each) => each.path) : [];
      expect(where, `${edit} in ${String(spec['name'])}`).toContain(path);
    }
  });
});
