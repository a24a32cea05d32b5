/** Every piece of cargo is asked: on the deck, off its neighbours, between the fenders, in a window of its own while the others stay. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { plain, rightOf } from '../../helpers/either.js';

/** A deck from 20 to 240 in behind the coupler, its axle at 150 in. */
const on = (cargo: readonly object[], deck: object = {}): Assessment =>
  rightOf(
    assessJson({
      trailer: {
        hitch: 'ball',
        gvwr: '7,000 lb',
        curb: { weight: '2,000 lb', tongue: '300 lb' },
        axles: [{ at: '150 in', gawr: '7,000 lb', brakes: { left: '3,500 lb', right: '3,500 lb' } }],
        deck: { front: '20 in', rear: '240 in', ...deck },
      },
      cargo,
    }),
  );
const tags = ({ attention }: Assessment): readonly string[] => attention.map(({ tag }) => tag);
const open = ({ notChecked }: Assessment): readonly string[] =>
  notChecked.map(({ id, missing }) => `${id}: ${missing}`);
const roller = (more: object): object => ({ name: 'roller', weight: '900 lb', ...more });
const shaped = (front: string, more: object = {}): object =>
  roller({ front, length: '60 in', balancePoint: '25 in', ...more });

describe('against the ends of the deck', () => {
  it('a roller that balances on the rear edge with 35 in in the air stands outside its window, which names the deck', () => {
    const { placement, attention } = on([shaped('215 in')]);
    const { now, window } = placement.pieces[0]!;
    expect([plain(now!.at), now!.breaks.map(({ name }) => name)]).toEqual([240, expect.arrayContaining(['deck rear'])]);
    expect(plain(window.limits.find(({ name }) => name === 'deck rear')!.at)).toBe(240 - 35);
    expect(attention.find(({ tag }) => tag === 'OutsideWindow')?.says).toContain('deck rear');
  });
  it.each([
    ['its front face and its length', roller({ front: '180.1 in', length: '60 in' }), true],
    ['the same, flush with the end', roller({ front: '180 in', length: '60 in' }), false],
    ['its front over the front end', roller({ front: '19 in', length: '60 in' }), true],
    ['all three, beside the window that it has', shaped('215 in'), true],
    ['its balance point alone, behind the deck', roller({ at: '240.1 in' }), true],
    ['its balance point alone, on the deck', roller({ at: '240 in' }), false],
  ])('told by %s', (_, piece, off) => {
    expect(tags(on([piece])).includes('PieceOffDeck')).toBe(off);
  });
  it('without a window too: no axle is told, and the machine still hangs over the end', () => {
    const spec = { trailer: { hitch: 'ball', axles: [{}], deck: { front: '20 in', rear: '240 in' } } };
    const answer = rightOf(assessJson({ ...spec, cargo: [shaped('215 in')] }));
    expect([answer.placement.pieces, tags(answer)]).toEqual([[], ['PieceOffDeck']]);
  });
  it('asks only for what is not told', () => {
    expect(open(on([roller({ at: '100 in', length: '60 in' })]))).toContain('on-deck: its balance point');
    expect(open(on([roller({ at: '100 in' })]))).toContain('on-deck: its length and its balance point');
  });
});

describe('against the width of the deck and the room between the fenders', () => {
  it.each([
    ['wider than the deck', '83 in', { width: '82 in' }, 1],
    ['as wide as the deck', '82 in', { width: '82 in' }, 0],
    ['wider than the room between the fenders', '83 in', { width: '102 in', betweenFenders: '82 in' }, 1],
    ['over fenders made for it', '83 in', { width: '102 in', betweenFenders: '82 in', overFenders: true }, 0],
    ['wider than both', '103 in', { width: '102 in', betweenFenders: '82 in' }, 2],
  ])('%s', (_, width, deck, found) => {
    expect(tags(on([shaped('100 in', { width })], deck)).filter((tag) => tag === 'PieceTooWide')).toHaveLength(found);
  });
  it('leaves a piece without a width open', () => {
    expect(open(on([shaped('100 in')], { width: '102 in', betweenFenders: '82 in' }))).toEqual(
      expect.arrayContaining(['width: its width', 'width/fenders: its width']),
    );
  });
});

describe('against the other pieces', () => {
  const beside = (right: string, width?: string): readonly object[] => [
    shaped('100 in', { rightOfMiddle: '-20 in', ...(width && { width }) }),
    { ...shaped('120 in', { rightOfMiddle: right, ...(width && { width }) }), name: 'plate' },
  ];
  it.each([
    ['side by side, clear by their widths', beside('20 in', '40 in'), false],
    ['side by side, an inch too near', beside('19 in', '40 in'), true],
    ['one behind the other on one line', beside('-20 in', '40 in'), true],
  ])('%s', (_, cargo, overlap) => {
    expect(tags(on(cargo)).includes('PiecesOverlap')).toBe(overlap);
  });
  it('leaves pieces beside each other open where their widths are not told', () => {
    const answer = on(beside('20 in'));
    expect(tags(answer)).not.toContain('PiecesOverlap');
    expect(open(answer)).toContain('side-by-side: their widths, by tape');
  });
  it('holds thirty pieces against each other, and says that it does not with more', () => {
    const many = (count: number): readonly object[] =>
      Array.from({ length: count }, (_, i) => ({ ...shaped('100 in', { weight: '10 lb' }), name: `crate ${i}` }));
    expect(tags(on(many(30))).filter((tag) => tag === 'PiecesOverlap')).toHaveLength((30 * 29) / 2);
    expect(open(on(many(31)))).toContain('pieces-apart: at most 30 pieces');
  });
});

describe('a window a piece', () => {
  it('each is that of the piece with the other where it stands', () => {
    const plate = { ...shaped('40 in'), name: 'plate', weight: '400 lb' };
    const both = on([shaped('120 in'), plate]).placement.pieces;
    expect(both.map(({ name }) => name)).toEqual(['roller', 'plate']);
    const moved = on([shaped('120 in'), { ...plate, front: '90 in' }]).placement.pieces;
    // 400 lb moved 50 in rearward take 400 x 50 / 150 lb off the tongue; the roller must stand that much further forward.
    const end = (pieces: typeof both): number => plain(pieces[0]!.window.upper.at);
    expect(end(both) - end(moved)).toBeCloseTo((400 * 50) / 900, 9);
    expect(plain(both[1]!.window.upper.at)).toBe(plain(moved[1]!.window.upper.at));
  });
});
