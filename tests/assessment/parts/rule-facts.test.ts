/** What the published rules are asked with: every fact of a shipped rule is worked out of a spec, or a key of the spec gives it. */
import { describe, expect, it } from 'vitest';
import { assessJson, ruleFindings } from '../../../src/assessment/index.js';
import { type Facts, type Finding, federalRules, type Line, type Rule } from '../../../src/rules/index.js';
import { keyRows } from '../../../src/spec/keys.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const change = (...changes: readonly (readonly [string, unknown])[]): unknown =>
  changes.reduce((spec: unknown, [path, value]) => changed(spec, path, value), tiltDeck());
const factsOf = (spec: unknown): Facts => rightOf(assessJson(spec)).rules.facts;
const finding = (id: string, spec: unknown): Finding =>
  ruleFindings(rightOf(assessJson(spec)).rules).find((each) => each.id === id) as Finding;
const outcome = (id: string, spec: unknown): string => finding(id, spec).outcome;

/** Facts as they are given, behind those that a rule works out by its definition. */
const behind: Readonly<Record<string, readonly string[]>> = {
  'tow vehicle GVWR or gross': ['tow vehicle GVWR', 'tow vehicle gross'],
  'towed GVWR or gross': ['trailer GVWR', 'trailer gross'],
  'combined gross': ['tow vehicle gross', 'trailer gross'],
  GCWR: ['tow vehicle GVWR', 'tow vehicle gross', 'trailer GVWR', 'trailer gross', 'label GCWR'],
  'greatest of GVWR, gross, GCWR': [
    'tow vehicle GVWR',
    'tow vehicle gross',
    'trailer GVWR',
    'trailer gross',
    'label GCWR',
  ],
};
function namesIn(line: Line): readonly string[] {
  if ('least' in line) return line.least.flatMap(namesIn);
  return 'of' in line ? [line.of] : [];
}
const askedBy = ({ when = [], unless = [], where = [], all }: Rule): readonly string[] => [
  ...when,
  ...unless,
  ...[...where, ...all].flatMap(({ test, line }) => [test, ...namesIn(line)]),
];
const asked = [...new Set(federalRules.flatMap(askedBy).flatMap((name) => behind[name] ?? [name]))];

/** The keys without which a spec does not give a fact. */
const keys: Readonly<Record<string, readonly string[]>> = {
  commercial: ['rules.commercial'],
  interstate: ['rules.interstate'],
  'surge brakes': ['rules.surgeBrakes'],
  'path deviation': ['rules.pathDeviation'],
  'added weight': ['rules.addedWeight'],
  'label GCWR': ['rules.labelGcwr'],
  'trailer GVWR': ['trailer.gvwr'],
  'trailer gross': ['trailer.curb'],
  'tow vehicle GVWR': ['tow.gvwr'],
  'tow vehicle gross': ['tow.front', 'tow.rear'],
  'towing axle weights': ['tow.front', 'tow.rear'],
  'weight on tow vehicle': ['cargo.0.at'],
  'trailer axle weights': ['cargo.0.at'],
  'safety device strength': ['trailer.chains'],
  'overall width': ['trailer.width'],
  'overall length': ['trailer.length'],
  'cargo article weight': ['cargo'],
  'lightest article not tied as heavy equipment': ['cargo'],
  'heaviest single axle': ['tow.wheelbase', 'tow.overhang', 'tow.rear', 'trailer.axles.1.at'],
  'heaviest tandem': ['tow.wheelbase', 'tow.overhang', 'tow.rear', 'trailer.axles.1.at'],
  // Part of every trailer that a spec can tell of rests on the truck.
  'full trailer': [],
};

describe('a rule asks only facts that a spec can give', () => {
  const full = change(
    ['rules.surgeBrakes', true],
    ['rules.pathDeviation', '2 in'],
    ['rules.addedWeight', '60 lb'],
    ['rules.labelGcwr', '30,000 lb'],
  );
  it('each of them is on the list, and none that no rule asks', () => {
    expect([...asked].sort()).toEqual(Object.keys(keys).sort());
  });
  it.each(asked)('%s', (name) => {
    expect(factsOf(full)[name as keyof Facts], 'told whole').toBeDefined();
    for (const path of keys[name] ?? []) {
      const without =
        path === 'cargo.0.at'
          ? changed(changed(full, 'cargo.0.at', undefined), 'cargo.0.front', undefined)
          : changed(full, path, undefined);
      expect(factsOf(without)[name as keyof Facts], `without ${path}`).toBeUndefined();
    }
  });
  it('the keys of facts that only rules ask stand in the one table of keys', () => {
    const known = keyRows.find(({ type }) => type === 'Rules')?.rows.map(([key]) => key) ?? [];
    for (const path of Object.values(keys).flat())
      if (path.startsWith('rules.')) expect(known).toContain(path.slice('rules.'.length));
  });
  it('and so every shipped rule can be told', () => {
    expect(ruleFindings(rightOf(assessJson(full)).rules).filter((each) => each.outcome === 'cannot be told')).toEqual(
      [],
    );
  });
});

describe('weight added before the first sale', () => {
  const light = (...changes: readonly (readonly [string, unknown])[]): unknown =>
    change(['trailer.gvwr', '10,000 lb'], ['cargo.0.weight', '6,000 lb'], ...changes);
  const option = [{ name: 'winch', weight: '101 lb', at: '40 in' }];
  it.each([
    ['told', [['rules.addedWeight', '101 lb']], 'applies'],
    ['told and not above the line', [['rules.addedWeight', '100 lb']], 'does not apply'],
    ['none', [['rules.addedWeight', '0 lb']], 'does not apply'],
    ['as options on a weighed trailer', [['trailer.curb.added', option]], 'applies'],
    [
      'as options, none of them before the sale',
      [
        ['trailer.curb.added', option],
        ['rules.addedWeight', '0 lb'],
      ],
      'does not apply',
    ],
    ['not told', [], 'cannot be told'],
    [
      'where no capacity figure is shown',
      [
        ['trailer.gvwr', '14,000 lb'],
        ['rules.addedWeight', '500 lb'],
      ],
      'does not apply',
    ],
  ] as const)('%s', (_, changes, said) => {
    expect(outcome('relabel', light(...changes))).toBe(said);
  });
});

describe('the path of the trailer', () => {
  it.each([
    ['3 in', 'kept'],
    ['3.1 in', 'crossed'],
  ])('%s off: %s', (off, said) => {
    expect(outcome('tracking', change(['rules.pathDeviation', off]))).toBe(said);
  });
});

describe('surge brakes behind this truck, by the greater of GVWR and gross', () => {
  // 1.25 x 11,200 lb = 14,000 lb; the excavator of 11,000 lb makes 14,650 lb gross.
  it.each([
    ['11,200 lb', '9,000 lb', 'kept'],
    ['11,199 lb', '9,000 lb', 'crossed'],
    ['11,200 lb', '11,000 lb', 'crossed'],
  ])('truck %s, machine %s: %s', (gvwr, weight, said) => {
    const spec = change(['rules.surgeBrakes', true], ['tow.gvwr', gvwr], ['cargo.0.weight', weight]);
    expect(outcome('surge', spec)).toBe(said);
  });
  it('does not apply to a trailer with other brakes', () => {
    expect(outcome('surge', change(['rules.surgeBrakes', false]))).toBe('does not apply');
  });
});

describe('axles', () => {
  it('a rig without a tandem has no line on tandems', () => {
    const spread = change(['trailer.axles.0.at', '160 in'], ['trailer.axles.1.at', '258 in']);
    expect(factsOf(spread)['heaviest tandem']).toBe('none');
    expect(outcome('ax-tandem', spread)).toBe('does not apply');
    expect(outcome('ax-single', spread)).toBe('kept');
  });
  it('axles 48 in apart are one', () => {
    expect(outcome('ax-tandem', change(['trailer.axles.0.at', '180 in'], ['trailer.axles.1.at', '228 in']))).toBe(
      'kept',
    );
  });
  it('one axle behind a truck of two is no tandem, wherever it stands', () => {
    const one = changed(change(['rules.axleGroups', undefined]), 'trailer.axles.1', undefined) as {
      readonly trailer: { readonly axles: readonly unknown[] };
    };
    const single = changed(one, 'trailer.axles', one.trailer.axles.slice(0, 1));
    expect(factsOf(single)['heaviest tandem']).toBe('none');
    expect(factsOf(changed(single, 'tow', undefined))['heaviest tandem']).toBeUndefined();
  });
});

describe('sections of the cargo rules', () => {
  const excavator =
    (tiltDeck() as unknown as { readonly cargo: readonly Readonly<Record<string, unknown>>[] }).cargo[0] ?? {};
  const pieces = (...cargo: readonly Readonly<Record<string, unknown>>[]): unknown => change(['cargo', cargo]);
  const { section: _, ...untold } = excavator;
  it.each([
    ['tied as heavy equipment', [excavator], 'does not apply'],
    ['no section told', [untold], 'applies'],
    ['tied by the general section', [{ ...excavator, section: 'general' }], 'applies'],
    ['a car behind the machine', [excavator, { name: 'car', weight: '3,000 lb', at: '280 in' }], 'applies'],
  ])('automobiles and vans, %s: %s', (_what, cargo, said) => {
    expect(outcome('light-veh', pieces(...cargo))).toBe(said);
  });
  it('the lightest piece is asked of the section on light ones, the heaviest of the other', () => {
    const spec = pieces({ ...untold, weight: '10,001 lb' }, { name: 'car', weight: '3,000 lb', at: '180 in' });
    expect(['heavy-eq', 'light-veh'].map((id) => outcome(id, spec))).toEqual(['applies', 'applies']);
  });
  it('an empty deck ties nothing', () => {
    expect(['heavy-eq', 'light-veh', 'light-eq-option'].map((id) => outcome(id, pieces()))).toEqual(
      Array(3).fill('does not apply'),
    );
  });
  it('a piece of no weight tells nothing', () => {
    const spec = change(
      ['cargo', [{ name: 'empty crate', weight: '0 lb', at: '180 in' }]],
      ['trailer.ramps', undefined],
    );
    expect(outcome('heavy-eq', spec)).toBe('cannot be told');
  });
});

describe('brakes, exception and breakaway of a light trailer agree', () => {
  const ids = ['brake-3000', 'brake-all', 'breakaway'];
  it.each([
    ['9,000 lb', ['does not apply', 'applies', 'applies']],
    ['400 lb', ['applies', 'does not apply', 'does not apply']],
  ])('machine of %s', (weight, said) => {
    const spec = change(['cargo.0.weight', weight], ['trailer.curb', { weight: '2,500 lb', tongue: '300 lb' }]);
    expect(ids.map((id) => outcome(id, spec))).toEqual(said);
  });
});

describe('axle groups that cannot be asked', () => {
  it('a wheelbase that is not told is an open question', () => {
    const open = rightOf(assessJson(change(['tow.wheelbase', undefined])));
    expect(open.rules.groups).toEqual([]);
    expect(open.notChecked.map(({ what }) => what)).toContain('axle groups');
    expect(open.rules.facts['heaviest tandem']).toBeUndefined();
  });
  it('with an axle in the air no group is weighed', () => {
    const rear = rightOf(
      assessJson(change(['cargo.0.front', undefined], ['cargo.0.balancePoint', undefined], ['cargo.0.at', '400 in'])),
    );
    expect(rear.verdict).toBe('over');
    expect(rear.rules.groups).toEqual([]);
  });
});

it('two chains are a safety device of twice the strength of one', () => {
  const strength = (count: number) =>
    Object.entries(factsOf(change(['trailer.chains', { each: '5,000 lb', count }]))).find(
      ([name]) => name === 'safety device strength',
    )?.[1] as { readonly value: { readonly value: { toNumber(): number } } } | undefined;
  expect([1, 2].map((count) => strength(count)?.value.value.toNumber())).toEqual([5000, 10_000]);
});
