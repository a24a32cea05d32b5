/** Warnings that are not rating checks: the tongue's guideline, the machine's place, tiedowns, edges, ramps, the pull on the ball while loading, parts below the label, published axle groups, figures that are hard to believe. */

import { type Note, note } from '../../ratings/index.js';
import { decide } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { BelowLabel } from './below-the-label.js';
import type { OnDeck } from './cargo-footprint.js';
import type { LoadingPart } from './loading-part.js';
import type { PlacePart } from './placement-part.js';
import type { Doubts } from './plausible.js';
import type { LinesPart } from './published-rules.js';
import type { TiedownsPart } from './tiedowns.js';
import type { TonguePart } from './tongue.js';

interface Asked {
  readonly tongue: TonguePart | undefined;
  readonly place: PlacePart;
  readonly tiedowns: TiedownsPart;
  readonly loading: LoadingPart;
  readonly lines: LinesPart;
  readonly label: BelowLabel;
  readonly onDeck: OnDeck;
  /** What headings say themselves. */
  readonly told: readonly Note[];
  readonly doubts: Doubts;
}

const ofTongue = (tongue: TonguePart | undefined): readonly Note[] =>
  tongue === undefined || tongue.guideline.verdict === 'inside'
    ? []
    : [
        note('TongueOutsideGuideline', `tongue too ${tongue.guideline.verdict} for the guideline`, [
          tongue.share,
          tongue.guideline.verdict === 'light' ? tongue.guideline.guideline.low : tongue.guideline.guideline.high,
        ]),
      ];

/** Two pieces that share a place give the same warning twice: it is kept once. */
const ofPlaces = ({ pieces }: PlacePart): readonly Note[] =>
  collected(pieces, ({ name, index, window, now }) => {
    const paths = [`cargo.${index}`];
    const { lower, upper, limits } = window;
    if (window.empty)
      return [{ ...note('NoPlace', `no place for ${name} meets every limit`, [lower.at, upper.at]), paths }];
    // Which limits it breaks is words; a study need only know that it breaks one.
    const outside = now !== undefined && (decide(now.at, '<', lower.at).holds || decide(now.at, '>', upper.at).holds);
    if (now === undefined || !outside) return [];
    const ends = limits.filter((limit) => now.breaks.includes(limit)).map(({ at }) => at);
    const says = `${name} stands outside its window (${now.breaks.map((limit) => limit.name).join(', ')})`;
    return [{ ...note('OutsideWindow', says, [now.at, ...ends]), paths }];
  });

const ofTiedowns = ({ pieces }: TiedownsPart): readonly Note[] =>
  pieces.flatMap(({ name, index, answer: { verdict, counted, needed } }) => {
    if (verdict === 'enough') return [];
    const says =
      verdict === 'not enough'
        ? `tiedowns of ${name} not enough`
        : `tiedowns of ${name} enough by one reading of the rule and not by another`;
    return [
      { ...note('Tiedowns', says, [counted, needed]), paths: [`cargo.${index}.tiedowns`, `cargo.${index}.weight`] },
    ];
  });

/** Rear legs, where set, carry the lift and have their own check. A lift that the truck holds down is a remark; a lift that no known weight holds down asks attention. */
function ofTail({ tailLift, onLegs }: LoadingPart): readonly Note[] {
  if (
    tailLift === undefined ||
    onLegs === true ||
    tailLift.verdict === 'presses on the ball' ||
    tailLift.verdict === 'held by the truck'
  )
    return [];
  const { ball, truckHolds } = tailLift;
  return [
    truckHolds === undefined
      ? note('LoadingPullsBallUp', 'loading pulls the ball up, and what the tow vehicle holds down is not known', [
          ball,
        ])
      : note('LoadingLiftsTruck', 'loading lifts the truck', [ball, truckHolds]),
  ];
}

const ofRamps = ({ edges, setting }: LoadingPart): readonly Note[] => [
  ...(edges?.verdict === 'touches' ? [note('HangsUp', 'the machine hangs up at an edge', [edges.least])] : []),
  ...(setting?.empty === true
    ? [
        note('NoRampSetting', 'no setting of the ramps serves every tire of the machine', [
          setting.lower.at,
          setting.upper.at,
        ]),
      ]
    : []),
];

const ofGroups = ({ groups }: LinesPart): readonly Note[] =>
  collected(groups, ({ check, first, last }) =>
    check !== undefined && !decide(check.load, '<=', check.limit).holds
      ? [
          note('AxleGroupOver', `axles ${first} to ${last} above the published axle group limit`, [
            check.load,
            check.limit,
          ]),
        ]
      : [],
  );

/** All warnings, each with its figures; those first that make towing itself dangerous: what is weaker than the label, and what lifts the truck. */
export const attentionTo = ({
  tongue,
  place,
  tiedowns,
  loading,
  lines,
  label,
  onDeck,
  told,
  doubts,
}: Asked): readonly Note[] => [
  ...label.attention,
  ...ofTail(loading),
  ...ofTongue(tongue),
  ...ofPlaces(place),
  ...onDeck.attention,
  ...told,
  ...ofTiedowns(tiedowns),
  ...ofRamps(loading),
  ...ofGroups(lines),
  ...lines.attention,
  ...doubts.attention,
];
