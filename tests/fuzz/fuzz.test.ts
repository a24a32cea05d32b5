/** Ten thousand hostile strings to each parser, some hundred hostile specs; `npm run fuzz` asks many more. */
import { describe, expect, it } from 'vitest';
import { faultOfParser, outcomeOf } from '../helpers/faults.js';
import { hostileSpec } from '../helpers/hostile-specs.js';
import { hostileString, longPatterns } from '../helpers/hostile-strings.js';
import { chanceOf } from '../helpers/random/chance.js';
import { parsers } from './parsers.js';

describe.each(Object.entries(parsers))('%s', (_, parse) => {
  it('takes 10,000 hostile strings', () => {
    const chance = chanceOf(20261128);
    for (let left = 10_000; left > 0; left -= 1) {
      const text = hostileString(chance);
      expect(faultOfParser(parse, text), JSON.stringify(text.slice(0, 200))).toBeUndefined();
    }
  });
  it('takes long strings in linear time', () => {
    for (const pattern of longPatterns) {
      const began = performance.now();
      expect(faultOfParser(parse, pattern(30_000))).toBeUndefined();
      expect(performance.now() - began, JSON.stringify(pattern(10))).toBeLessThan(2_000);
    }
  });
});

describe('hostile specs', () => {
  it('are refused in words or answered in figures, and at least a third are answered', () => {
    let answered = 0;
    const count = 500;
    for (let seed = 0; seed < count; seed += 1) {
      const outcome = outcomeOf(hostileSpec(seed), { withReport: seed % 10 === 0 });
      expect(outcome.fault, `seed ${seed}`).toBeUndefined();
      if (outcome.answered) answered += 1;
    }
    expect(answered).toBeGreaterThan(count / 3);
  });
});
