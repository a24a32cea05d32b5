/**
 * An inch outside its window something is over, lifts, leaves the deck or the band; the heaviest machine has a place, and one
 * a pound heavier has none.
 */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/assessment/index.js';
import { report } from '../../../src/print/index.js';
import { figuresIn } from '../../../src/print/reader-units.js';
import { lb, parseQuantity } from '../../../src/units/index.js';
import { Decimal } from '../../../src/units/internal.js';
import { rightOf } from '../../helpers/either.js';
import { answerTo } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { isPlace, pieceAt, piecesOf, poundsOf, wrongIn } from '../../helpers/loaded.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';

/** The spec with its piece of this number moved, and made heavier or lighter. */
function moved(spec: JsonSpec, index: number, at: Decimal, weight?: Decimal): JsonSpec {
  const cargo = piecesOf(spec).map((piece, i) =>
    i === index ? pieceAt(piece, weight ?? poundsOf(piece['weight']), at) : piece,
  );
  return { ...spec, cargo };
}

/** Checks that a place cannot put right: of the whole weight and of the ramps. */
const ofWeight = /gvwr$|gross$|^chains|trailer-rating|gcwr|^ramps/;

const byPlace = (answer: Assessment | undefined): readonly string[] =>
  answer === undefined ? [] : wrongIn(answer).filter((id) => !ofWeight.test(id) || id.startsWith('tow/gvwr'));

type Piece = Assessment['placement']['pieces'][number];

function* pieces(inSuite: number): Generator<{ seed: number; spec: JsonSpec; piece: Piece }> {
  for (const seed of lawSeeds(inSuite)) {
    const spec = randomSpec(seed);
    for (const piece of answerTo(spec)?.placement.pieces ?? []) yield { seed, spec, piece };
  }
}

describe('the window of a piece', () => {
  it('ends where something is over, lifts, leaves the deck or the band', () => {
    const broken: string[] = [];
    for (const { seed, spec, piece } of pieces(80)) {
      const { lower, upper, empty } = piece.window;
      if (empty) continue;
      for (const at of [lower.at.value.value.minus(1), upper.at.value.value.plus(1)].filter(isPlace)) {
        const answer = answerTo(moved(spec, piece.index, at));
        if (answer === undefined) continue;
        const off = answer.placement.pieces.find(({ index }) => index === piece.index)?.now?.breaks ?? [];
        const inBand = answer.tongue === undefined || answer.tongue.guideline.verdict === 'inside';
        const ends = off.some(({ name }) => name.startsWith('deck'));
        if (byPlace(answer).length === 0 && inBand && !ends)
          broken.push(
            `seed ${seed}: ${piece.name} at ${at.toFixed(3)} in, an inch outside, is as well: ${off.map(({ name }) => name).join(', ')}`,
          );
      }
    }
    expect(fewOf(broken)).toEqual([]);
  });
});

/** Whether the other pieces are over on the ramps already, whatever this one weighs. */
const othersClimbTooHeavy = (spec: JsonSpec, { index }: Piece): boolean => {
  const { cargo, trailer } = spec as { readonly cargo: readonly unknown[]; readonly trailer: object };
  const answer = answerTo({ trailer, cargo: cargo.filter((_, i) => i !== index) });
  return answer === undefined || wrongIn(answer).some((id) => id.startsWith('ramps'));
};

/** The piece at another weight: its window, and what is over in the middle of it. */
function atWeight(
  spec: JsonSpec,
  { index }: Piece,
  weight: Decimal,
): { readonly wrong: readonly string[] } | undefined {
  const pieceIn = (answer: Assessment | undefined): Piece | undefined =>
    answer?.placement.pieces.find((each) => each.index === index);
  const window = pieceIn(answerTo(moved(spec, index, new Decimal(150), weight)))?.window;
  if (window === undefined) return undefined;
  if (window.empty) return { wrong: ['no place'] };
  const middle = window.lower.at.value.value.plus(window.upper.at.value.value).div(2);
  const answer = isPlace(middle) ? answerTo(moved(spec, index, middle, weight)) : undefined;
  return answer && { wrong: wrongIn(answer) };
}

describe('the heaviest machine', () => {
  it('has a place where nothing is over, and one a pound heavier has none', () => {
    const broken: string[] = [];
    let asked = 0;
    for (const { seed, spec, piece } of pieces(80)) {
      if (piece.heaviest?.exists !== true) continue;
      const { heaviest, lightest } = piece.heaviest;
      // As it is printed: a piece that balances the others may be too light by the part of a pound.
      const [, told] = figuresIn('us').range(lightest?.value ?? lb(0), heaviest.value);
      const weight = rightOf(parseQuantity(told, 'lb')).value;
      const [here, more] = [weight, heaviest.value.value.plus(1)].map((each) => atWeight(spec, piece, each));
      if (weight.lte(0) || here === undefined || more === undefined || othersClimbTooHeavy(spec, piece)) continue;
      asked += 1;
      if (here.wrong.length > 0)
        broken.push(`seed ${seed}: the heaviest ${piece.name}, ${weight} lb: ${here.wrong.join(', ')}`);
      if (more.wrong.length === 0) broken.push(`seed ${seed}: a ${piece.name} a pound above ${weight} lb has a place`);
    }
    expect(fewOf(broken)).toEqual([]);
    expect(asked).toBeGreaterThan(0);
  });
  it('that balances the rest has a place at its lightest, and one a pound lighter has none', () => {
    const broken: string[] = [];
    let asked = 0;
    for (const { seed, spec, piece } of pieces(80)) {
      const { exists, heaviest, lightest } = piece.heaviest ?? {};
      if (exists !== true || heaviest === undefined || lightest === undefined) continue;
      const [told] = figuresIn('us').range(lightest.value, heaviest.value);
      const weight = rightOf(parseQuantity(told, 'lb')).value;
      const [here, less] = [weight, lightest.value.value.minus(1)].map((each) => atWeight(spec, piece, each));
      if (here === undefined || less === undefined || othersClimbTooHeavy(spec, piece)) continue;
      asked += 1;
      if (here.wrong.length > 0)
        broken.push(`seed ${seed}: the lightest ${piece.name}, ${told}: ${here.wrong.join(', ')}`);
      if (less.wrong.length === 0) broken.push(`seed ${seed}: a ${piece.name} a pound below ${told} has a place`);
    }
    expect(fewOf(broken)).toEqual([]);
    expect(asked).toBeGreaterThan(0);
  });
});

describe('a piece that balances the others within less than a pound', () => {
  // Seed 4104: it has a place from 2,697.143 lb to 2,697.710 lb, and at no whole pound.
  const spec = randomSpec(4104);
  const piece = answerTo(spec)?.placement.pieces[1];
  it('is printed with weights that have a place', () => {
    const [least, most] = figuresIn('us').range(piece!.heaviest!.lightest!.value, piece!.heaviest!.heaviest.value);
    expect([least, most]).toEqual(['2,697.2 lb', '2,697.7 lb']);
    for (const told of [least, most])
      expect(atWeight(spec, piece!, rightOf(parseQuantity(told, 'lb')).value)?.wrong).toEqual([]);
    expect(atWeight(spec, piece!, new Decimal(2697))?.wrong).toEqual(['no place']);
  });
  it('says that a lighter one has none', () => {
    const text = report(answerTo(spec)!).replace(/\s+/g, ' ');
    expect(text).toContain('2,697.7 lb');
    expect(text).toMatch(/lightest pallet of stone 2 that has a place [. ]*2,697\.2 lb/);
    expect(text).toContain('a lighter one has no place either');
    expect(piece!.heaviest!.notes.map(({ tag }) => tag)).toContain('LighterHasNoPlace');
  });
});
