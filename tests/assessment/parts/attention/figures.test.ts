/** Every warning has its figures and the keys of the spec behind it, makes the verdict attention, and stands in the first lines. */
import { describe, expect, it } from 'vitest';
import { type Assessment, answerOf, assessJson } from '../../../../src/assessment/index.js';
import { brief } from '../../../../src/print/index.js';
import { plain, rightOf } from '../../../helpers/either.js';
import { changed, tiltDeck } from '../../../helpers/specs.js';

type Changes = readonly (readonly [path: string, value: unknown])[];

/** The example on a truck that holds the ball down while the machine comes on: nothing asks attention. */
const sound: Changes = [
  ['tow.rear', '7,000 lb'],
  ['tow.gvwr', '14,000 lb'],
];
const run = (...changes: Changes): Assessment =>
  rightOf(
    assessJson([...sound, ...changes].reduce<unknown>((spec, [path, value]) => changed(spec, path, value), tiltDeck())),
  );
const chain = { chain: { size: '1/4', grade: '30' }, runs: 'direct' };
const gauges = [{ gauge: '46 in', tireWidth: '10 in' }];
const unbraked: Changes = [
  ['trailer.axles.0.brakes', undefined],
  ['trailer.axles.1.brakes', undefined],
];
const beside = (more: object): unknown => [
  ...(tiltDeck().cargo as readonly unknown[]),
  { name: 'plate', weight: '200 lb', ...more },
];

/** Tag, what brings it about, its figures where they are short to write, and a key behind it. */
const warnings: readonly (readonly [
  tag: string,
  changes: Changes,
  figures: readonly number[] | 'some' | 'none',
  key: string,
])[] = [
  ['CouplerBelowLabel', [['trailer.coupler.gross', '13,000 lb']], [13000, 14000], 'trailer.coupler.gross'],
  ['ChainsBelowLabel', [['trailer.chains', { each: '13,000 lb', count: 1 }]], [13000, 14000], 'trailer.chains.each'],
  ['BallBelowLabel', [['tow.ball', { gross: '13,000 lb' }]], [13000, 14000], 'tow.ball.gross'],
  [
    'AxlesBelowLabel',
    [
      ['trailer.gvwr', '15,600 lb'],
      ['trailer.coupler.gross', '16,000 lb'],
      ['tow.ball.gross', '16,000 lb'],
    ],
    [14000, 14040],
    'trailer.axles',
  ],
  ['JackBelowLabel', [['trailer.jack.rating', '2,700 lb']], 'some', 'trailer.jack.rating'],
  ['NoBrakesTold', unbraked, [14000], 'trailer.axles.1.brakes'],
  ['LoadingLiftsTruck', [['tow.rear', '3,650 lb']], 'some', 'trailer.deck.rear'],
  ['LoadingPullsBallUp', [['tow', undefined]], 'some', 'cargo.0.weight'],
  ['TongueOutsideGuideline', [['cargo.0.front', '130 in']], 'some', 'cargo.0.front'],
  ['OutsideWindow', [['cargo.0.front', '130 in']], 'some', 'cargo.0'],
  ['NoPlace', [['cargo.0.length', '190 in']], 'some', 'cargo.0'],
  ['PieceOffDeck', [['cargo', beside({ at: '303 in' })]], 'some', 'cargo.1'],
  [
    'PiecesOverlap',
    [['cargo', beside({ front: '130 in', length: '20 in', balancePoint: '10 in' })]],
    'some',
    'cargo.1',
  ],
  [
    'PieceTooWide',
    [
      ['cargo.0.width', '83 in'],
      ['trailer.deck.betweenFenders', '82 in'],
    ],
    [83, 82],
    'trailer.deck.betweenFenders',
  ],
  ['Tiedowns', [['cargo.0.tiedowns', [chain, chain, chain, chain]]], 'some', 'cargo.0.tiedowns'],
  ['FewAnchors', [['trailer.anchors', { each: '9,000 lb', count: 3 }]], 'none', 'trailer.anchors.count'],
  [
    'HangsUp',
    [
      ['cargo.0.wheelbase', '100 in'],
      ['cargo.0.lowPoint', { behindFrontAxle: '50 in', height: '1 in' }],
    ],
    'some',
    'cargo.0.wheelbase',
  ],
  [
    'NoRampSetting',
    [
      ['cargo.0.gauges', gauges],
      ['trailer.ramps.setting', { width: '12 in', margin: '1 in', closest: '60 in', widest: '70 in' }],
    ],
    'some',
    'cargo.0.gauges',
  ],
  ['GvwrHardToBelieve', [['trailer.gvwr', '499 lb']], [499], 'trailer.gvwr'],
];

describe.each(warnings)('%s', (tag, changes, figures, key) => {
  const answer = run(...changes);
  const found = answer.attention.find((each) => each.tag === tag);
  it('has its figures and the keys behind them', () => {
    const told = found?.figures?.map((figure) => plain(figure)) ?? [];
    if (Array.isArray(figures)) expect(told).toEqual(figures);
    else expect(told.length > 0).toBe(figures === 'some');
    const printed = answerOf(answer).attention.find((each) => each.tag === tag);
    expect(
      printed?.paths?.some((path) => path.startsWith(key)),
      printed?.paths?.join(),
    ).toBe(true);
  });
  it('is never under a line that says within, and stands in the first lines', () => {
    expect(['attention', 'over']).toContain(answer.verdict);
    expect(brief(answer).replace(/\s+/g, ' ')).toContain(found?.says);
  });
});

it('what is weaker than the label and what lifts the truck stand first, and none of them is left out of the first lines', () => {
  const answer = run(
    ['tow.rear', '3,650 lb'],
    ['cargo.0.front', '140 in'],
    ['cargo.0.tiedowns', [chain]],
    ['trailer.coupler.gross', '13,000 lb'],
    ['tow.ball', { gross: '13,000 lb' }],
    ...unbraked,
  );
  const tags = answer.attention.map(({ tag }) => tag);
  expect(tags.slice(0, 4)).toEqual(['CouplerBelowLabel', 'BallBelowLabel', 'NoBrakesTold', 'LoadingLiftsTruck']);
  const page = brief(answer).replace(/\s+/g, ' ');
  for (const { says } of answer.attention.slice(0, 4)) expect(page).toContain(says);
});
