/** Order and origin change nothing: of items, pieces, tiedowns; from which side one looks; how a place is told. */
import { describe, expect, it } from 'vitest';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { type Outline, outlineOf } from '../../helpers/outline.js';
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

function holds(change: (spec: Told) => JsonSpec | undefined, inSuite = 60): readonly string[] {
  const broken: string[] = [];
  for (const seed of lawSeeds(inSuite)) {
    const spec = randomSpec(seed);
    const other = change(structuredClone(spec) as Told);
    if (other === undefined) continue;
    const gone = differences(outlineOf(spec), outlineOf(other));
    if (gone.length > 0) broken.push(`seed ${seed}: ${gone.slice(0, 2).join('; ')}`);
  }
  return fewOf(broken);
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
  it('of the pieces of cargo and their tiedowns', () => {
    const broken = holds((spec) => {
      const weights = (spec.cargo ?? []).map(({ weight }) => JSON.stringify(weight));
      // Of two machines of one weight the first is taken to climb the ramps.
      if (weights.length < 2 || new Set(weights).size < weights.length) return undefined;
      const pieces = spec.cargo?.map((piece) => ({ ...piece, tiedowns: turned(piece['tiedowns']) }));
      return { ...spec, cargo: turned(pieces) };
    }, 150);
    expect(broken).toEqual([]);
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
      const pieces = (spec.cargo ?? []).map(({ front, ...piece }) => {
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
      const pieces = (spec.cargo ?? []).map((piece) => {
        if (piece['rightOfMiddle'] === undefined) return piece;
        const { digits, unit } = digitsAndUnit(piece['rightOfMiddle']);
        return { ...piece, rightOfMiddle: `${digits.startsWith('-') ? digits.slice(1) : `-${digits}`} ${unit}` };
      });
      return { ...spec, cargo: pieces };
    });
    expect(broken).toEqual([]);
  });
});
