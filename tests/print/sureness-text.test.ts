/** How sure an answer is, in words: at most so many lines of each kind, reserves down and up into whole pounds. */
import { describe, expect, it } from 'vitest';
import type { Sureness } from '../../src/choose/index.js';
import { surenessItem, surenessText } from '../../src/print/index.js';
import { lb } from '../../src/units/index.js';

const check = (what: string, sure: string, kind = 'rating') => ({
  what,
  sure,
  kind,
  least: lb('-10.5'),
  most: lb('20.2'),
});
const next = (symbol: string, decides: readonly string[] = []) => ({
  symbol,
  path: `${symbol}.path`,
  amount: '10 lb',
  decides,
});
const told = (parts: object): Sureness =>
  ({ sure: 'not sure', checks: [], weighNext: [], complete: true, ...parts }) as unknown as Sureness;

describe('in lines', () => {
  it('has each check that is not within, the reserve or the load of it, and how many more', () => {
    const checks = [
      check('a', 'within'),
      check('b', 'over'),
      check('c', 'not sure', 'uplift'),
      check('d', 'not sure'),
      check('e', 'over'),
    ];
    const text = surenessText(told({ checks }));
    expect(text).toBe(
      [
        'Not sure: inside the tolerances of the inputs the answer can change.',
        '  - over: b, reserve -11 lb to 21 lb',
        '  - not sure: c, load -11 lb to 21 lb',
        '  - not sure: d, reserve -11 lb to 21 lb',
        '  - and 1 more',
      ].join('\n'),
    );
    expect(surenessText(told({ checks }), 4)).not.toContain('more');
  });
  it('has what to weigh next, and what it settles', () => {
    const weighNext = [next('machine', ['a', 'b']), next('tongue'), next('curb'), next('last')];
    expect(surenessText(told({ weighNext }), 2).split('\n').slice(1).join(' ').replace(/\s+/g, ' ')).toBe(
      ' - weigh or measure next: machine (machine.path), now good to 10 lb; it alone can settle a, b - then: tongue (tongue.path), now good to 10 lb',
    );
  });
  it('says what is sure, and where too much can turn', () => {
    expect(surenessText(told({ sure: 'within' }))).toMatch(/^Sure: within/);
    expect(surenessText(told({ sure: 'over', complete: false }))).toMatch(
      /^Sure: over[^\n]*\n {2}- Too many comparisons/,
    );
  });
});

describe('in one sentence', () => {
  const says = (parts: object): string => surenessItem(told(parts)).says;
  it('names the first check that is not sure, how many more, and what to weigh', () => {
    expect(says({ checks: [check('a', 'over'), check('b', 'not sure')] })).toBe('not sure: b (-11 lb to 21 lb)');
    expect(
      says({ checks: [check('b', 'not sure'), check('c', 'not sure')], weighNext: [next('machine'), next('x')] }),
    ).toBe('not sure: b (-11 lb to 21 lb) and 1 more; weigh or measure next: machine (machine.path)');
    expect(says({})).toBe('not sure: nothing could be asked');
  });
  it('says what is sure', () =>
    expect(says({ sure: 'over' })).toBe('over for sure, whatever the inputs are inside their tolerances'));
});
