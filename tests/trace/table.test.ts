/** A row that is not printed is an answer that names the nearest rows. */
import { isLeft, isRight } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { describeError } from '../../src/errors.js';
import {
  citation,
  commonPractice,
  findRow,
  fromMemory,
  isBasis,
  needsVerification,
  notTabulated,
  statics,
  type Table,
} from '../../src/trace/index.js';
import { nearestKeys } from '../../src/units/internal.js';

const letters: Table<{ letter: string; ply: string }> = {
  name: 'invented letters',
  source: fromMemory('letters'),
  authoritative: 'letter',
  rows: [
    { letter: 'B', ply: '4' },
    { letter: 'C', ply: '6' },
    { letter: 'D', ply: '8' },
    { letter: 'E', ply: '10' },
  ],
};
const find = (key: string, near?: (other: string) => number) => findRow(letters, ({ letter }) => letter, key, near);

describe('tables', () => {
  it('find the row', () => {
    const row = find('D');
    expect(isRight(row) && row.right).toBe(letters.rows[2]);
  });
  it('name the three nearest rows when there is none, by the distance that fits the table', () => {
    const byLetter = find('F', (other) => Math.abs('F'.charCodeAt(0) - other.charCodeAt(0)));
    expect(isLeft(byLetter) && byLetter.left).toEqual({
      chapter: 'trace',
      tag: 'NotTabulated',
      table: 'invented letters',
      asked: 'F',
      nearest: ['E', 'D', 'C'],
    });
    expect(isLeft(byLetter) && describeError(byLetter.left)).toBe(
      'the table invented letters has no row F; the nearest rows are E, D, C',
    );
    expect(isLeft(byLetter) && describeError({ ...byLetter.left, path: 'tires.0' })).toMatch(/^tires\.0: the table/);
  });
  it('answer for words as keys, for keys that every object has, and for a megabyte', () => {
    expect(nearestKeys(['channel', 'angle', 'tube', 'tube'], (key) => Math.abs(key.length - 4))).toEqual([
      'tube',
      'angle',
      'channel',
    ]);
    for (const key of ['__proto__', 'constructor', '', 'D'.repeat(1_000_000)]) expect(isLeft(find(key))).toBe(true);
  });
  it('say what to do instead where there is something, and repeat no more than 120 characters', () => {
    const plain = { chapter: 'trace', tag: 'NotTabulated', table: 't', asked: 'x', nearest: ['y'] };
    expect(notTabulated('t', 'x', ['y'])).toStrictEqual(plain);
    expect(notTabulated('t', 'x', ['y'], 'ask')).toStrictEqual({ ...plain, instead: 'ask' });
    expect(notTabulated('t', 'x'.repeat(121), []).asked).toBe('x'.repeat(120));
  });
  it('say so when they are empty', () => {
    const none = findRow({ ...letters, rows: [] }, () => '', 'D');
    expect(isLeft(none) && describeError(none.left)).toBe('the table invented letters has no row D');
  });
});

describe('sources', () => {
  it('cite title, edition, clause, and ask for what was not read to be verified', () => {
    expect(citation({ id: 'x', title: 'Invented standard', grade: 'A', edition: '2020', clause: '4.1' })).toBe(
      'Invented standard, 2020, 4.1',
    );
    expect(citation({ id: 'x', title: 'Invented list', grade: 'C' })).toBe('Invented list (verify)');
    expect([fromMemory('wheels'), commonPractice, statics].map(citation)).toEqual([
      'wheels, from memory (verify)',
      'common practice, no source',
      'static equilibrium, derived',
    ]);
    expect([commonPractice, statics].map(({ grade }) => needsVerification(grade))).toEqual([true, false]);
  });
  it('know the bases and nothing that every object has', () => {
    expect(['scale', 'estimated', 'toString', '__proto__', ''].map(isBasis)).toEqual([true, true, false, false, false]);
  });
});
