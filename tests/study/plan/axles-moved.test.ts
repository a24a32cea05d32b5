/** Axles moved under a weighed tongue load by a lever: studies and solutions say what `assess` says of such a spec. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../../src/assessment/index.js';
import type { Note } from '../../../src/ratings/index.js';
import {
  alternatives,
  chances,
  changed,
  levels,
  linked,
  normal,
  oneAtATime,
  type StudyPlan,
  sample,
  solveForTarget,
  study,
} from '../../../src/study/index.js';
import { rightOf } from '../../helpers/either.js';
import { holdingInterval, solveFor } from '../../helpers/untyped.js';
import { tiltDeck } from '../compared.js';

const tag = 'AxlesMovedUnderWeighedTongue';
const tongue = 'trailer.curb.tongue';
const moved = changed(tiltDeck, { 'trailer.axleGroup.at': '206 in' });
const builtUp = changed(tiltDeck, {
  'trailer.curb': { items: [{ name: 'frame', weight: '3,650 lb', at: '172 in' }] },
});
const wordsOfAssess = rightOf(assessJson(moved)).notes.find((note) => note.tag === tag)?.says ?? 'no such note';
const plan = (vary: StudyPlan['vary'], base: unknown = tiltDeck) => ({ base: base as never, vary });
const of = (vary: StudyPlan['vary'], base: unknown = tiltDeck): readonly Note[] =>
  rightOf(study({ ...plan(vary, base), design: { kind: 'grid' } })).notes;
const axle = { 'trailer.axles.0.at': levels('183 in', '187 in') };

describe('a study whose lever moves axles under a weighed tongue load', () => {
  it('says so in the words of assess, with the keys and the tongue load', () => {
    const [note, ...others] = of(axle);
    expect(others).toEqual([]);
    expect(note?.tag).toBe(tag);
    expect(note?.says).toContain(wordsOfAssess);
    expect(note?.says).toContain('kept as it was weighed');
    expect(note?.paths).toEqual(['trailer.axles.0.at', tongue]);
    expect(note?.figures?.map(({ value }) => value.value.toFixed())).toEqual(['520']);
  });
  it('says no more than assess where the group is moved, as the tongue load is then worked out', () => {
    const [note] = of({ 'trailer.axleGroup.at': levels('204 in', '206 in') }, moved);
    expect(note).toMatchObject({ says: wordsOfAssess, paths: ['trailer.axleGroup.at', tongue] });
  });
  it.each([
    [
      'levers that move together',
      linked({ 'trailer.axles.0.at': levels('183 in'), 'trailer.axles.1.at': levels('217 in') }),
    ],
    ['an alternative that puts an axle elsewhere', alternatives({ ahead: { 'trailer.axles.0.at': '183 in' } })],
    ['an alternative that moves the group', alternatives({ ahead: { 'trailer.axleGroup.at': '183 in' } })],
  ])('says so of %s', (_, variation) => {
    expect(of({ axles: variation }).map((note) => note.tag)).toEqual([tag]);
  });
  it.each([
    [
      'tells the tongue load too',
      { axles: linked({ 'trailer.axles.0.at': levels('183 in'), [tongue]: levels('500 lb') }) },
    ],
    ['tells it first', { axles: linked({ [tongue]: levels('500 lb'), 'trailer.axles.0.at': levels('183 in') }) }],
    ['is another trailer', { build: alternatives({ a: { 'trailer.axles.0.at': '183 in', [tongue]: '520 lb' } }) }],
    ['leaves the axles where they are', { build: alternatives({ a: { 'trailer.axles.0.at': '187 in' } }) }],
    ['moves no axle', { 'cargo.0.front': levels('120 in') }],
  ])('says nothing where it %s', (_, vary) => {
    expect(of(vary)).toEqual([]);
  });
  it('says nothing of a trailer that is built up from its parts', () => {
    expect(of(axle, builtUp)).toEqual([]);
  });
  it('says it in what is made of a study, too', () => {
    const vary = { 'trailer.axles.0.at': normal('187 in', '1 in') };
    const made = [
      rightOf(sample({ ...plan(vary), design: { kind: 'monte carlo', runs: 20, seed: 1 } }, 'tongue load')),
      rightOf(chances({ ...plan(vary), runs: 20, seed: 1 })),
      rightOf(oneAtATime(plan(axle), 'tongue load')),
    ];
    expect(made.map(({ notes }) => notes.map((note) => note.tag))).toEqual([[tag], [tag], [tag]]);
  });
});

describe('a solution whose lever moves axles under a weighed tongue load', () => {
  const gross = solveForTarget(tiltDeck as never, 'cargo.0.weight', ({ weights }) => weights.gross, '12,000 lb');
  const solved = (base: unknown) =>
    rightOf(
      solveFor(
        base,
        'trailer.axles.0.at',
        ({ checks }) => checks.find(({ what }) => what === 'tongue against coupler tongue')?.reserve,
      ),
    );
  it('says so, and an interval too', () => {
    for (const { notes } of [solved(tiltDeck), rightOf(holdingInterval(tiltDeck, 'trailer.axles.0.at'))])
      expect(notes.map(({ says }) => says)).toEqual([expect.stringContaining(wordsOfAssess)]);
  });
  it('says nothing of another lever, nor of a trailer that is built up', () => {
    expect(rightOf(gross).notes).toEqual([]);
    expect(solved(builtUp).notes).toEqual([]);
  });
});
