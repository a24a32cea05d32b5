/** Where the machine may be placed, in a whole assessment: each limit of the tow side on the tongue load sets an end. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../../src/assessment/index.js';
import { report } from '../../../src/print/index.js';
import { plain, rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';
import { expectReplays } from '../../helpers/working.js';

const change = (...changes: readonly (readonly [string, unknown])[]): Assessment =>
  rightOf(assess(changes.reduce((spec, [path, value]) => changed(spec, path, value), tiltDeck())));
const front = ({ placement: { pieces } }: Assessment): [string, number] => [
  pieces[0]!.window.lower.setBy.map(({ name }) => name).join(),
  plain(pieces[0]!.window.lower.at),
];
/** Places by statics: 520 lb on the tongue without the machine of 9,000 lb, axles 204 in behind the ball. */
const placeOf = (tongue: number): number => 204 * (1 - (tongue - 520) / 9000);

describe('the front end of the window (statics)', () => {
  it('is set by the rear axle of the tow vehicle when it is full first: (rear GAWR - rear) b / (b + o), with 60 lb of hitch parts on the ball', () => {
    const spec = change(['tow.rearGawr', '5,600 lb']);
    const [name, at] = front(spec);
    expect(name).toBe('tow vehicle rear GAWR');
    expect(at).toBeCloseTo(placeOf(((5600 - 3650 - 60 * (1 + 54 / 176)) * 176) / (176 + 54)), 6);
    expectReplays(spec.placement.pieces[0]!.window.lower.at, spec.placement.pieces[0]!.window.lower.tongue);
  });
  it('is where that axle is exactly at its rating', () => {
    const { placement: place } = change(['tow.rearGawr', '5,600 lb']);
    const tongue = plain(place.pieces[0]!.window.lower.tongue);
    expect(3650 + (tongue + 60) * (1 + 54 / 176)).toBeCloseTo(5600, 6);
  });
  it('is set by the GVWR of the tow vehicle or its placard when they are', () => {
    expect(front(change(['tow.gvwr', '10,300 lb']))).toEqual([
      'tow vehicle GVWR',
      expect.closeTo(placeOf(10300 - 8800 - 60), 6),
    ]);
    expect(front(change(['tow.placard', { limit: '2,100 lb', people: '400 lb', cargo: '250 lb' }]))).toEqual([
      'occupant and cargo placard',
      expect.closeTo(placeOf(2100 - 650 - 60), 6),
    ]);
  });
  it("is the coupler's without a tow vehicle", () => {
    expect(front(change(['tow', undefined], ['trailer.coupler', { gross: '15,000 lb', tongue: '1,500 lb' }]))).toEqual([
      'coupler tongue',
      expect.closeTo(placeOf(1500), 6),
    ]);
  });
  it('leaves no place when the tow vehicle is full before the trailer', () => {
    const spec = change(['tow.rearGawr', '3,600 lb']);
    expect([spec.placement.pieces[0]?.window?.empty, spec.placement.pieces[0]?.heaviest?.exists]).toEqual([
      true,
      false,
    ]);
    expect(report(spec)).toContain('EMPTY: no place meets every limit');
  });
});

describe('a piece whose shape is half known', () => {
  it.each(['length', 'balancePoint'])('asks for what is wanting beside its %s', (key) => {
    const piece = { name: 'excavator', weight: '9,000 lb', at: '180 in', [key]: '60 in' };
    const { placement, notChecked } = change(['cargo', [piece]]);
    expect(placement.pieces).toEqual([]);
    const asked = notChecked.find(({ id }) => id === 'placement');
    expect(asked?.paths).toEqual([`cargo.0.${key === 'length' ? 'balancePoint' : 'length'}`]);
  });
});

describe('a balance point without an uncertainty', () => {
  it('is taken as exact, with a note, and has the window of one that is known to 0 in', () => {
    const [untold, exact] = [change(['cargo.0.uncertainty', undefined]), change(['cargo.0.uncertainty', '0 in'])];
    for (const { placement } of [untold, exact]) {
      const { tongueUncertainty, sure, lower } = placement.pieces[0]!.window;
      expect([plain(tongueUncertainty), plain(sure.lower.at)]).toEqual([0, plain(lower.at)]);
    }
    expect(untold.placement.notes.map(({ tag }) => tag)).toContain('BalancePointTakenAsSure');
    expect(exact.placement.notes.map(({ tag }) => tag)).not.toContain('BalancePointTakenAsSure');
  });
});

describe('the heaviest machine', () => {
  it('is told under every limit, the whole weight among them', () => {
    expect(report(change()).replace(/\s+/g, ' ')).toMatch(/heaviest excavator that has a place \.+ [\d,]+ lb/);
    const { heaviest } = change(['trailer.gvwr', '12,651 lb']).placement.pieces[0]!;
    expect([plain(heaviest!.heaviest), heaviest!.byWeight.map(({ name }) => name)]).toEqual([9001, ['GVWR']]);
  });
});
