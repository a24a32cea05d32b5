import { describe, expect, it } from 'vitest';
import { levels, type Measure, range } from '../../../src/study/index.js';
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
