/** Studies of random trailers and of the example against `assess`, row by row. */

import fc from 'fast-check';
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import { alternatives, levels, range } from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { study } from '../../helpers/untyped.js';
import { tiltDeck, wholeDeck, wrongRows } from '../compared.js';
import { levelsOf, spec } from '../random-specs.js';

const byLevels = (
  picked: readonly (readonly [string, readonly string[]])[],
): Record<string, ReturnType<typeof levels>> =>
  Object.fromEntries(picked.map(([path, texts]) => [path, levels(...texts)]));

describe('a study of random trailers', () => {
  it('says row by row what assess says', () => {
    const seen = { compared: 0, answered: 0, studies: 0, refused: 0 };
    const random = spec.chain((base) => fc.tuple(fc.constant(base), levelsOf(base)));
    fc.assert(
      fc.property(random, ([base, picked]) => {
        const made = study({ base, vary: byLevels(picked), design: { kind: 'grid' } });
        if (isLeft(made)) {
          seen.refused += 1;
          if (made.left.chapter !== 'study') expect(isLeft(assessJson(base))).toBe(true);
          else expect(['UnusableVariation']).toContain(made.left.tag);
          return;
        }
        const { compared, answered, wrong } = wrongRows(made.right);
        expect(wrong).toEqual([]);
        seen.studies += 1;
        seen.compared += compared;
        seen.answered += answered;
      }),
      { numRuns: 120, seed: 42 },
    );
    expect(seen.studies).toBeGreaterThan(50);
    expect(seen.compared).toBeGreaterThan(600);
    expect(seen.answered).toBeGreaterThan(250);
  });
});

describe('a study of the example', () => {
  it('says row by row what assess says, over weight and place', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { 'cargo.0.weight': range('3,000 lb', '12,000 lb', 37), 'cargo.0.front': range('95 in', '145 in', 51) },
        design: { kind: 'grid' },
      }),
    );
    const { compared, answered, wrong } = wrongRows(made);
    expect({ compared, answered, wrong }).toEqual({ compared: 37 * 51, answered: 37 * 51, wrong: [] });
  });

  it('does not let a row hold whose tow vehicle is lifted off its front wheels or on one side, where no rating is passed', () => {
    const light = {
      front: '1,600 lb',
      rear: '4,000 lb',
      frontGawr: '6,000 lb',
      wheelbase: '100 in',
      overhang: '110 in',
    };
    const base = {
      ...tiltDeck,
      tow: light,
      trailer: { ...tiltDeck.trailer, track: '80 in' },
      cargo: [{ ...tiltDeck.cargo[0], rightOfMiddle: '2 in' }],
    };
    const made = rightOf(
      study({
        base,
        design: { kind: 'grid' },
        vary: {
          'tow.front': range('1,500 lb', '1,800 lb', 31),
          'cargo.0.rightOfMiddle': levels('0 in', '20 in', '60 in', '70 in'),
        },
      }),
    );
    expect(wrongRows(made).wrong).toEqual([]);
    const rows = [...made.rows()];
    expect(rows.filter((row) => row.answered && row.verdict !== 'over').length).toBeGreaterThan(10);
    const lifted = rows
      .map(({ row }) => rightOf(assessJson(rightOf(made.specAt(row)))))
      .filter(({ verdict, checks }) => verdict === 'over' && checks.every(({ verdict }) => verdict === 'within'));
    expect(lifted.length).toBeGreaterThan(10);
    expect([...new Set(lifted.flatMap((each) => each.uplift.lifted.map(({ what }) => what)))]).toContain(
      'tow vehicle front axle',
    );
  });

  it('does not let a row hold whose tongue is over or lifted, or whose axle is over with the bars set, with the ball off level alone', () => {
    const axles = tiltDeck.trailer.axles.map((axle) => ({ ...axle, rate: '2,000 lb/in' }));
    const whole = wholeDeck as { readonly tow: object };
    const base = {
      ...tiltDeck,
      tow: { ...whole.tow, bars: { restore: '50 %' } },
      trailer: {
        ...tiltDeck.trailer,
        axles,
        sharing: 'independent',
        ballAboveLevel: '0 in',
        coupler: { gross: '15,000 lb', tongue: '1,500 lb' },
      },
    };
    const made = rightOf(
      study({
        base,
        design: { kind: 'grid' },
        vary: {
          'trailer.ballAboveLevel': levels('-4 in', '-2 in', '0 in', '2 in', '4 in'),
          'cargo.0.front': range('110 in', '155 in', 91),
        },
      }),
    );
    expect(wrongRows(made).wrong).toEqual([]);
    const rows = [...made.rows()];
    expect(rows.filter((row) => row.answered && row.verdict !== 'over').length).toBeGreaterThan(10);
    const failed = rows
      .map(({ row }) => rightOf(assessJson(rightOf(made.specAt(row)))))
      .flatMap(({ uplift, checks }) => [
        ...uplift.lifted.map(({ what }) => what),
        ...checks.flatMap(({ what, verdict }) => (verdict === 'over' ? [what] : [])),
      ]);
    expect(failed).toEqual(expect.arrayContaining(['tongue off level', 'tongue against coupler tongue, off level']));
  });

  it('gives the error of assess where a level makes the GAWR exceed the parts', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { 'trailer.axles.1.gawr': levels('6,000 lb', '7,000 lb', '7,001 lb', '8,000 lb') },
        design: { kind: 'grid' },
      }),
    );
    const rows = [...made.rows()];
    expect(wrongRows(made).wrong).toEqual([]);
    expect(rows.map((row) => (row.answered ? 'answered' : row.error.tag))).toEqual([
      'answered',
      'answered',
      'UndecodableSpec',
      'UndecodableSpec',
    ]);
    expect(rows[3]).toMatchObject({ answered: false, error: { path: 'trailer.axles.1.gawr' } });
  });

  it('gives an error row where an alternative lacks a figure, and keeps the others', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        design: { kind: 'grid' },
        vary: {
          coupler: alternatives({ known: {}, unknown: { 'trailer.coupler': { gross: '15,000 lb' } } }),
          'cargo.0.weight': levels('5,000 lb', '6,000 lb'),
        },
      }),
    );
    const rows = [...made.rows()];
    expect(rows.map((row) => row.answered)).toEqual([true, true, false, false]);
    expect(rows[2]).toMatchObject({
      answered: false,
      choices: { coupler: 'unknown' },
      error: { tag: 'MissingFact', question: 'left: tongue against coupler tongue' },
    });
    expect(wrongRows(made).wrong).toEqual([]);
  });

  it('varies a figure in one unit, whatever unit an alternative writes it in', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        design: { kind: 'grid' },
        vary: {
          written: alternatives({ pounds: {}, kilograms: { 'cargo.0.weight': '4,000 kg', 'cargo.0.front': '3 m' } }),
          'cargo.0.weight': levels('8,000 lb', '9,000 lb'),
          'cargo.0.front': levels('120 in', '3.2 m'),
        },
      }),
    );
    expect(wrongRows(made)).toEqual({ compared: 8, answered: 8, wrong: [] });
  });

  it('may be read by two readers in turns', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        vary: { 'cargo.0.weight': range('5,000 lb', '9,000 lb', 3000) },
        design: { kind: 'grid' },
      }),
    );
    const [alone, first, second] = [[...made.rows()], made.rows(), made.rows(1500)];
    for (let i = 0; i < 1500; i += 1) {
      expect(first.next().value).toEqual(alone[i]);
      expect(second.next().value).toEqual(alone[i + 1500]);
    }
  });

  it('gives error rows for an alternative that assess refuses', () => {
    const made = rightOf(
      study({
        base: tiltDeck,
        design: { kind: 'grid' },
        vary: {
          tongue: alternatives({ weighed: {}, absurd: { 'trailer.curb.tongue': '9,000 lb' } }),
          'cargo.0.weight': levels('5,000 lb', '6,000 lb'),
        },
      }),
    );
    expect([...made.rows()].map((row) => (row.answered ? 'answered' : row.error.tag))).toEqual([
      'answered',
      'answered',
      'UndecodableSpec',
      'UndecodableSpec',
    ]);
    expect(wrongRows(made).wrong).toEqual([]);
  });
});
