/** What the side view shows, read from an assessment: places in inches behind the coupler, figures with their working. */
import type { Assessment } from '../../assessment/index.js';
import type { Check } from '../../ratings/index.js';
import { tireGeometry } from '../../tires/index.js';
import { type AnyLength, type Derived, inInches } from '../../trace/index.js';
import { plain } from '../drawing/numbers.js';
import { type DeckWindow, windowsOf } from '../placement/windows.js';

/** `over`: a check of it is over. `attention`: not right, and no rating exceeded. */
export type State = 'load' | 'over' | 'attention';

/** A load that presses or is borne at a place. */
export interface LoadArrow {
  readonly name: string;
  readonly at: number;
  readonly load: Derived<'lb'>;
  readonly state: State;
  /** The word of the state: `over`, `light`. */
  readonly word: string | undefined;
}

/** A piece of cargo; one without a length is a mark and no box. */
export interface Piece {
  readonly name: string;
  readonly at: number | undefined;
  readonly front: number | undefined;
  readonly length: number | undefined;
}

export interface Wheel {
  readonly at: number;
  readonly radius: number;
}

/** A place to be dimensioned from the coupler. */
export interface Measured {
  readonly name: string;
  readonly at: Derived<'in'>;
}

export interface Scene {
  readonly gooseneck: boolean;
  readonly name: string;
  readonly deck: { readonly front: number; readonly rear: number } | undefined;
  /** Deck above the ground; taken as 24 in where nobody says. */
  readonly height: number;
  readonly wheels: readonly Wheel[];
  readonly group: number | undefined;
  readonly pieces: readonly Piece[];
  readonly down: readonly LoadArrow[];
  readonly up: readonly LoadArrow[];
  readonly measures: readonly Measured[];
  readonly windows: readonly DeckWindow[];
  /** Ball above the height at which the trailer stands level. */
  readonly ballAboveLevel: Derived<'in'> | undefined;
}

const inches = (length: AnyLength | undefined): number | undefined =>
  length === undefined ? undefined : plain(inInches('place', length));

/** Half the diameter of the tire by its size; 15 in where the size does not say. */
function radiusOf(designation: string | undefined): number {
  const found = designation === undefined ? undefined : tireGeometry(designation);
  if (found === undefined || found._tag === 'Left') return 15;
  const diameter = found.right.computed?.diameter ?? found.right.published[0]?.diameter;
  return diameter === undefined ? 15 : plain(diameter) / 2;
}

const isOver = (checks: readonly Check[], load: Derived<'lb'>): boolean =>
  checks.some((check) => check.verdict === 'over' && check.load.why === load.why);

/** The tongue and the axles, each with the word of its state. */
function upward(assessment: Assessment): readonly LoadArrow[] {
  const { weighed, axleLoads, checks, advice, spec } = assessment;
  const tongue = weighed.balance?.tongue;
  const axles = axleLoads.flatMap(({ of, load }, i): readonly LoadArrow[] => {
    const at = inches(spec.trailer.axles[i]?.at) ?? inches(assessment.stack.group?.at);
    const over = isOver(checks, load);
    return at === undefined
      ? []
      : [{ name: of, at, load, state: over ? 'over' : 'load', word: over ? 'over' : undefined }];
  });
  if (tongue === undefined) return axles;
  const over = isOver(checks, tongue);
  const doubtful = advice !== undefined && advice.verdict !== 'inside' ? advice.verdict : undefined;
  const state = over ? 'over' : 'attention';
  return [
    {
      name: 'tongue',
      at: 0,
      load: tongue,
      state: over || doubtful !== undefined ? state : 'load',
      word: over ? 'over' : doubtful,
    },
    ...axles,
  ];
}

/** Where the empty trailer acts: its own place, or the place that its weighed tongue load puts it at. */
function emptyAt({ weighed, stack }: Assessment): number | undefined {
  const item = weighed.trailer;
  if (item === undefined) return undefined;
  if ('at' in item) return inches(item.at);
  const axles = inches(stack.group?.at);
  const { tongue, weight } = item as { readonly tongue: Derived<'lb'>; readonly weight: Derived<'lb'> };
  return axles === undefined ? undefined : axles * (1 - plain(tongue) / plain(weight));
}

function piecesOf({ spec, weighed }: Assessment): readonly Piece[] {
  return (spec.cargo ?? []).map(({ name, front, balancePoint, length }, i) => {
    const at = inches(weighed.cargo[i]?.at);
    const behind = inches(balancePoint);
    const own = inches(front) ?? (at === undefined || behind === undefined ? undefined : at - behind);
    return { name, at, front: own, length: inches(length) };
  });
}

function downward(assessment: Assessment): readonly LoadArrow[] {
  const { weighed } = assessment;
  const empty = emptyAt(assessment);
  const trailer: readonly LoadArrow[] =
    weighed.curb === undefined || empty === undefined
      ? []
      : [{ name: 'trailer, empty', at: empty, load: weighed.curb, state: 'load', word: undefined }];
  const cargo = weighed.cargo.flatMap((piece): readonly LoadArrow[] =>
    piece === undefined
      ? []
      : [
          {
            name: piece.name,
            at: plain(inInches('place', piece.at)),
            load: piece.weight as Derived<'lb'>,
            state: 'load',
            word: undefined,
          },
        ],
  );
  return [...cargo, ...trailer];
}

/** Everything the picture shows; what the spec does not say is left out of it. */
export function sceneOf(assessment: Assessment): Scene {
  const { spec, stack } = assessment;
  const { trailer } = spec;
  const cargo = spec.cargo ?? [];
  const measures: Measured[] = [];
  if (stack.group) measures.push({ name: 'to the middle of the axles', at: stack.group.at });
  if (trailer.deck) measures.push({ name: 'to the front of the deck', at: inInches('deck front', trailer.deck.front) });
  for (const { name, front } of cargo.slice(0, 3))
    if (front !== undefined) measures.push({ name: `to the front of ${name}`, at: inInches('front', front) });
  const deck = trailer.deck && { front: inches(trailer.deck.front) ?? 0, rear: inches(trailer.deck.rear) ?? 0 };
  return {
    gooseneck: trailer.hitch === 'gooseneck',
    name: trailer.name ?? 'trailer',
    deck,
    height: inches(trailer.ramps?.height) ?? 24,
    wheels: trailer.axles.flatMap(({ at, tires }) => {
      const place = inches(at);
      return place === undefined ? [] : [{ at: place, radius: radiusOf(tires?.designation) }];
    }),
    group: inches(stack.group?.at),
    pieces: piecesOf(assessment),
    down: downward(assessment),
    up: upward(assessment),
    measures,
    windows: windowsOf(assessment),
    ballAboveLevel: trailer.ballAboveLevel && inInches('ball above level', trailer.ballAboveLevel),
  };
}
