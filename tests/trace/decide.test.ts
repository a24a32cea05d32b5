import { describe, expect, it } from 'vitest';
import { decide, given, recordingDecisions } from '../../src/trace/index.js';
import { lb } from '../../src/units/index.js';

const [gross, gvwr] = [given('gross', lb(14100)), given('GVWR', lb(14000))];
const asked = (): boolean => decide(gross, '<=', gvwr).holds;

describe('a recording of decisions', () => {
  it('keeps every comparison asked while a function runs, in order, and no other', () => {
    asked();
    const { result, decisions } = recordingDecisions(() => [decide(gross, '>', gvwr).holds, asked()]);
    asked();
    expect(result).toEqual([true, false]);
    expect(decisions.map(({ comparison, holds }) => [comparison, holds])).toEqual([
      ['>', true],
      ['<=', false],
    ]);
    expect(decisions[0]?.left).toBe(gross.why);
  });

  it('hands the decisions of an inner recording to the outer one', () => {
    const outer = recordingDecisions(() => {
      const inner = recordingDecisions(asked);
      asked();
      return inner.decisions.length;
    });
    expect([outer.result, outer.decisions.length]).toEqual([1, 2]);
  });

  it('ends with its function, even where that throws', () => {
    const outer = recordingDecisions(() => {
      expect(() =>
        recordingDecisions(() => {
          asked();
          throw new RangeError('no divisor');
        }),
      ).toThrow('no divisor');
      asked();
    });
    expect(outer.decisions.length).toBe(2);
    expect(recordingDecisions(() => 1).decisions).toEqual([]);
  });
});
