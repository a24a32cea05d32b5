/** What the brakes of truck and trailer must do: the row of 49 CFR 393.52(d) for a truck of two axles; and brakes against the label. */
import { describe, expect, it } from 'vitest';
import { brakesPart } from '../../../src/assessment/parts/brakes.js';
import { decodeSpec } from '../../../src/spec/index.js';
import { given } from '../../../src/trace/index.js';
import { lb } from '../../../src/units/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const combination = given('combination', lb(20_000), 'stated');
const partOf = (changes: Readonly<Record<string, unknown>>, weight: typeof combination | undefined = combination) => {
  const spec = Object.entries(changes).reduce((now, [path, value]) => changed(now, path, value), tiltDeck());
  return rightOf(brakesPart(rightOf(decodeSpec(spec)).trailer, weight));
};
const plainAxles = (brakes: readonly (object | undefined)[]) =>
  brakes.map((pair, i) => ({ at: `${187 + 34 * i} in`, gawr: '7,000 lb', ...(pair && { brakes: pair }) }));
const pair = (each: string) => ({ left: each, right: each });

describe('what the brakes must do together', () => {
  it('is 35 ft from 20 mph behind a truck of two axles for a trailer of 3,000 lb GVWR or less, 40 ft for any other', () => {
    const distance = (gvwr: string) => {
      const { asked } = partOf({ 'trailer.gvwr': gvwr, 'trailer.axles': plainAxles([undefined, undefined]) });
      return asked && plain(asked.distance);
    };
    expect([distance('2,900 lb'), distance('3,000 lb'), distance('3,001 lb')]).toEqual([35, 35, 40]);
  });
  it('is asked with its decisions, and not without a label or a truck', () => {
    const { asked, decisions } = partOf({});
    expect(plain(asked!.force)).toBeCloseTo(0.435 * 20_000, 9);
    expect(decisions).toEqual(expect.arrayContaining([...asked!.decisions]));
    expect(partOf({ 'trailer.gvwr': undefined }).asked).toBeUndefined();
    const spec = rightOf(decodeSpec(tiltDeck()));
    expect(rightOf(brakesPart(spec.trailer, undefined)).asked).toBeUndefined();
  });
});

describe('brakes against the GAWRs', () => {
  const told = (axles: readonly object[]) => {
    const { againstLabel, total, notChecked } = partOf({ 'trailer.axles': axles, 'trailer.gvwr': undefined });
    return {
      checks: againstLabel.map(({ what, verdict }) => `${what}: ${verdict}`),
      total: total && plain(total),
      open: notChecked.map(({ what, missing, paths }) => `${what}: ${missing} at ${paths?.join(' ')}`),
    };
  };
  it('are checked axle by axle and all together', () => {
    expect(told(plainAxles([pair('3,500 lb'), pair('3,400 lb')]))).toMatchInlineSnapshot(`
      {
        "checks": [
          "braked weight against brake capacity: over",
          "axle 1 brakes against GAWR: within",
          "braked weight against axle 1 left brake capacity: within",
          "braked weight against axle 1 right brake capacity: within",
          "axle 2 brakes against GAWR: over",
          "braked weight against axle 2 left brake capacity: over",
          "braked weight against axle 2 right brake capacity: over",
        ],
        "open": [],
        "total": 13800,
      }
    `);
  });
  it('stay open for an axle without a rating, and so does the sum', () => {
    expect(told(plainAxles([pair('3,500 lb'), undefined]))).toMatchInlineSnapshot(`
      {
        "checks": [
          "axle 1 brakes against GAWR: within",
          "braked weight against axle 1 left brake capacity: within",
          "braked weight against axle 1 right brake capacity: within",
        ],
        "open": [
          "axle 2 brakes against its GAWR: brake ratings, if it has brakes at trailer.axles.1.brakes",
        ],
        "total": 7000,
      }
    `);
    expect(told(plainAxles([undefined, undefined]))).toMatchInlineSnapshot(`
      {
        "checks": [],
        "open": [
          "brakes against the GAWRs: brake ratings at trailer.axles.0.brakes trailer.axles.1.brakes",
        ],
        "total": undefined,
      }
    `);
  });
  it('stay open without a GAWR', () => {
    const [first, second] = plainAxles([pair('3,500 lb'), pair('3,500 lb')]);
    const { gawr: _, ...unlabelled } = second as Record<string, unknown>;
    expect(told([first as object, unlabelled])).toMatchInlineSnapshot(`
      {
        "checks": [],
        "open": [
          "brakes against the GAWRs: GAWR of axle 2 at trailer.axles.1.gawr",
        ],
        "total": undefined,
      }
    `);
  });
});
