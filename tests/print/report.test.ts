/** The report: 80 columns whatever the names, loads up and capacities down, every check with what it rests on, cautions last. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, ruleFindings } from '../../src/assessment/index.js';
import { brief, briefOf, cautions, report } from '../../src/print/index.js';
import { hasEffect } from '../../src/rules/index.js';
import { lb, roundCapacityDown, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { metric } from '../helpers/metric.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { rigs } from '../helpers/rigs.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const answer = (spec: unknown): Assessment => rightOf(assessJson(spec));
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
    expect(answer(spec).payload?.anywhere?.governing.length).toBeGreaterThan(2);
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
    for (const { name } of carry?.best?.governing ?? [])
      expect(flat(text)).toMatch(
        new RegExp(`payload(, at the best share)? [. ]+ [\\d,]+ lb \\(?(set by|.*set by) .*${name}`),
      );
    expect(
      text.split('\n').filter((line) => /^ {2}(ok|OVER)\* |^ {4}ok\* /.test(line) || /^(OVER| {2}ok)\*/.test(line))
        .length,
    ).toBe(tightest.length);
  });
  it('has a row for every check, the figures on the line its name begins on', () => {
    const { checks, partChecks } = answer(tiltDeck());
    const rows = text
      .split('\n')
      .filter((line) => /^ {2}(ok|OVER)\*? .* [\d,-]+ +[\d,]+ +[\d,-]+ +[\d.>]+%$/.test(line));
    expect(rows.length).toBe(checks.length + partChecks.length);
    expect(text).toContain('Weakest basis: stated (25).');
  });
  it('rounds a load up and a capacity down to the pound, in print only', () => {
    const over = print(change(['cargo.0.weight', '9,000.2 lb'], ['trailer.gvwr', '14,000.9 lb']));
    expect(flat(over)).toMatch(/gross \/ GVWR 12,651 14,000 1,350 90\.4%/);
    expect(flat(over)).toMatch(/by GVWR [. ]+ 10,350 lb/);
  });
  it('never prints an overload as within: a hair over shows a negative rest', () => {
    const spec = change(['cargo.0.weight', '10,350.001 lb'], ['tow', undefined]);
    expect(flat(print(spec))).toMatch(/OVER\*? gross \/ GVWR 14,001 14,000 -1 100\.1%/);
    expect(flat(print(change(['cargo.0.weight', '10,350 lb'])))).toMatch(/ok\*? gross \/ GVWR 14,000 14,000 0 100%/);
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
      /axle 1 tires, cold: not below [. ]+ 450 kPa \(65\.2 psi\) \(?carries 1,653 lb/,
    );
    expect(need({ pressure: '65.5 psi' })).toMatch(/axle 1 tires, cold: not below [. ]+ 65\.5 psi \(?carries 1,653 lb/);
  });
  it('does not call a load below zero ok: a front axle that leaves the ground is told, and the answer does not hold', () => {
    // A tongue of 1,491 lb on a ball a whole wheelbase and more behind a light truck; no rear rating is given, so that nothing is over.
    const spec = change(
      ['tow', { front: '1,600 lb', rear: '4,000 lb', frontGawr: '6,000 lb', wheelbase: '100 in', overhang: '110 in' }],
      ['trailer.jack', undefined],
    );
    const { verdict, checks, uplift } = answer(spec);
    expect([verdict, checks.some(({ verdict }) => verdict === 'over'), uplift.lifted.map(({ what }) => what)]).toEqual([
      'over',
      false,
      ['tow vehicle front axle'],
    ]);
    expect(flat(print(spec))).toMatch(/OVER: no rating is exceeded, but tow vehicle front axle lifts\./);
    expect(flat(print(spec))).toMatch(/LIFT truck front axle \/ front GAWR -40 6,000 6,039 -/);
  });
  it('keeps columns apart for figures of seven digits', () => {
    const blocks = Array.from({ length: 9 }, (_, i) => ({ name: `block ${i}`, weight: '199,999 lb', at: '150 in' }));
    expect(print(change(['cargo', blocks]))).toMatch(/gross \/ GVWR +1,803,641 +14,000 +-1,789,641 +>999%/);
  });
  it('lists every open question', () => {
    const spec = change(['trailer.gvwr', undefined], ['trailer.axles.0.beam', undefined]);
    for (const { what, missing } of answer(spec).notChecked)
      expect(flat(print(spec))).toContain(`${what}: ${missing} not given`);
  });
  it('shows no claim that adds the tongue load to the payload', () => expect(flat(text)).not.toContain('claim'));
  it('begins with the first page', () => {
    for (const { spec } of rigs) {
      const read = answer(spec);
      expect(report(read).startsWith(`${brief(read)}\n`)).toBe(true);
    }
  });
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

describe('published rules', () => {
  const all = ruleFindings(answer(tiltDeck()).rules);
  const withEffect = all.filter(hasEffect);
  it('that apply stand in full, and those that a figure comes near to', () => {
    const text = flat(print(tiltDeck()));
    for (const { topic, outcome, rule } of withEffect) expect(text).toContain(`${topic}: ${outcome}: ${rule.effect}`);
    expect(text).toMatch(
      /CDL group, by weight: does not apply\. GCWR 25,800 lb >= 26,001 lb: no \(201 lb below the line\)/,
    );
    expect(text).toMatch(
      /- 2 other limits are kept; 10 other rules do not apply; 2 other rules cannot be told for want of facts\./,
    );
    expect(text).not.toContain('gross weight, Interstate');
  });
  it('are all printed where all are asked for', () => {
    const text = flat(report(answer(tiltDeck()), { rules: 'all' }));
    for (const { topic, outcome } of all) expect(text).toContain(`${topic}: ${outcome}`);
    expect(text).not.toMatch(/other (rule|limit)/);
  });
  it('put a limit that is crossed first, on the first page too', () => {
    const wide = answer(changed(tiltDeck(), 'trailer.width', '104 in'));
    const [first] = briefOf(wide).rules;
    expect([first?.id, first?.kind, first?.outcome]).toEqual(['width', 'limit', 'crossed']);
    const text = flat(report(wide));
    expect(text).toMatch(/Rules overall width, National Network, crossed/);
    const rules = text.slice(text.indexOf('PUBLISHED RULES'));
    expect(rules.indexOf('overall width, National Network: crossed:')).toBeLessThan(rules.indexOf(': applies:'));
  });
  it('keep the unit they are printed in', () => {
    const text = flat(report(answer(tiltDeck()), { units: 'metric' }));
    expect(text).toContain('greatest of GVWR, gross, GCWR 25,800 lb >= 10,001 lb');
    expect(text).toContain('trailer gross 5,737.94 kg (12,650 lb) >= 1,400 kg');
  });
});

describe('within the first forty lines of ten unlike rigs', () => {
  it.each(rigs)('$file: verdict, payload, place, and every rule that applies', ({ spec }) => {
    const read = answer(spec);
    const top = flat(report(read).split('\n').slice(0, 40).join('\n'));
    const { anywhere, places, rules, verdict } = briefOf(read);
    expect(top).toContain(
      { over: 'OVER: ', attention: 'ATTENTION: ', within: 'WITHIN: ', unchecked: 'NOT CHECKED: ' }[verdict],
    );
    if (anywhere) expect(top).toContain(show(roundCapacityDown(anywhere.weight.value, lb(1))));
    for (const { name } of places)
      expect(top).toMatch(new RegExp(`${name}: (front best at|NO place)|no place for ${name}`));
    for (const { topic } of rules) expect(top).toContain(topic);
  });
});

describe('in kilograms', () => {
  it.each(rigs)('$file: 80 columns, and no pound but in a rule or a remark', ({ spec }) => {
    const text = report(answer(spec), { units: 'metric' });
    expect(tooLong(text)).toEqual([]);
    const tables = text.slice(text.indexOf('WEIGHTS'), text.indexOf('PUBLISHED RULES'));
    expect(tables.split('\n').filter((line) => / lb\b|\d"|\d in\b| ft\b/.test(line))).toEqual([]);
  });
  it('tells the same verdict, row by row, for random specs', () => {
    const marks = (text: string): readonly string[] => text.match(/^( {2}ok|OVER|LIFT)\*? /gm) ?? [];
    let rows = 0;
    for (const spec of randomSpecs(40, 7000)) {
      const read = assessJson(spec);
      if (isLeft(read)) continue;
      const [inPounds, inKilograms] = [report(read.right), report(read.right, { units: 'metric' })];
      expect(marks(inKilograms)).toEqual(marks(inPounds));
      rows += marks(inPounds).length;
      // A capacity is never printed above itself, nor a load below: what is over in one unit has a reserve below zero in both.
      for (const text of [inPounds, inKilograms])
        for (const line of text.split('\n').filter((each) => each.startsWith('OVER')))
          expect(line).toMatch(/ -[\d,]+ +[\d.>]+%$/);
    }
    expect(rows).toBeGreaterThan(500);
  });
});

describe('behind the tables', () => {
  it('stand all notes and all that is open, each under its heading, and none without any', () => {
    for (const { spec } of rigs) {
      const { notes, notChecked } = answer(spec);
      const text = print(spec);
      const [, behind = ''] = text.split(/\nNOTES\n/);
      expect(/\nNOTES\n/.test(text)).toBe(notes.length > 0);
      for (const { says } of notes) expect(flat(behind)).toContain(flat(says).slice(0, 40));
      const [, open = ''] = text.split(/\nNOT CHECKED\n/);
      expect(/\nNOT CHECKED\n/.test(text)).toBe(notChecked.length > 0);
      for (const { what, missing } of notChecked) expect(flat(open)).toContain(flat(`${what}: ${missing} not given`));
    }
  });
  it('names the one axle group that is closest to its limit', () => {
    const { rules } = answer(tiltDeck());
    const shares = rules.groups.flatMap(({ check }) => (check ? [check.used.value.value.toNumber()] : []));
    const closest = rules.groups.find(({ check }) => check?.used.value.value.toNumber() === Math.max(...shares));
    expect(flat(print(tiltDeck()))).toContain(
      `Axle groups: ${rules.groups.length} asked; closest to its limit are axles ${closest?.first} to ${closest?.last},`,
    );
  });
  it('says of one reading of tiedowns nothing about governing', () => {
    for (const { spec } of rigs) {
      const counts = (answer(spec).tiedowns.pieces ?? []).flatMap(({ answer: found }) => found.counts);
      const text = flat(print(spec));
      for (const { reading, fitted } of counts) expect(text).toContain(`Number by ${reading}: ${fitted} fitted,`);
      const governing = counts.filter(({ governs }) => governs).length;
      expect(text.includes('this reading governs')).toBe(counts.length > 1 && governing > 0);
    }
  });
});
