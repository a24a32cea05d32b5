import { describe, expect, it } from 'vitest';
import { levels, type Measure, range } from '../../../src/study/index.js';
import { onOtherWays } from '../../../src/study/run/other-ways.js';
import type { OtherWays, Way } from '../../../src/study/run/tapes.js';
import { rightOf } from '../../helpers/either.js';
import { study } from '../../helpers/untyped.js';
import { decidedExactly, tiltDeck, wholeDeck, wrongRows } from '../compared.js';

describe('levels that make the program go another way', () => {
  it('at the molded pressure of the tires, below and above it', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        design: { kind: 'grid' },
        vary: {
          'trailer.axles.0.tires.pressure': levels(
            '50 psi',
            '64.9 psi',
            '65 psi',
            '79.999 psi',
            '80 psi',
            '80.001 psi',
            '95 psi',
          ),
          'cargo.0.weight': range('7,000 lb', '9,000 lb', 21),
        },
      }),
    );
    const { wrong, compared } = wrongRows(made);
    expect({ wrong, compared }).toEqual({ wrong: [], compared: 147 });
  });

  it('at a molded load that meets the table, a tongue that meets the weight, a guideline that turns over', () => {
    const base = {
      ...tiltDeck,
      trailer: { ...tiltDeck.trailer, guideline: { low: '10 %', high: '15 %', source: 'a manual of our own' } },
      tongueShare: undefined,
    };
    const made = rightOf(
      study({
        base,
        design: { kind: 'grid' },
        vary: {
          'trailer.axles.0.tires.molded.single': levels('3,400 lb', '3,420 lb', '3,520 lb', '3,600 lb'),
          'trailer.curb.tongue': levels('520 lb', '3,650 lb', '3,651 lb'),
          'trailer.guideline.low': levels('10 %', '15 %', '15.1 %'),
        },
      }),
    );
    const { wrong, compared, answered } = wrongRows(made);
    expect({ wrong, compared }).toEqual({ wrong: [], compared: 36 });
    expect(answered).toBeGreaterThan(0);
    expect(answered).toBeLessThan(36);
  });

  it('at the pressure that a load needs, for a measure that asks for it', () => {
    const measure: Measure = ({ pressures }) =>
      Object.fromEntries(pressures.map(({ of, needed }) => [`${of} pressure needed`, needed.pressure]));
    const made = rightOf(
      study({
        base: tiltDeck,
        measure,
        vary: { 'cargo.0.weight': range('2,000 lb', '12,000 lb', 101) },
        design: { kind: 'grid' },
      }),
    );
    expect(wrongRows(made, measure).wrong).toEqual([]);
    expect(
      new Set([...made.rows()].map((row) => row.answered && row.figures['axle 1 pressure needed'])).size,
    ).toBeGreaterThan(1);
  });

  it('at a pressure below the first printed row, where no row speaks', () => {
    const { molded: _, ...tires } = tiltDeck.trailer.axles[0]!['tires'] as Record<string, unknown>;
    const base = {
      ...tiltDeck,
      trailer: {
        ...tiltDeck.trailer,
        axles: tiltDeck.trailer.axles.map((axle) => ({
          ...axle,
          gawr: '6,000 lb',
          tires: { ...tires, pressure: '40 psi' },
        })),
      },
    };
    const made = rightOf(
      study({
        base,
        vary: { 'trailer.axles.0.tires.pressure': levels('40 psi', '62 psi', '66 psi', '80 psi') },
        design: { kind: 'grid' },
      }),
    );
    expect(wrongRows(made)).toEqual({ compared: 4, answered: 4, wrong: [] });
  });

  it('on the whole example, across the steps of rules and tables', () => {
    const made = rightOf(
      study({
        base: wholeDeck,
        vary: { 'cargo.0.weight': range('4,000 lb', '12,000 lb', 17), 'cargo.0.front': range('100 in', '150 in', 11) },
        design: { kind: 'grid' },
      }),
    );
    const { wrong, compared } = wrongRows(made);
    expect({ wrong: wrong.slice(0, 3), compared }).toEqual({ wrong: [], compared: 187 });
    expect(decidedExactly(made)).toBeLessThan(60);
  });

  it('where the tongue begins to lift', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { 'cargo.0.front': range('150 in', '190 in', 81), 'cargo.0.weight': levels('5,000 lb') },
        design: { kind: 'grid' },
      }),
    );
    expect(wrongRows(made).wrong).toEqual([]);
    const signs = new Set(
      [...made.rows()].map((row) => row.answered && Math.sign(row.figures['tongue load'] as number)),
    );
    expect(signs.size).toBeGreaterThan(1);
  });
});

/** A program of branches by name, each of which answers the rows that its name begins; a row leaves a branch where their names part. */
function program(rows: readonly string[], limit = 99) {
  const ran: string[] = [];
  const recorded: string[] = [];
  const ways = new Map<string, Way>();
  const wayOf = (name: string): Way => {
    const way = ways.get(name) ?? ({ kind: name === '?' ? 'unreadable' : 'refused', reason: name } as unknown as Way);
    ways.set(name, way);
    return way;
  };
  const nameOf = (way: Way): string => [...ways].find(([, each]) => each === way)?.[0] as string;
  const known: Way[] = [];
  const leads = new Map<string, Way>();
  const otherWays: OtherWays = {
    begin: () => undefined,
    known: () => known,
    record: (spec) => {
      if (known.length >= limit) return 'no more';
      recorded.push(String(spec));
      return wayOf(String(spec));
    },
    answered: (way, rows) => {
      expect(rows).toBeGreaterThan(0);
      if (!known.includes(way)) known.push(way);
    },
    after: (way, turn) => leads.get(`${nameOf(way)} ${turn}`),
    leads: (from, turn, to) => void leads.set(`${nameOf(from)} ${turn}`, to),
  };
  const parts = (name: string, row: string): number => [...name].findIndex((letter, i) => letter !== row[i]);
  const run = (way: Way, places: readonly number[]) => {
    ran.push(`${nameOf(way)}: ${places.join(' ')}`);
    const otherWay = new Map<number, number[]>();
    for (const place of places) {
      const turn = parts(nameOf(way), rows[place] as string);
      if (turn >= 0) otherWay.set(turn, [...(otherWay.get(turn) ?? []), place]);
    }
    return { figures: [], exactRows: 1, whole: [], otherWay };
  };
  const search = (from: string, leaving: Readonly<Record<number, readonly number[]>>) =>
    onOtherWays(wayOf(from), new Map(Object.entries(leaving).map(([turn, all]) => [Number(turn), all])), otherWays, {
      run,
      specAt: (place) => rows[place],
    });
  return { search, ran, recorded, wayOf, known, otherWays };
}

describe('rows that left a way', () => {
  it('record what the first of them takes, and follow it; where they part from it they are lost again', () => {
    const { search, ran, recorded } = program(['aa', 'ab', 'ab', 'ba', 'ab', 'bb']);
    expect(search('aa', { 1: [1, 2, 4], 0: [3, 5] })).toEqual({ rest: [], exactRows: ran.length });
    expect(recorded).toEqual(['ab', 'ba', 'bb']);
    // Each row is run on the way it is sent to, and the first of a group on those known before it is recorded.
    expect(ran).toEqual(['ab: 1', 'ab: 2 4', 'ab: 3', 'ba: 3', 'ba: 5', 'ab: 5', 'bb: 5']);
  });
  it('are sent where others that left there were answered, and recorded no more', () => {
    const { search, recorded, ran } = program(['aa', 'ab', 'ab']);
    search('aa', { 1: [1] });
    ran.length = 0;
    expect(search('aa', { 1: [2] })).toEqual({ rest: [], exactRows: 1 });
    expect({ recorded, ran }).toEqual({ recorded: ['ab'], ran: ['ab: 2'] });
  });
  it('are assessed alone where their spec cannot be read, the others not with them', () => {
    const { search } = program(['?', 'b', 'b']);
    expect(search('a', { 0: [0, 1, 2] }).rest).toEqual([0]);
  });
  it('are tried on every way at the limit, and are alone where none answers', () => {
    const { search, known, wayOf } = program(['c', 'b', 'c', 'd'], 2);
    known.push(wayOf('b'), wayOf('d'));
    expect(search('a', { 0: [0, 1, 2, 3] }).rest).toEqual([0, 2]);
  });
  it('are lost where they were sent in a circle, and found by a look at all ways', () => {
    const { search, otherWays, wayOf, ran, known } = program(['c']);
    known.push(wayOf('c'));
    otherWays.leads(wayOf('a'), 0, wayOf('b'));
    otherWays.leads(wayOf('b'), 0, wayOf('a'));
    expect(search('a', { 0: [0] }).rest).toEqual([]);
    expect(ran.at(-1)).toBe('c: 0');
    // Sent twelve times, then looked for.
    expect(ran.length).toBe(13);
  });
});
