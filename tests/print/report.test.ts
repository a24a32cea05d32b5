/** The report: 80 columns whatever the names, loads up and capacities down, every check with what it rests on, cautions last. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../src/assessment/index.js';
import { cautions, report } from '../../src/print/index.js';
import { rightOf } from '../helpers/either.js';
import { metric } from '../helpers/metric.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const answer = (spec: unknown): Assessment => rightOf(assess(spec));
const print = (spec: unknown): string => report(answer(spec));
const flat = (text: string): string => text.replace(/\s+/g, ' ');
const tooLong = (text: string): readonly string[] => text.split('\n').filter((line) => [...line].length > 80);
const change = (...changes: readonly (readonly [string, unknown])[]): unknown =>
  changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck());

describe('80 columns', () => {
  const words = 'a rather long name that somebody at the yard found telling '.repeat(4).slice(0, 200);
  const unbroken = 'Ω'.repeat(200);
  it('hold for the example, in pounds and in kilograms', () => {
    expect([tooLong(print(tiltDeck())), tooLong(print(metric(tiltDeck())))]).toEqual([[], []]);
  });
  it.each([words, unbroken])('hold for names of 200 letters: %s', (name) => {
    for (const path of ['name', 'trailer.name', 'cargo.0.name'])
      expect(tooLong(print(change([path, name])))).toEqual([]);
    expect(tooLong(print(change(['name', undefined], ['trailer.name', name])))).toEqual([]);
    expect(
      tooLong(print(change(['cargo.0.name', name], ['cargo.0.front', undefined], ['cargo.0.tiedowns', undefined]))),
    ).toEqual([]);
    expect(tooLong(print(change(['trailer.guideline', { low: '10 %', high: '15 %', source: name }])))).toEqual([]);
    expect(tooLong(print(change(['trailer.curb', { items: [{ name, weight: '3,650 lb', at: '180 in' }] }])))).toEqual(
      [],
    );
  });
  it('hold when every limit ties and is named', () => {
    const spec = change(
      ['tow', undefined],
      ['trailer.gvwr', '14,000 lb'],
      ['trailer.coupler', { gross: '14,000 lb', tongue: '1,680 lb' }],
    );
    expect(answer(spec).payload?.payload.governed.governing.length).toBeGreaterThan(2);
    expect(tooLong(print(spec))).toEqual([]);
  });
  it('hold for an overload, a lifted tongue and an empty trailer', () => {
    for (const spec of [
      change(['cargo.0.weight', '99,999 lb']),
      change(['cargo.0.front', '250 in']),
      change(['cargo', []]),
      change(['cargo', undefined], ['tow', undefined]),
    ])
      expect(tooLong(print(spec))).toEqual([]);
  });
  it('hold for what says least', () =>
    expect(tooLong(print({ trailer: { hitch: 'gooseneck', axles: [{ beam: '3,500 lb' }] } }))).toEqual([]));
});

describe('what is printed', () => {
  const text = print(tiltDeck());
  it('names the governing limit of the payload and the check closest to its limit', () => {
    const { payload: carry, tightest } = answer(tiltDeck());
    for (const { name } of carry?.payload.governed.governing ?? [])
      expect(flat(text)).toMatch(
        new RegExp(`payload, the least of these [. ]+ [\\d,]+ lb \\(?(set by|.*set by) .*${name}`),
      );
    expect(
      text.split('\n').filter((line) => /^ {2}(ok|OVER)\* |^ {4}ok\* /.test(line) || /^(OVER| {2}ok)\*/.test(line))
        .length,
    ).toBe(tightest.length);
  });
  it('has a line for every check, with its verdict and what it rests on', () => {
    const { checks, partChecks } = answer(tiltDeck());
    for (const { what, reserve } of [...checks, ...partChecks])
      expect(flat(text)).toMatch(new RegExp(`ok\\*? ${what}( [\\d,.%-]+){4} ${reserve.why.basis}`));
  });
  it('rounds a load up and a capacity down to the pound, in print only', () => {
    const over = print(change(['cargo.0.weight', '9,000.2 lb'], ['trailer.gvwr', '14,000.9 lb']));
    expect(flat(over)).toMatch(/gross against GVWR 12,651 14,000 1,350 90\.4% stated/);
    expect(flat(over)).toMatch(/by GVWR [. ]+ 10,350 lb/);
  });
  it('never prints an overload as within: a hair over shows a negative rest', () => {
    const spec = change(['cargo.0.weight', '10,350.001 lb'], ['tow', undefined]);
    expect(flat(print(spec))).toMatch(/OVER\*? gross against GVWR 14,001 14,000 -1 100\.1% stated/);
    expect(flat(print(change(['cargo.0.weight', '10,350 lb'])))).toMatch(
      /ok\*? gross against GVWR 14,000 14,000 0 100% stated/,
    );
  });
  it('prints the pressure that tires need as it is molded: in kilopascals with psi beside them, never above', () => {
    const tires = { designation: '185R14C 98N', count: 2, fitment: 'single', molded: { pressure: '450 kPa' } };
    const need = (molded: object): string =>
      flat(
        print(
          change(
            ['trailer.axles', [{ at: '204 in', tires: { ...tires, molded } }]],
            ['trailer.gvwr', undefined],
            ['cargo', []],
          ),
        ),
      );
    expect(need({ pressure: '450 kPa' })).toMatch(
      /axle 1 tires need, cold [. ]+ 450 kPa \(65\.2 psi\) \(?good for 1,653 lb/,
    );
    expect(need({ pressure: '65.5 psi' })).toMatch(/axle 1 tires need, cold [. ]+ 65\.5 psi \(?good for 1,653 lb/);
  });
  it('says how many checks are over, and what is lifted', () => {
    expect(flat(text)).toMatch(/No check is over\. Not well besides: loading lifts the truck/);
    expect(flat(print(change(['trailer.deck', undefined])))).toMatch(/All \d+ checks are within their limits\./);
    expect(flat(print(change(['trailer.gvwr', '12,000 lb'])))).toMatch(/1 of \d+ checks is over\./);
    expect(flat(print(change(['cargo.0.front', '170 in'], ['tow', undefined], ['trailer.jack', undefined])))).toContain(
      'No check is over. Lifted: tongue.',
    );
    expect(flat(print({ trailer: { hitch: 'ball', axles: [{ gawr: '3,500 lb' }] } }))).toMatch(
      /Nothing could be checked\. \d+ questions are open: see below\./,
    );
  });
  it('does not call a load below zero ok: a front axle that leaves the ground is told, and the answer does not hold', () => {
    // A tongue of 1,491 lb on a ball a whole wheelbase and more behind a light truck; no rear rating is given, so that nothing is over.
    const spec = change(
      ['tow', { front: '1,600 lb', rear: '4,000 lb', frontGawr: '6,000 lb', wheelbase: '100 in', overhang: '110 in' }],
      ['trailer.jack', undefined],
    );
    const { verdict, checks, lifted } = answer(spec);
    expect([verdict, checks.some(({ verdict }) => verdict === 'over'), lifted.map(({ what }) => what)]).toEqual([
      'over',
      false,
      ['tow vehicle front axle'],
    ]);
    expect(flat(print(spec))).toMatch(/No check is over\. Lifted: tow vehicle front axle\./);
    expect(flat(print(spec))).toMatch(
      /LIFT tow vehicle front axle against tow vehicle front GAWR -39 6,000 6,039 - stated/,
    );
  });
  it('keeps columns apart for figures of seven digits', () => {
    const blocks = Array.from({ length: 9 }, (_, i) => ({ name: `block ${i}`, weight: '199,999 lb', at: '150 in' }));
    expect(print(change(['cargo', blocks]))).toMatch(/gross against GVWR +1,803,641 +14,000 +-1,789,641 +>999%/);
  });
  it('lists every open question', () => {
    const spec = change(['trailer.gvwr', undefined], ['trailer.axles.0.beam', undefined]);
    for (const { what, missing } of answer(spec).notChecked)
      expect(flat(print(spec))).toContain(`${what}: ${missing} not given`);
  });
  it('shows the claim only beside its check', () =>
    expect(flat(text)).toMatch(
      /gives a claim of 12,030 lb; loaded, the gross weight would be 15,680 lb against a GVWR of 14,000 lb: over\./,
    ));
  it('ends with the cautions', () => {
    const end = flat(text).slice(flat(text).indexOf('CAUTIONS'));
    expect(end.trim()).toBe(flat(`CAUTIONS ${cautions.map((caution) => `- ${caution}`).join(' ')}`));
    expect(end).toMatch(
      /Ratings are what the labels.*Weigh the loaded combination.*No safe speed.*State and local rules.*licensed engineer/,
    );
  });
  it('has no heading without lines under it', () => {
    for (const spec of [tiltDeck(), { trailer: { hitch: 'ball', axles: [{ gawr: '3,500 lb' }] } }])
      expect(print(spec)).not.toMatch(/\n\n[A-Z ,:]+\n(\n|$)/);
  });
});
