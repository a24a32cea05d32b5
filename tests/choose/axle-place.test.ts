/** Axles at the ends of their interval hold the tongue at the ends of its band; an inch beyond does not. */
import { describe, expect, it } from 'vitest';
import { assessJson as assess } from '../../src/assessment/index.js';
import { grown } from '../../src/choose/axle-place/grown.js';
import { axleIntervalText, axlePlace } from '../../src/choose/index.js';
import { changed as changedAll } from '../../src/study/index.js';
import { inch, lb } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const moving = [
  'axle with brakes, front',
  'axle with brakes, rear',
  'springs, rockers and hangers',
  'wheel and tire',
  'fenders',
];
const machines = [{ name: 'excavator', weight: lb(9000), behindDeckFront: inch(120) }];
/** The example, built up: without its scale ticket. */
const builtUp = (): unknown => {
  const spec = tiltDeck() as unknown as { trailer: { curb: Record<string, unknown> } };
  const { weight: _w, tongue: _t, ...curb } = spec.trailer.curb;
  return changed(spec, 'trailer.curb', curb);
};

/** The trailer with its axles, and what moves with them, shifted. */
function shifted(spec: unknown, by: number): unknown {
  const { trailer } = spec as { trailer: { curb: { items: { name: string; at: string }[] } } };
  const at = (text: string): string => `${Number.parseFloat(text) + by} in`;
  return changedAll(spec, {
    'trailer.axles.0.at': at('187 in'),
    'trailer.axles.1.at': at('221 in'),
    'trailer.curb.items': trailer.curb.items.map((item) =>
      moving.includes(item.name) ? { ...item, at: at(item.at) } : item,
    ),
  });
}

const shareWith = (spec: unknown, cargo: readonly unknown[]): number =>
  plain(rightOf(assess(changedAll(spec, { cargo }))).weights.balance!.tongueShare);
const excavator = [{ name: 'excavator', weight: '9,000 lb', at: '182 in' }];

describe('axlePlace', () => {
  const [one] = rightOf(axlePlace({ spec: builtUp(), moving, machines }));
  it('is exact for a built-up trailer: at the ends the share is that of the band', () => {
    for (const { name, from, to } of one!.limits) {
      if (name !== 'empty' && name !== 'excavator') continue;
      const cargo = name === 'empty' ? [] : excavator;
      expect(shareWith(shifted(builtUp(), plain(from) - 204), cargo), name).toBeCloseTo(0.1, 10);
      expect(shareWith(shifted(builtUp(), plain(to) - 204), cargo), name).toBeCloseTo(0.15, 10);
    }
  });
  it('asks a weighed trailer at its own length, and at no other', () => {
    const spec = changed(tiltDeck(), 'trailer.curb', { weight: '3,200 lb', tongue: '480 lb' });
    const weighed = (deck: string) => axlePlace({ spec, moving: [], decks: [deck] });
    expect(rightOf(weighed('20 ft'))).toHaveLength(1);
    expect(leftOf(weighed('22 ft'))).toMatchObject({ path: 'trailer.curb' });
  });
  it('asks no load to a GVWR that is not told, or that the empty trailer has used up', () => {
    const names = (gvwr: string | undefined) =>
      rightOf(axlePlace({ spec: changedAll(builtUp(), { 'trailer.gvwr': gvwr }), moving, machines }))[0]!.limits.map(
        ({ name }) => name,
      );
    expect(names(undefined)).toEqual(['empty', 'excavator']);
    expect(names('3,000 lb')).toEqual(['empty', 'excavator']);
    expect(names('14,000 lb')).toEqual(['empty', 'loaded to its GVWR over the whole deck', 'excavator']);
  });
  it('asks of a weighed trailer its weight and its tongue, and not where its cargo stands', () => {
    const weighed = (curb: object) =>
      changedAll(tiltDeck(), { 'trailer.curb': curb, cargo: [{ name: 'bale', weight: '900 lb' }] });
    const both = { weight: '3,650 lb', tongue: '520 lb' };
    expect(rightOf(axlePlace({ spec: weighed(both), moving: [] }))[0]?.how).toBe('weighed');
    expect(leftOf(axlePlace({ spec: weighed({ weight: '3,650 lb' }), moving: [] }))).toMatchObject({
      tag: 'NothingToAnswer',
      path: 'trailer.curb',
    });
  });
  it('runs from the greatest near end to the least far end, and names what sets them', () => {
    expect(plain(one!.from)).toBe(Math.max(...one!.limits.map(({ from }) => plain(from))));
    expect(plain(one!.to)).toBe(Math.min(...one!.limits.map(({ to }) => plain(to))));
    expect(one!.fromSetBy).toEqual(
      one!.limits.filter(({ from }) => plain(from) === plain(one!.from)).map(({ name }) => name),
    );
    expect(one!.none).toBe(plain(one!.from) > plain(one!.to));
  });
  it('sees a weighed trailer as weighed, and says so', () => {
    const spec = changedAll(tiltDeck(), { 'trailer.curb': { weight: '3,650 lb', tongue: '520 lb' } });
    const [told] = rightOf(axlePlace({ spec, moving: [], machines }));
    expect(told!.how).toBe('weighed');
    // By hand: M = (3,650 - 520) x 204; empty, low end: a = M / (3,650 - 365).
    expect(plain(told!.limits[0]!.from)).toBeCloseTo((3130 * 204) / (3650 - 365), 10);
    expect(leftOf(axlePlace({ spec, moving: [], decks: ['22 ft'] })).tag).toBe('NothingToAnswer');
  });
  it('moves axles, weight and tail with the deck', () => {
    const found = rightOf(axlePlace({ spec: builtUp(), moving, machines, decks: ['18 ft', '20 ft', '22 ft'] }));
    expect(found.map(({ deck }) => plain(deck))).toEqual([216, 240, 264]);
    expect(plain(found[1]!.from)).toBe(plain(one!.from));
    const empties = found.map(({ empty }) => plain(empty));
    expect(empties[0]! < empties[1]! && empties[1]! < empties[2]!).toBe(true);
    // 89.3 lb a foot by the deck growth of the assessment; spaced crossmembers come by the piece.
    expect(empties[2]! - empties[1]!).toBeCloseTo(178.6, -2);
    expect(plain(found[2]!.limits[1]!.from)).toBeGreaterThan(plain(found[0]!.limits[1]!.from));
    const itemsOf = (spec: unknown) =>
      (spec as { trailer: { curb: { items: { name: string; at: string }[] } } }).trailer.curb.items;
    const tail = itemsOf(grown(builtUp(), 24));
    expect(tail.find(({ name }) => name === 'knife-edge tail plate')?.at).toBe('322 in');
    // What stands within a foot of the end of the deck, at 302 in, goes with it.
    const items = ['289.5 in', '290 in', '303 in', 'somewhere'].map((at) => ({ name: at, weight: '10 lb', at }));
    const moved = itemsOf(grown(changed(builtUp(), 'trailer.curb.items', items), -12));
    expect(moved.map(({ at }) => at)).toEqual(['289.5 in', '278 in', '291 in', 'somewhere']);
  });
  it('tells the conflict when no place serves all', () => {
    const far = [...machines, { name: 'roller', weight: lb(9000), behindDeckFront: inch(40) }];
    const [conflict] = rightOf(axlePlace({ spec: builtUp(), moving, machines: far }));
    expect(conflict!.none).toBe(true);
    expect(axleIntervalText(conflict!)).toBe(
      'deck 240 in: no place serves all: from 199 in (loaded to its GVWR over the whole deck) to 137.2 in (roller); built up',
    );
  });
  it('refuses a line that is not there, a deck that is no length, a trailer without a deck', () => {
    expect(leftOf(axlePlace({ spec: builtUp(), moving: ['axels'] })).tag).toBe('NotInTheSpec');
    const all = rightOf(assess(builtUp())).weights.built!.lines.map(({ name }) => name);
    expect(leftOf(axlePlace({ spec: builtUp(), moving: all }))).toMatchObject({
      tag: 'UnusableFigure',
      path: 'moving',
    });
    // The lines weigh 3,622 lb together.
    expect(leftOf(axlePlace({ spec: builtUp(), moving: all }))).toMatchObject({ found: '3622 lb of 3622 lb' });
    expect(leftOf(axlePlace({ spec: builtUp(), moving, decks: [] }))).toMatchObject({
      tag: 'NothingToAnswer',
      path: 'decks',
    });
    expect(leftOf(axlePlace({ spec: builtUp(), moving, decks: ['20 ft', 'x'.repeat(60)] }))).toMatchObject({
      tag: 'UnusableFigure',
      path: 'decks.1',
      found: 'x'.repeat(40),
    });
    expect(leftOf(axlePlace({ spec: changedAll(builtUp(), { 'trailer.deck': undefined }), moving })).tag).toBe(
      'NothingToAnswer',
    );
  });
});
