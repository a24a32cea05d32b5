/** Looked-up figures against the shipped tables: whatever the library looks up itself is found as it is. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { lookUp } from '../../../src/assessment/answer/lookups.js';
import type { LookedUpNode } from '../../../src/assessment/answer/node-shape.js';
import { rationalOf } from '../../../src/assessment/answer/rational.js';
import { assessJson } from '../../../src/assessment/index.js';
import { nodesOf } from '../../../src/trace/index.js';
import { randomSpecs } from '../../helpers/random-specs.js';
import { heavier, tiltDeck, workingsIn } from '../../helpers/specs.js';

const node = (table: string, key: string): LookedUpNode => ({
  is: 'looked up',
  name: 'a figure',
  figure: '1',
  basis: 'published',
  table,
  key,
  source: 0,
});
const asked = (table: string, key: string, digits: string) => lookUp(node(table, key), rationalOf(digits)!);

describe('the shipped tables', () => {
  it('agree with what they print, and with nothing else', () => {
    expect(asked('ST-1', 'ST235/80R16 E at 80 psi', '3420')).toBe('agrees');
    expect(asked('ST-1', 'ST235/80R16 E at 80 psi', '3520')).toBe('differs');
    expect(asked('rolled channels', 'C8X11.5', '32.5')).toBe('agrees');
    expect(asked('rolled channels', 'C8X11.5', '15.1')).toBe('differs'); // of another channel
    expect(asked('chain working load limits', '3/8 grade 70', '6600')).toBe('agrees');
    expect(asked('dressed lumber sizes', '2x8', '1.5')).toBe('agrees');
  });
  it('say nothing of a table or a row they do not know', () => {
    expect(asked('a table of the moon', 'ST235/80R16', '3420')).toBe('not found');
    expect(asked('ST-1', 'nothing of the kind', '3420')).toBe('not found');
  });
  it('never contradict a figure that the library looked up', () => {
    const counts = { agrees: 0, differs: 0, 'not found': 0 };
    for (const spec of [tiltDeck(), heavier(), ...randomSpecs(80)]) {
      const assessment = assessJson(spec);
      if (isLeft(assessment)) continue;
      for (const each of nodesOf(workingsIn(assessment.right).map(({ why }) => why))) {
        if (each.kind !== 'looked up') continue;
        const found = asked(each.table, each.key, each.value.value.toFixed());
        counts[found] += 1;
        expect(found, `${each.symbol}: ${each.table}, ${each.key}, ${each.value.value.toFixed()}`).not.toBe('differs');
      }
    }
    expect(counts.agrees).toBeGreaterThan(500);
  });
});
