/** The three invented frames: each is answered, has its axles inside their interval, and grows with its deck. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { axlePlace, frameChecks } from '../../src/choose/index.js';
import { statedAllowable } from '../../src/members/index.js';
import { inch, ksi } from '../../src/units/index.js';
import { plain, rightOf } from '../helpers/either.js';

interface Frame {
  readonly name: string;
  readonly trailer: {
    readonly axles: readonly { readonly at: string }[];
    readonly deck: { readonly rear: string };
    readonly curb: { readonly frame: readonly { readonly name: string; readonly member: string }[] };
  };
}

const folder = new URL('../../examples/frames/', import.meta.url);
const files = readdirSync(folder);
const read = (file: string): Frame => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Frame;
const inches = (text: string): number => Number.parseFloat(text);
const moving = [
  'axle with brakes, front',
  'axle with brakes, rear',
  'springs, rockers and hangers',
  'wheel and tire',
  'fenders',
];
const allowable = rightOf(statedAllowable(ksi(20), 'invented for the test'));

describe('typical frames', () => {
  it('are three, on rails of 5, 6 and 8 in, and say that they are invented', () => {
    const rails = files.map((file) => read(file).trailer.curb.frame[0]);
    expect(rails.map((rail) => rail?.member)).toEqual(['C5X6.7', 'C6X8.2', 'C8X11.5']);
    for (const file of files) expect(read(file).name, file).toMatch(/invented/);
  });
  it.each(files)('%s is within, and its axles stand inside their interval', (file) => {
    const spec = read(file);
    const { verdict, attention, payload, deckGrowth } = rightOf(assessJson(spec));
    expect([verdict, attention]).toEqual(['within', []]);
    expect(plain(payload!.anywhere!.weight)).toBeGreaterThan(4000);
    expect(plain(deckGrowth!.growth.perFoot)).toBeGreaterThan(40);
    const [place] = rightOf(axlePlace({ spec: spec as never, moving }));
    const [front, rear] = spec.trailer.axles.map(({ at }) => inches(at)) as [number, number];
    expect([place!.none, place!.how]).toEqual([false, 'built up']);
    expect((front + rear) / 2).toBeGreaterThanOrEqual(plain(place!.from));
    expect((front + rear) / 2).toBeLessThanOrEqual(plain(place!.to));
  });
  it.each(files)('%s bears itself on its rails', (file) => {
    const spec = read(file);
    const [rail] = spec.trailer.curb.frame;
    const end = inch(inches(spec.trailer.deck.rear));
    const found = rightOf(
      frameChecks({ spec: spec as never, rail: { section: rail!.member, count: 2, end }, allowable }),
    );
    expect(found.rail.bending.verdict).toBe('within');
  });
});
