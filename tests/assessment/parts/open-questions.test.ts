/** A missing fact narrows the answer and never refuses the rest of it. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../../src/assessment/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const axle = (at: number, more: object = {}) => ({ at: `${at} in`, gawr: '7,000 lb', ...more });
const curb = { weight: '5,000 lb', tongue: '600 lb' };
const run = (axles: readonly object[], trailer: object = {}, rest: object = {}): Assessment =>
  rightOf(assess({ trailer: { hitch: 'ball', gvwr: '20,000 lb', curb, axles, ...trailer }, ...rest }));
const open = ({ notChecked }: Assessment): readonly string[] =>
  notChecked.map(({ what, missing }) => `${what}: ${missing}`);
const tags = ({ attention }: Assessment): readonly string[] => attention.map(({ tag }) => tag);

describe('axles', () => {
  it('three independent ones without rates leave their loads open; the whole is asked', () => {
    const answer = run([axle(200), axle(234), axle(268)], { sharing: 'independent' });
    expect(answer.checks.map(({ id }) => id)).toEqual(['gvwr']);
    expect(open(answer).some((each) => each.includes('spring rates'))).toBe(true);
    expect(answer.payload?.best).toBeDefined();
  });
  it('one rate of two is named, not used', () => {
    const answer = run([axle(200, { rate: '2000 lb/in' }), axle(234)], { sharing: 'independent' });
    expect(open(answer)).toContain('axle loads by the spring rates that are given: the spring rate of axle 2');
    expect(answer.axleLoads).toHaveLength(2);
  });
  it('one with nothing but its place leaves its rating open; the tongue load stands', () => {
    const answer = run([{ at: '200 in' }, axle(234)], { sharing: 'equalised', coupler: { tongue: '700 lb' } });
    expect(open(answer)[0]).toMatch(/^axle 1, and payload by axles and tires: a rating of axle 1/);
    expect(plain(answer.weights.balance!.tongue)).toBe(600);
    expect(answer.checks.map(({ id, verdict }) => `${id} ${verdict}`)).toContain('coupler/tongue within');
  });
  it('with brakes told of one alone say nothing of all brakes together', () => {
    const brakes = { left: '3,500 lb', right: '3,500 lb' };
    const answer = run([axle(200, { brakes }), axle(234)], { sharing: 'equalised' });
    expect(answer.partChecks.every(({ verdict }) => verdict === 'within')).toBe(true);
    expect(open(answer)).toContain('axle 2 brakes against its GAWR: brake ratings, if it has brakes');
  });
});

describe('spring bars', () => {
  const tow = {
    front: '3,300 lb',
    rear: '2,900 lb',
    wheelbase: '150 in',
    overhang: '50 in',
    bars: { restore: '100 %' },
  };
  it('may restore all of it', () => {
    const { tow: found } = run([axle(200)], {}, { tow });
    expect(plain(found.bars!.restored!)).toBe(1);
    // Bars on and front axle alone are the same: all that the tongue took came back.
    expect(plain(found.bars!.barsOn.front)).toBe(3300);
  });
  it('on a trailer loaded behind its axles leave one question open, and the lift is told', () => {
    const cargo = [{ name: 'roller', weight: '4,000 lb', at: '260 in' }];
    const answer = run([axle(200)], {}, { tow, cargo });
    expect([answer.verdict, answer.uplift.lifted.map(({ what }) => what)]).toEqual(['over', ['tongue']]);
    expect(open(answer)).toContain('weight distributing bars: a tongue load that presses on the ball');
  });
  it('count hitch parts that hang on the ball as the checks without bars do', () => {
    const { tow: found } = run([axle(200)], {}, { tow: { ...tow, hitchHardware: '108 lb' } });
    expect(plain(found.bars!.barsOff.rear)).toBe(plain(found.hitched!.rear));
  });
});

describe('what no table has, and what weighs nothing', () => {
  it('leaves the tiedowns of a piece open', () => {
    const answer = rightOf(
      assess(changed(tiltDeck(), 'cargo.0.tiedowns', [{ chain: { size: '9/9', grade: '70' }, runs: 'direct' }])),
    );
    expect(answer.notChecked.map(({ id }) => id)).toContain('tiedowns');
    expect(tags(answer)).toEqual(['LoadingLiftsTruck']);
  });
  it('leaves the weight of a trailer open whose parts are told to weigh nothing', () => {
    const answer = run([axle(200)], { curb: { items: [{ name: 'frame', weight: '0 lb', at: '100 in' }] } });
    expect(answer.weights.gross).toBeUndefined();
    expect(open(answer)).toContain('gross weight and payload: weight of the empty trailer');
  });
});

describe('cargo', () => {
  const deck = { deck: { front: '20 in', rear: '240 in' } };
  const at = (...cargo: readonly object[]): Assessment => run([axle(200)], deck, { cargo });
  it('of no weight is weighed as nothing', () => {
    const answer = at({ name: 'crate', weight: '0 lb', at: '120 in' });
    expect(plain(answer.weights.gross!)).toBe(5000);
  });
  it('of no weight leaves its place, ramps and tiedowns open, and the rest is answered', () => {
    const answer = rightOf(assess(changed(tiltDeck(), 'cargo.0.weight', '0 lb')));
    expect(answer.checks.map(({ id }) => id)).toContain('gvwr');
    const byWeight = answer.notChecked.filter(({ paths }) => paths.includes('cargo.0.weight'));
    expect(byWeight.map(({ id }) => id).sort()).toEqual(['loading/uplift', 'placement', 'ramps/rating', 'tiedowns']);
  });
  it('that balances behind the deck asks attention, its length told or not', () => {
    expect(tags(at({ name: 'roller', weight: '900 lb', at: '241 in' }))).toContain('PieceOffDeck');
    expect(tags(at({ name: 'roller', weight: '900 lb', at: '240 in' }))).not.toContain('PieceOffDeck');
    const longer = { name: 'roller', weight: '900 lb', front: '141 in', length: '100 in' };
    expect(tags(at(longer))).toContain('PieceOffDeck');
  });
  it('on one place of the deck asks attention; end to end it does not', () => {
    const one = { name: 'roller', weight: '900 lb', front: '30 in', length: '60 in', balancePoint: '30 in' };
    const other = (front: string) => ({ ...one, name: 'plate', front });
    expect(tags(at(one, other('89 in')))).toContain('PiecesOverlap');
    expect(tags(at(one, other('90 in')))).not.toContain('PiecesOverlap');
  });
  it('side by side by its places across the deck is left open', () => {
    const one = { name: 'roller', weight: '900 lb', front: '30 in', length: '60 in', balancePoint: '30 in' };
    const answer = at({ ...one, rightOfMiddle: '-20 in' }, { ...one, name: 'plate', rightOfMiddle: '20 in' });
    expect(tags(answer)).not.toContain('PiecesOverlap');
    expect(open(answer)).toContain(
      'whether roller and plate stand clear of each other side by side: their widths, by tape',
    );
  });
});
