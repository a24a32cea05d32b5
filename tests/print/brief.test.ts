/** The first page: twenty lines of eighty columns whatever the rig, in one order, with only figures of the assessment on it. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../src/assessment/index.js';
import { brief, briefOf } from '../../src/print/index.js';
import { compare, convert, kg, roundCapacityDown, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { rigs } from '../helpers/rigs.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const labels = ['Verdict', 'Lifts', 'Attention', 'Carries', 'Place', 'To put right', 'How sure', 'Rules', 'Not told'];
const answer = (spec: unknown): Assessment => rightOf(assessJson(spec));
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const change = (...changes: readonly (readonly [string, unknown])[]): unknown =>
  changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck());

/** The lines of a page, its labels in the order they stand in. */
const labelsOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .slice(1)
    .flatMap((line) => labels.filter((label) => line.startsWith(`${label} `) || line === label));

const fits = (text: string): void => {
  const lines = text.split('\n');
  expect(lines.length).toBeLessThanOrEqual(20);
  expect(lines.filter((line) => [...line].length > 80)).toEqual([]);
  expect(text).not.toMatch(/NaN|undefined|\[object|Infinity/);
  const found = labelsOf(text);
  expect(found).toEqual(labels.filter((label) => found.includes(label)));
  expect(found[0]).toBe('Verdict');
};

describe('twenty lines of eighty columns', () => {
  it.each(rigs)('$file, in pounds and in kilograms', ({ spec }) => {
    for (const units of ['us', 'metric'] as const) fits(brief(answer(spec), { units }));
  });
  it('random specs, with remedies and sureness too', () => {
    for (const spec of randomSpecs(60, 4000)) {
      const read = assessJson(spec);
      if (read._tag === 'Left') continue;
      const says = 'a sentence of some length that tells what to do and by how many pounds, 1,234 lb';
      fits(brief(read.right, { remedies: [{ says }, { says }, { says }], sureness: { says } }));
    }
  });
  it('names of 200 letters', () => {
    const name = 'Ω'.repeat(200);
    const spec = change(['name', name], ['cargo.0.name', name], ['trailer.gvwr', '9,000 lb']);
    fits(brief(answer(spec)));
  });
});

describe('what it says', () => {
  it('names what is over with its pounds, the worst first, once for each rating', () => {
    const page = flat(brief(answer(change(['trailer.gvwr', '12,000 lb'], ['tow.gcwr', '21,000 lb']))));
    expect(page).toMatch(/Verdict OVER: gross over GVWR by 650 lb combination over GCWR by 510 lb /);
    const over = rigs.find(({ file }) => file.startsWith('07'))?.spec;
    const ids = briefOf(answer(over)).over.map(({ id }) => id.replace(/@.*/, ''));
    expect(ids.length).toBeGreaterThan(4);
    expect(new Set(ids).size).toBe(ids.length);
  });
  it('says that something lifts where nothing is over', () => {
    const page = flat(
      brief(answer(change(['cargo.0.front', '170 in'], ['tow', undefined], ['trailer.jack', undefined]))),
    );
    expect(page).toMatch(/OVER: no rating is exceeded, but tongue lifts\. Lifts tongue: -\d+ lb/);
  });
  it('asks attention, or says within, or that nothing could be checked', () => {
    expect(flat(brief(answer(tiltDeck())))).toMatch(
      /ATTENTION: none of 42 checks is over, but something is not right: Attention loading lifts the truck/,
    );
    expect(brief(answer(change(['trailer.deck', undefined])))).toContain(
      'WITHIN: 42 checks made, each within its limit',
    );
    expect(brief(answer({ trailer: { hitch: 'ball', axles: [{ gawr: '3,500 lb' }] } }))).toMatch(
      /NOT CHECKED: nothing could be checked; \d+ questions open\./,
    );
  });
  it('tells the payload of the assessment, and what sets it', () =>
    expect(flat(brief(answer(tiltDeck())))).toContain(
      'Carries 9,683 lb with 12 % of the gross weight on the tongue; set by ball mount tongue',
    ));
  it('tells where the front of the machine stands best: in the middle of its window', () => {
    const [place] = briefOf(answer(tiltDeck())).places;
    const [from, best, to] = [place?.from, place?.best, place?.to].map((each) => each?.value.value.toNumber() ?? 0);
    expect(best).toBeCloseTo(((from ?? 0) + (to ?? 0)) / 2, 9);
    expect(place?.now?.front.value.value.toNumber()).toBe(122);
    expect(flat(brief(answer(tiltDeck())))).toMatch(
      /excavator: front best at 10' 3 3\/8" behind the coupler, from 9' 11 9\/16" to 10' 7 1\/16"; now 10' 2", inside/,
    );
  });
  it('names every rule that applies', () => {
    for (const { spec } of rigs) {
      const { rules } = briefOf(answer(spec));
      const page = flat(brief(answer(spec)));
      for (const { rule } of rules) expect(page).toContain(rule.topic);
    }
  });
  it('puts the question first that holds back most', () => {
    const half = rigs.find(({ file }) => file.startsWith('08'))?.spec;
    expect(briefOf(answer(half)).open[0]?.missing).toMatch(/how the axles share/);
    const bare = briefOf(answer({ trailer: { hitch: 'ball', axles: [{ gawr: '3,500 lb' }] } }));
    expect(bare.open[0]?.missing).toBe('weight of the empty trailer');
  });
  it('gives remedies and sureness their lines', () => {
    const page = brief(answer(tiltDeck()), {
      remedies: [{ says: 'set the rear legs before loading' }],
      sureness: { says: 'sure within' },
    });
    expect(flat(page)).toContain('To put right set the rear legs before loading How sure sure within');
  });
  it('gives the same verdict in kilograms, and a capacity that is never the larger one', () => {
    for (const { spec } of rigs) {
      const read = answer(spec);
      const word = (text: string): string | undefined => /Verdict +([A-Z ]+)/.exec(text)?.[1];
      expect(word(brief(read, { units: 'metric' }))).toBe(word(brief(read)));
      const weight = briefOf(read).anywhere?.weight.value;
      if (weight === undefined) continue;
      const printed = roundCapacityDown(convert(weight, 'kg'), kg(1));
      expect(brief(read, { units: 'metric' })).toContain(show(printed));
      expect(compare(convert(printed, 'lb'), weight)).toBeLessThanOrEqual(0);
    }
  });
});
