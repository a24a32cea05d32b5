/** Order and origin change nothing: of items, pieces, tiedowns; from which side one looks; how a place is told. */
import { describe, expect, it } from 'vitest';
import { answerTo } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { type Outline, outlineOf } from '../../helpers/outline.js';
import { chanceOf } from '../../helpers/random/chance.js';
import { digitsAndUnit } from '../../helpers/random/leaves.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';

type Json = Record<string, unknown>;
interface Told extends Json {
  readonly trailer: Json & { readonly curb?: Json };
  readonly cargo?: readonly Json[];
}

/** Checks, weights, tow side and rules; the windows are a piece's own and come in its order. */
const told = ['checks', 'weights', 'tow', 'rules', 'errors'] as const;

function differences(one: Outline, other: Outline): readonly string[] {
  return told.flatMap((aspect) => one[aspect].filter((line) => !other[aspect].includes(line)));
}

type Change = (spec: Told) => JsonSpec | undefined;

function holds(change: Change, inSuite = 60, specOf: (seed: number) => JsonSpec = randomSpec): readonly string[] {
  const broken: string[] = [];
  for (const seed of lawSeeds(inSuite)) {
    const spec = specOf(seed);
    const other = change(structuredClone(spec) as Told);
    if (other === undefined) continue;
    const [before, after] = [atTheRamps(spec), atTheRamps(other)];
    const gone = [...differences(outlineOf(spec), outlineOf(other)), ...before.filter((line) => !after.includes(line))];
    if (gone.length > 0) broken.push(`seed ${seed}: ${gone.slice(0, 2).join('; ')}`);
  }
  return fewOf(broken);
}

/** What is said of getting on, which is asked of several pieces and told of the worst; and the tags of what asks attention. */
function atTheRamps(spec: JsonSpec): readonly string[] {
  const answer = answerTo(spec);
  if (answer === undefined) return [];
  const { edges, setting, tailLift } = answer.loading;
  const figures = { 'least clearance': edges?.least, 'room of the setting': setting?.width, ball: tailLift?.ball };
  return [
    ...Object.entries(figures).map(
      ([name, figure]) => `${name} ${figure?.value.value.toSignificantDigits(24).toFixed()}`,
    ),
    ...answer.attention.map(({ tag }) => tag),
  ];
}

/** The random spec with its pieces about 50 lb apart, or alike, and more than the first of them told as a machine that climbs. */
function severalMachines(seed: number): JsonSpec {
  const spec = randomSpec(seed) as Told;
  const apart = chanceOf(seed).pick([0, 0, 50]);
  const cargo = spec.cargo?.map((piece, i) => {
    if (i === 0) return piece;
    const { digits, unit } = digitsAndUnit(piece['weight']);
    const more = i * (unit === 't' ? apart / 2000 : apart);
    const axles = chanceOf(seed + i).happens(70)
      ? [`${Number(digits) * 0.7} ${unit}`, `${Number(digits) * 0.3} ${unit}`]
      : undefined;
    return {
      ...piece,
      weight: `${Number((Number(digits) + more).toFixed(3))} ${unit}`,
      ...(axles && { axles }),
      ...(spec.cargo?.[0]?.['wheelbase'] !== undefined && {
        wheelbase: `${70 + 7 * i} in`,
        lowPoint: { behindFrontAxle: '35 in', height: `${6 + i} in` },
        gauges: [{ gauge: '44 in', tireWidth: '11 in' }],
      }),
    };
  });
  return cargo === undefined ? spec : { ...spec, cargo };
}

const turned = (list: unknown): unknown => (Array.isArray(list) ? [...(list as readonly unknown[])].reverse() : list);

describe('order', () => {
  it('of the items, the cut list and the areas of deck', () => {
    const broken = holds((spec) => {
      const { curb } = spec.trailer;
      if (curb === undefined || !('items' in curb || 'frame' in curb)) return undefined;
      const lists = Object.fromEntries(Object.entries(curb).map(([key, list]) => [key, turned(list)]));
      return { ...spec, trailer: { ...spec.trailer, curb: lists } };
    }, 150);
    expect(broken).toEqual([]);
  });
  it('of the pieces of cargo and their tiedowns, two machines of one weight too', () => {
    const turn: Change = (spec) => {
      if ((spec.cargo ?? []).length < 2) return undefined;
      const pieces = spec.cargo?.map((piece) => ({ ...piece, tiedowns: turned(piece['tiedowns']) }));
      return { ...spec, cargo: turned(pieces) };
    };
    expect(holds(turn, 150)).toEqual([]);
    expect(holds(turn, 60, severalMachines)).toEqual([]);
  });
  it('of the keys', () => {
    const backwards = (value: unknown): unknown => {
      if (typeof value !== 'object' || value === null) return value;
      if (Array.isArray(value)) return value.map(backwards);
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([key, inner]) => [key, backwards(inner)]),
      );
    };
    expect(holds((spec) => backwards(spec) as JsonSpec, 40)).toEqual([]);
  });
});

/** Whole inches of a figure, where it is told in inches. */
function inchesOf(figure: unknown): number | undefined {
  const { digits, unit } = digitsAndUnit(figure);
  if (unit === 'in') return Number(digits);
  return unit === 'ft' ? Number(digits) * 12 : undefined;
}

describe('origin', () => {
  it('a place told by the front face and the balance point is the place itself', () => {
    const broken = holds((spec) => {
      if (spec.cargo === undefined) return spec; // no cargo told is another statement than an empty deck
      const pieces = spec.cargo.map(({ front, ...piece }) => {
        const [face, behind] = [front, piece['balancePoint']].map((each) =>
          each === undefined ? undefined : inchesOf(each),
        );
        if (face === undefined || behind === undefined) return front === undefined ? piece : { ...piece, front };
        return { ...piece, at: `${face + behind} in` };
      });
      return { ...spec, cargo: pieces };
    });
    expect(broken).toEqual([]);
  });
  it('a load as far left of the middle as it was right loads the heavier side alike', () => {
    const broken = holds((spec) => {
      if (spec.cargo === undefined) return spec; // no cargo told is another statement than an empty deck
      const pieces = spec.cargo.map((piece) => {
        if (piece['rightOfMiddle'] === undefined) return piece;
        const { digits, unit } = digitsAndUnit(piece['rightOfMiddle']);
        return { ...piece, rightOfMiddle: `${digits.startsWith('-') ? digits.slice(1) : `-${digits}`} ${unit}` };
      });
      return { ...spec, cargo: pieces };
    });
    expect(broken).toEqual([]);
  });
});
