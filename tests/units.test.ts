import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { convert, kg, lb, parseLength, show } from '../src/units/index.js';
import { difference, given, product, quotient, sum } from '../src/trace/index.js';
import { inch } from '../src/units/index.js';
import { expectReplays } from './helpers/working.js';

describe('units', () => {
  it('smoke', () => {
    expect(show(convert(convert(kg(1150), 'lb'), 'kg'))).toBe('1,150 kg');
    expect(isLeft(parseLength(`16' 6 1/2"`, 'in'))).toBe(false);
  });
  it('replays', () => {
    const w = sum('w', [given('a', lb(3)), given('b', lb(4))]);
    expectReplays(difference('d', w, quotient(null, product(null, w, given('x', inch(3))), given('c', inch(7)))));
  });
});
