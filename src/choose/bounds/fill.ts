/** The facts that a spec leaves out, and their ranges over usual builds. */
import type { Assessment } from '../../assessment/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { convert, type Quantity, type Unit } from '../../units/index.js';

/** An unknown fact, and the least and the most it can be. */
export interface UnknownFact {
  /** Its key in the spec. */
  readonly path: string;
  /** What it is, in shop words. */
  readonly what: string;
  /** The least it can be. */
  readonly from: number;
  /** The most it can be. */
  readonly to: number;
  /** The unit of both. */
  readonly unit: 'lb' | 'in';
  /** Where the ends come from. */
  readonly source: string;
}

const built = 'bounds of what is built; common practice, no source';

const inUnit = (figure: { readonly value: Quantity<Unit> } | undefined, unit: 'lb' | 'in'): number | undefined =>
  figure && (convert(figure.value as Quantity<'lb'>, unit as 'lb') as Quantity<Unit>).value.toNumber();

type Fact = readonly [path: string, what: string, from: number, to: number, unit: 'lb' | 'in'];

/** Axles are listed from the front: one whose place is not told stands between those that are told beside it. */
function roomOf(axles: DecodedSpec['trailer']['axles'], i: number): readonly [from: number, to: number] {
  const told = (some: typeof axles): readonly number[] => some.flatMap(({ at }) => inUnit(at, 'in') ?? []);
  const [ahead, behind] = [told(axles.slice(0, i)).at(-1), told(axles.slice(i)).at(0)];
  const [from, to] = [ahead ?? 48, behind ?? 480];
  return from < to ? [from, to] : [ahead ?? 0, behind ?? from + 120];
}

function ofTrailer({ spec: { trailer }, weights }: Assessment): readonly Fact[] {
  const weight = inUnit(weights.curb, 'lb');
  const heaviest = weight ?? 14_000;
  return [
    ...(weight === undefined
      ? [['trailer.curb.weight', 'weight of the empty trailer', 300, heaviest, 'lb'] as const]
      : []),
    ...(weights.trailer === undefined
      ? [['trailer.curb.tongue', 'tongue load of the empty trailer', 0, heaviest / 2, 'lb'] as const]
      : []),
    ...trailer.axles.flatMap(({ at }, i): readonly Fact[] =>
      at === undefined ? [[`trailer.axles.${i}.at`, `place of axle ${i + 1}`, ...roomOf(trailer.axles, i), 'in']] : [],
    ),
  ];
}

/** On the deck, where there is one; at the front of it at the earliest. */
function ofCargo({ spec: { trailer, cargo = [] }, weights }: Assessment): readonly Fact[] {
  const [front, rear] = [inUnit(trailer.deck?.front, 'in') ?? 0, inUnit(trailer.deck?.rear, 'in') ?? 600];
  return cargo.flatMap((piece, i): readonly Fact[] => {
    if (weights.cargo[i] !== undefined) return [];
    const length = inUnit(piece.length, 'in');
    if (piece.front !== undefined)
      return [[`cargo.${i}.balancePoint`, `balance point of ${piece.name}`, 0, length ?? rear - front, 'in']];
    return [[`cargo.${i}.at`, `place of ${piece.name}`, front, rear, 'in']];
  });
}

function ofTruck({ spec: { tow, trailer } }: Assessment): readonly Fact[] {
  if (tow === undefined) return [];
  const overhang = trailer.hitch === 'ball' ? ([12, 120] as const) : ([-60, 24] as const);
  const facts: readonly (readonly [boolean, Fact])[] = [
    [tow.front === undefined, ['tow.front', 'front axle of the tow vehicle, alone', 1000, 12_000, 'lb']],
    [tow.rear === undefined, ['tow.rear', 'rear axle of the tow vehicle, alone', 800, 15_000, 'lb']],
    [tow.wheelbase === undefined, ['tow.wheelbase', 'wheelbase of the tow vehicle', 80, 280, 'in']],
    [
      tow.overhang === undefined || tow.overhang === 'unknown',
      ['tow.overhang', 'overhang, rear axle to ball', ...overhang, 'in'],
    ],
  ];
  return facts.flatMap(([missing, fact]) => (missing ? [fact] : []));
}

/** Every unknown weight and place of the spec. Ratings are left out: an unknown rating has no check. */
export const unknownFacts = (assessment: Assessment): readonly UnknownFact[] =>
  [...ofTrailer(assessment), ...ofCargo(assessment), ...ofTruck(assessment)].map(([path, what, from, to, unit]) => ({
    path,
    what,
    from,
    to,
    unit,
    source: built,
  }));
