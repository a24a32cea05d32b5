/** Builds side by side. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/assessment/index.js';
import { changeOf } from '../../src/choose/index.js';
import { describeError } from '../../src/errors.js';
import { comparisonText } from '../../src/print/index.js';
import { show } from '../../src/units/index.js';
import { leftOf, plain, rightOf } from '../helpers/either.js';
import { changed, heavier, tiltDeck } from '../helpers/specs.js';
import { compare } from '../helpers/untyped.js';
import { expectReplays } from '../helpers/working.js';

const change = (...changes: readonly (readonly [string, unknown])[]): unknown =>
  changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck());

describe('compare', () => {
  const table = rightOf(compare({ now: tiltDeck(), heavier: heavier() }));
  const rowOf = (what: string) => table.rows.find((row) => row.what === what)!;
  it('sets the same figures of each build side by side, as each assessment has them', () => {
    const [now, next] = [tiltDeck(), heavier()].map((spec) => rightOf(assess(spec)));
    expect(rowOf('payload').figures.map((figure) => plain(figure!))).toEqual(
      [now, next].map((build) => plain(build!.payload!.anywhere!.weight)),
    );
    expect(rowOf('GVWR').figures.map((figure) => show(figure!.value))).toEqual(['14,000 lb', '16,000 lb']);
  });
  it('takes the heaviest axle, wherever it stands', () => {
    const sharing = (front: string, rear: string): unknown =>
      change(
        ['trailer.sharing', 'independent'],
        ['trailer.axles.0.rate', front],
        ['trailer.axles.1.rate', rear],
        ['cargo.0.weight', '5,000 lb'],
      );
    const { rows, assessments } = rightOf(
      compare({ a: sharing('2,000 lb/in', '3,000 lb/in'), b: sharing('3,000 lb/in', '2,000 lb/in') }),
    );
    const heaviest = rows.find(({ what }) => what === 'heaviest axle load')!.figures.map((figure) => plain(figure!));
    const loads = assessments.map(({ axleLoads }) => axleLoads.map(({ load }) => plain(load)));
    expect(loads.map(([front = 0, rear = 0]) => front > rear)).toEqual([false, true]);
    expect(heaviest).toEqual(loads.map((each) => Math.max(...each)));
  });
  it('tells the change, with its working', () => {
    const change = changeOf(rowOf('GVWR'))!;
    expect(show(change.value)).toBe('2,000 lb');
    expectReplays(change);
    expect(changeOf({ what: 'nothing', print: 'load', figures: [undefined, change] })).toBeUndefined();
  });
  it('leaves a dash where a build does not say, and keeps to 80 columns', () => {
    const text = comparisonText(
      rightOf(
        compare({
          full: tiltDeck(),
          bare: { trailer: { hitch: 'ball', gvwr: '7,000 lb', axles: [{ gawr: '3,500 lb' }] } },
        }),
      ),
    );
    expect(text).toMatch(/GVWR +14,000 lb +7,000 lb\n/);
    expect(text).toMatch(/gross weight +12,650 lb +-\n/);
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
  it('counts what is over and what is not well besides', () => {
    const text = comparisonText(
      rightOf(compare({ good: tiltDeck(), bad: change(['trailer.gvwr', '12,000 lb'], ['cargo.0.tiedowns', []]) })),
    );
    expect(text).toMatch(/checks over +0 +1\n/);
    expect(text).toMatch(/not well besides +1 +2\n/);
  });
  it('of nothing is no comparison, of one a table of one', () => {
    const nothing = leftOf(compare({}));
    expect(nothing).toMatchObject({ chapter: 'choose', tag: 'NothingToAnswer', path: 'specs' });
    expect(describeError(nothing)).toBe('specs: how the builds compare cannot be answered: a build is missing');
    expect(rightOf(compare({ now: tiltDeck() })).names).toEqual(['now']);
  });
  it('names the build that cannot be read', () => {
    expect(leftOf(compare({ good: tiltDeck(), wrong: { trailer: {} } }))).toMatchObject({
      tag: 'UndecodableSpec',
      path: expect.stringMatching(/^wrong: /),
    });
  });
});
