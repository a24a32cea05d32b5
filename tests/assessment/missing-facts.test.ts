/** A missing fact narrows the answer and says so; it never makes a check pass, or appear. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../src/assessment/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const whole = rightOf(assess(tiltDeck()));
const questions = ({ notChecked }: Assessment): readonly string[] =>
  notChecked.map(({ what, missing }) => `${what}: ${missing}`);
const asked = ({ checks, partChecks }: Assessment): readonly string[] =>
  [...checks, ...partChecks].map(({ what }) => what);
const bounds = ({ payload: carry }: Assessment): readonly string[] =>
  carry?.anywhere?.limits.map(({ name }) => name) ?? [];

/** Every key of the example, as a path. Places in a list are left alone: a list with one item fewer is another trailer. */
function keysOf(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    const at = path === '' ? key : `${path}.${key}`;
    return [...(Array.isArray(value) ? [] : [at]), ...keysOf(inner, at)];
  });
}
/** What local rules must say is the rules chapter's own. */
const keys = keysOf(tiltDeck()).filter((path) => !path.startsWith('rules.local.'));

describe('each key of the example taken out in turn', () => {
  it('finds them', () => expect(keys.length).toBeGreaterThan(60));
  it.each(keys)('%s', (path) => {
    const answer = assess(changed(tiltDeck(), path, undefined));
    if (isLeft(answer)) {
      // What the format requires, and a label that the tires by their table do not bear once nothing molded is told: the error
      // stands at the key itself or at the record it belongs to.
      expect(answer.left.tag).toBe('UndecodableSpec');
      const at = /tires\.molded/.test(path) ? path.replace(/tires\.molded.*/, 'gawr') : path;
      expect(at.startsWith(answer.left.path ?? '?'), answer.left.path).toBe(true);
      return;
    }
    const narrowed = answer.right;
    const gone = [
      ...asked(whole).filter((what) => !asked(narrowed).includes(what)),
      ...bounds(whole).filter((name) => !bounds(narrowed).includes(name)),
    ];
    if (gone.length > 0) expect(questions(narrowed).length, gone.join()).toBeGreaterThan(0);
    const came = asked(narrowed).filter((what) => !asked(whole).includes(what));
    // Without its label an axle is checked against its weakest part.
    expect(came).toEqual(
      /axles\.\d\.gawr$/.test(path) ? [`axle load against axle ${Number(/\d/.exec(path)?.[0]) + 1} weakest part`] : [],
    );
  });
});

describe('the question names the fact', () => {
  it.each([
    ['trailer.gvwr', 'gross weight and payload against GVWR: GVWR from the label'],
    ['trailer.curb', 'gross weight and payload: weight of the empty trailer'],
    ['trailer.curb.tongue', 'axle loads and tongue: tongue load of the empty trailer'],
    ['trailer.axles.0.at', 'axle loads, tongue, and payload by axles and tires: places of the axles'],
    ['trailer.axles.1.gawr', 'axle 2 parts against its GAWR: GAWR'],
    ['trailer.axles.0.beam', 'axle 1 parts: ratings of beam'],
    ['trailer.axles.0.tires', 'axle 1 parts: ratings of tires'],
    ['trailer.axles.0.tires.pressure', 'axle 1 tires at the pressure they run: cold pressure as run'],
    ['trailer.axles.1.brakes', 'axle 2 brakes against its GAWR: brake ratings, if it has brakes'],
    ['trailer.sharing', 'axle loads, and payload by axles and tires: how the axles share (equalised or independent)'],
    ['trailer.coupler.tongue', 'tongue against coupler tongue: coupler tongue'],
    ['trailer.chains', 'gross against safety chains: safety chains'],
    ['trailer.jack', 'jack against tongue: jack rating and place'],
    ['trailer.deck', 'where excavator may stand: ends of the deck'],
    ['cargo', 'the laden trailer (this is the empty one): cargo'],
    ['cargo.0.front', 'axle loads and tongue: where excavator stands'],
    ['cargo.0.balancePoint', 'axle loads and tongue: where excavator stands'],
    ['cargo.0.tiedowns', 'tiedowns of excavator: tiedowns'],
    ['tow', 'tow vehicle: its label, its axle loads, its hitch'],
    ['tow.gcwr', 'combination against GCWR: GCWR'],
  ])('%s', (path, question) => {
    expect(questions(whole)).not.toContain(question);
    expect(questions(rightOf(assess(changed(tiltDeck(), path, undefined))))).toContain(question);
  });
  it('asks nothing about cargo where the spec says there is none', () => {
    expect(questions(rightOf(assess(changed(tiltDeck(), 'cargo', []))))).toEqual([]);
  });
});

it('answers the least spec there is with open questions only', () => {
  const bare = rightOf(assess({ trailer: { hitch: 'ball', axles: [{ gawr: '3,500 lb' }] } }));
  expect([bare.checks, bare.tightest, bare.payload, bare.weights.gross]).toEqual([[], [], undefined, undefined]);
  expect(bare.notChecked.length).toBeGreaterThan(4);
});

it('a tire that no table has narrows the answer; one that cannot be read is refused', () => {
  const odd = rightOf(
    assess(
      changed(
        changed(tiltDeck(), 'trailer.axles.0.tires.molded', undefined),
        'trailer.axles.0.tires.designation',
        'ST145/80R10 LRF',
      ),
    ),
  );
  expect(questions(odd).some((question) => question.startsWith('axle 1 tires: a printed figure'))).toBe(true);
  expect(assess(changed(tiltDeck(), 'trailer.axles.0.tires.designation', 'round and black'))).toMatchObject({
    left: { chapter: 'spec', tag: 'UndecodableSpec', path: 'trailer.axles.0.tires.designation' },
  });
});
