/** Every consecutive group of a combination, the caps, the exception, and how lengths and ties are counted. */
import { describe, expect, it } from 'vitest';
import { tightest } from '../../src/ratings/index.js';
import { axleGroupLimit, axleGroups, type PlacedAxle } from '../../src/rules/index.js';
import { type Derived, explain } from '../../src/trace/index.js';
import { foot, inch, lb, mm, show, type Unit } from '../../src/units/index.js';
import { expectReplays } from '../helpers/working.js';
import { leftOf, orFail } from './helpers.js';

const plain = { tie: 'down', lengthRounding: 'none' } as const;
const layout = (...axles: readonly (readonly [inches: number, pounds?: number])[]): readonly PlacedAxle[] =>
  axles.map(([at, pounds]) => ({ behind: inch(at), ...(pounds !== undefined && { weight: lb(pounds) }) }));

describe('caps by spread', () => {
  it.each([
    [2, '40', 'single', '20,000 lb'],
    [2, '40.01', 'tandem', '33,500 lb'],
    [2, '48', 'tandem', '34,000 lb'],
    [2, '96', 'tandem', '34,000 lb'],
    [3, '96', 'tandem', '34,000 lb'],
    [2, '96.01', 'group', '38,000 lb'],
    [3, '96.01', 'group', '42,000 lb'],
    [1, '0', 'single', '20,000 lb'],
  ])('%i axles within %s in: %s, %s', (count, length, kind, limit) => {
    const found = orFail(axleGroupLimit({ count, length: inch(length), twoTandems: false }, plain));
    expect([found.kind, show(found.limit.value)]).toEqual([kind, limit]);
    expectReplays(found.limit);
  });
  it('never above 80,000 lb', () => {
    expect(show(orFail(axleGroupLimit({ count: 9, length: foot(70), twoTandems: false }, plain)).limit.value)).toBe(
      '80,000 lb',
    );
  });
});

describe('two tandems', () => {
  it.each([
    ['431.9', '66,000 lb', 'group'],
    ['432', '68,000 lb', 'two tandems'],
    ['540', '72,000 lb', 'two tandems'],
  ])('%s in from first to last: %s', (length, limit, kind) => {
    const found = orFail(axleGroupLimit({ count: 4, length: inch(length), twoTandems: true }, plain));
    expect([show(found.limit.value), found.kind]).toEqual([limit, kind]);
  });
  it('a rounded length does not reach the exception', () => {
    expect(
      orFail(
        axleGroupLimit(
          { count: 4, length: inch('431.9'), twoTandems: true },
          { tie: 'down', lengthRounding: 'nearest foot, halves up' },
        ),
      ).kind,
    ).toBe('group');
  });
});

describe('ties and lengths', () => {
  const limit = (
    count: number,
    length: string,
    tie: 'up' | 'down',
    lengthRounding: 'none' | 'nearest foot, halves up' | 'nearest foot, halves down' = 'none',
  ): string =>
    show(
      orFail(axleGroupLimit({ count, length: foot(length), twoTandems: false }, { tie, lengthRounding })).limit.value,
    );
  it('sends a figure halfway down or up, as asked', () => {
    expect([limit(3, '9', 'down'), limit(3, '9', 'up')]).toEqual(['42,500 lb', '43,000 lb']);
    expect([limit(5, '18', 'down'), limit(5, '18', 'up')]).toEqual(['59,000 lb', '59,500 lb']);
    expect([limit(7, '27', 'down'), limit(7, '27', 'up')]).toEqual(['75,500 lb', '76,000 lb']);
  });
  it('counts the length as asked', () => {
    expect(limit(2, '9.5', 'down')).toBe('39,500 lb');
    expect(limit(2, '9.5', 'down', 'nearest foot, halves up')).toBe('40,000 lb');
    expect(limit(2, '9.5', 'down', 'nearest foot, halves down')).toBe('39,000 lb');
    expect(limit(2, '9.49', 'down', 'nearest foot, halves up')).toBe('39,000 lb');
  });
});

describe('every consecutive group', () => {
  const hauler = layout([0, 5000], [180, 13000], [228, 13000], [520, 14000], [568, 14000]);
  it('has one finding for each run, with its load', () => {
    const { groups } = orFail(axleGroups(hauler, plain));
    expect(groups.map(({ first, last }) => `${first}-${last}`)).toEqual([
      '1-1',
      '1-2',
      '1-3',
      '1-4',
      '1-5',
      '2-2',
      '2-3',
      '2-4',
      '2-5',
      '3-3',
      '3-4',
      '3-5',
      '4-4',
      '4-5',
      '5-5',
    ]);
    expect(groups.map(({ kind }) => kind[0]).join('')).toBe('sgggg' + 'stgg' + 'sgg' + 'st' + 's');
    for (const { check, limit, length } of groups)
      expectReplays(limit, length, ...(check === undefined ? [] : [check.reserve, check.used]));
    expect(groups.every(({ check }) => check?.verdict === 'within')).toBe(true);
  });
  it('sees two tandems by itself', () => {
    const { groups } = orFail(axleGroups(layout([0], [48], [384], [432]), plain));
    const whole = groups.find(({ first, last }) => first === 1 && last === 4);
    expect([whole?.kind, whole && show(whole.limit.value)]).toEqual(['two tandems', '68,000 lb']);
    const short = orFail(axleGroups(layout([0], [48], [383], [431]), plain)).groups.find(
      ({ first, last }) => first === 1 && last === 4,
    );
    expect([short?.kind, short && show(short.limit.value)]).toEqual(['group', '66,000 lb']);
  });
  it.each([
    ['a tandem, then axles too far apart', [0, 48, 300, 440], 'group'],
    ['axles too far apart, then a tandem', [0, 140, 392, 440], 'group'],
    ['a tandem, then one axle', [0, 48, 440], 'group'],
    ['one axle, then a tandem', [0, 392, 440], 'group'],
    ['three axles as the first tandem', [0, 48, 96, 392, 440], 'two tandems'],
    ['three axles as the second', [0, 48, 344, 392, 440], 'two tandems'],
    ['two axles that count as one, then a tandem', [0, 33, 392, 440], 'group'],
    ['two that count as one before the tandem is whole', [0, 33, 66, 392, 440], 'two tandems'],
    ['three pairs', [0, 48, 200, 248, 392, 440], 'group'],
  ])('is it two tandems? %s: %s', (_, places, kind) => {
    const { groups } = orFail(axleGroups(layout(...places.map((at) => [at] as const)), plain));
    expect(groups.find(({ first, last }) => first === 1 && last === places.length)?.kind).toBe(kind);
  });
  it('sees a tandem of three axles, and axles that count as one', () => {
    const { groups } = orFail(axleGroups(layout([0], [48], [96]), plain));
    expect(
      groups.filter(({ first, last }) => first === 1 && last === 3).map(({ kind, limit }) => [kind, show(limit.value)]),
    ).toEqual([['tandem', '34,000 lb']]);
    expect(orFail(axleGroups(layout([0], [33]), plain)).groups[1]).toMatchObject({ kind: 'single', first: 1, last: 2 });
  });
  it('finds the group inside that is over although the whole is within', () => {
    const { groups } = orFail(axleGroups(layout([0, 9000], [200, 17100], [250, 17000], [600, 8000]), plain));
    expect(groups.filter(({ check }) => check?.verdict === 'over').map(({ first, last }) => [first, last])).toEqual([
      [2, 3],
    ]);
    const checks = groups.flatMap(({ check }) => (check === undefined ? [] : [check]));
    expect(tightest(checks).map(({ part: of }) => of)).toEqual(['axles 2 to 3']);
  });
  it('gives limits without checks when an axle was not weighed', () => {
    const { groups } = orFail(axleGroups(layout([0, 9000], [200]), plain));
    expect(groups.map(({ check }) => check === undefined)).toEqual([false, true, true]);
  });
  it('names the axles of each group in its working, from 1 at the front', () => {
    const { groups } = orFail(axleGroups(layout([0, 9000], [200, 17000], [250, 17000]), plain));
    const [front, , , , pair] = groups;
    expect([front?.check?.part, pair?.check?.part]).toEqual(['axle 1', 'axles 2 to 3']);
    expect(explain(pair?.length as Derived<Unit>)).toBe(
      [
        'axle 3 position = 250 in  [stated]',
        'axle 2 position = 200 in  [stated]',
        'spread of axles 2 to 3',
        '  = axle 3 position - axle 2 position',
        '  = 250 in - 200 in',
        '  = 50 in',
        'length of axles 2 to 3',
        '  = spread of axles 2 to 3 in feet',
        '  = 50 in in feet',
        '  = 4.17 ft',
      ].join('\n'),
    );
    expect(explain(pair?.check?.load as Derived<Unit>)).toContain('weight of axles 2 to 3\n  = axle 2 weight + axle 3');
    expect(explain(front?.limit as Derived<Unit>)).toContain('= least of (line of single axle weight, Interstate)');
  });
  it('asks the groups of 24 axles, and of no more', () => {
    const rig = (count: number) =>
      axleGroups(layout(...Array.from({ length: count }, (_, i) => [60 * i] as const)), plain);
    expect(orFail(rig(24)).groups).toHaveLength((24 * 25) / 2);
    expect(leftOf(rig(25))).toMatchObject({ what: 'axles', found: '25', needed: 'at most 24' });
  });
  it('takes positions in any unit of length', () => {
    const { groups } = orFail(axleGroups([{ behind: foot(0) }, { behind: mm(1016) }], plain));
    expect(groups[1]?.kind).toBe('single');
    expectReplays(groups[1]?.length as Derived<Unit>);
  });
});

describe('what is refused', () => {
  it.each([
    [() => axleGroups([], plain), 'axles'],
    [
      () =>
        axleGroups(
          Array.from({ length: 480 }, (_, i) => ({ behind: foot(i + 1) })),
          plain,
        ),
      'axles',
    ],
    [() => axleGroups(layout([10], [10]), plain), 'axle 2 position'],
    [() => axleGroups(layout([10], [9]), plain), 'axle 2 position'],
    [() => axleGroups(layout([0, 0]), plain), 'axle 1 weight'],
    [() => axleGroups([{ behind: lb(3) as never }], plain), 'axle 1 position'],
    [() => axleGroupLimit({ count: 0, length: foot(4), twoTandems: false }, plain), 'number of axles'],
    [() => axleGroupLimit({ count: 2.5, length: foot(4), twoTandems: false }, plain), 'number of axles'],
    [() => axleGroupLimit({ count: Number.NaN, length: foot(4), twoTandems: false }, plain), 'number of axles'],
    [() => axleGroupLimit({ count: 2, length: foot(0), twoTandems: false }, plain), 'group length'],
    [() => axleGroupLimit({ count: 2, length: lb(10) as never, twoTandems: false }, plain), 'group length'],
  ])('case %#', (run, what) => {
    expect(leftOf<unknown>(run())).toMatchObject({ chapter: 'rules', tag: 'OutOfRange', what });
  });
});
