/** What presses on the trailer and what bears it, read from an assessment. */
import type { Assessment } from '../../assessment/index.js';
import type { Check } from '../../ratings/index.js';
import { type AnyLength, type Derived, inInches } from '../../trace/index.js';
import { has } from '../../units/internal.js';
import { plain } from '../drawing/numbers.js';

/** `over`: a check of it is over, or it lifts. `attention`: not right, and no rating exceeded. */
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

/** A place in inches, as a coordinate. */
export const inches = (length: AnyLength | undefined): number | undefined =>
  length === undefined ? undefined : plain(inInches('place', length));

const isOver = (checks: readonly Check[], load: Derived<'lb'>): boolean =>
  checks.some((check) => check.verdict === 'over' && check.load.why === load.why);

/** Whether it pulls up where it must press. */
export const lifts = (load: Derived<'lb'>): boolean => plain(load) < 0;

/** The tongue and the axles, each with the word of its state. */
export function upward(assessment: Assessment): readonly LoadArrow[] {
  const { axleLoads, checks, tongue, spec } = assessment;
  const axles = axleLoads.flatMap(({ of, load }, i): readonly LoadArrow[] => {
    const at = inches(spec.trailer.axles[i]?.at) ?? inches(assessment.runningGear.group?.at);
    const over = isOver(checks, load);
    return at === undefined
      ? []
      : [{ name: of, at, load, state: over || lifts(load) ? 'over' : 'load', word: over ? 'over' : undefined }];
  });
  if (tongue === undefined) return axles;
  const over = isOver(checks, tongue.load);
  const { verdict } = tongue.guideline;
  const doubtful = verdict === 'inside' ? undefined : verdict;
  const guided = doubtful === undefined ? 'load' : 'attention';
  return [
    {
      name: 'tongue',
      at: 0,
      load: tongue.load,
      state: over || lifts(tongue.load) ? 'over' : guided,
      word: over ? 'over' : doubtful,
    },
    ...axles,
  ];
}

/** Where the empty trailer acts: its own place, or the place that its weights tongue load puts it at. */
function emptyAt({ weights, runningGear }: Assessment): number | undefined {
  const item = weights.trailer;
  if (item === undefined) return undefined;
  if (has(item, 'at')) return inches(item.at);
  const axles = inches(runningGear.group?.at);
  const { tongue, weight } = item as { readonly tongue: Derived<'lb'>; readonly weight: Derived<'lb'> };
  return axles === undefined ? undefined : axles * (1 - plain(tongue) / plain(weight));
}

/** Cargo, and the empty trailer where its place is known. */
export function downward(assessment: Assessment): readonly LoadArrow[] {
  const { weights } = assessment;
  const empty = emptyAt(assessment);
  const trailer: readonly LoadArrow[] =
    weights.curb === undefined || empty === undefined
      ? []
      : [{ name: 'trailer, empty', at: empty, load: weights.curb, state: 'load', word: undefined }];
  const cargo = weights.cargo.flatMap((piece): readonly LoadArrow[] =>
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
