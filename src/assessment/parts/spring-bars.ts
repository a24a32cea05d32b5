/** Spring bars on the tow side of a spec: what they move, and the part of the tongue load that they put back. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type TowingError, type WeightDistribution, weightDistribution } from '../../towing/index.js';
import { constant, type Derived, decide, inInches, inShare, over, plus, result, times } from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { signOfFigure } from '../../units/internal.js';
import { emptyPart } from './part-of-answer.js';
import type { TowPart } from './tow-part.js';
import { unhitched } from './wanting-keys.js';

const nothing = constant(lb(0));

function barsOf(
  spec: DecodedSpec,
  gross: Derived<'lb'>,
  tongue: Derived<'lb'>,
  group: AxleGroup,
): Either<TowingError, WeightDistribution | undefined> {
  const { tow } = spec;
  if (tow?.bars === undefined || tow.front === undefined || tow.rear === undefined || tow.wheelbase === undefined)
    return right(undefined);
  const { overhang } = tow;
  if (overhang === undefined || overhang === 'unknown') return right(undefined);
  return weightDistribution({
    front: tow.front,
    rear: tow.rear,
    gross,
    tongue,
    wheelbase: tow.wheelbase,
    overhang,
    hitchHardware: tow.hitchHardware,
    axlesAt: group.at,
    bars: tow.bars,
    ratings: { front: tow.frontGawr, rear: tow.rearGawr, trailerAxles: group.capacity },
  });
}

/** `k = p o / (a + o)`: the part of the tongue load that bars put back on the trailer axles, whatever the load; p the part of the front axle's loss that they restore. */
function returnedByBars({ tow }: DecodedSpec, { at }: AxleGroup): Derived<'ratio'> | undefined {
  if (tow?.bars === undefined || tow.front === undefined || tow.rear === undefined || tow.wheelbase === undefined)
    return undefined;
  if (tow.overhang === undefined || tow.overhang === 'unknown') return undefined;
  const overhang = inInches('overhang', tow.overhang);
  // A ball over the rear axle or ahead of it takes no load off the front axle, so there is none to restore.
  if (signOfFigure(overhang.value) <= 0) return undefined;
  const restore = inShare('share to restore', tow.bars.restore);
  return result('share of the tongue load put back by the bars', over(times(restore, overhang), plus(at, overhang)));
}

/** Asks what the bars do with this tongue load, as far as the truck, the axles and the ball's place are known. */
export function barsPart(
  spec: DecodedSpec,
  gross: Derived<'lb'>,
  tongue: Derived<'lb'> | undefined,
  group: AxleGroup | undefined,
): Either<TowingError, TowPart> {
  const shareReturnedByBars = group && returnedByBars(spec, group);
  const presses = tongue && decide(tongue, '>', nothing);
  const rests = tongue && decide(tongue, '<=', gross);
  const base: TowPart = {
    ...emptyPart,
    decisions: [presses, rests].flatMap((each) => each ?? []),
    ...(shareReturnedByBars && { shareReturnedByBars }),
  };
  const bars =
    tongue === undefined ||
    group === undefined ||
    shareReturnedByBars === undefined ||
    presses?.holds !== true ||
    rests?.holds !== true
      ? right(undefined)
      : barsOf(spec, gross, tongue, group);
  if (isLeft(bars)) return left({ ...bars.left, path: bars.left.path ?? 'tow.bars' });
  if (bars.right !== undefined)
    return right({
      ...base,
      bars: bars.right,
      checks: bars.right.findings.barsOn.checks,
      notes: bars.right.notes,
      decisions: [...base.decisions, ...bars.right.decisions],
    });
  if (spec.tow?.bars === undefined) return right(base);
  const impossible =
    presses?.holds === false
      ? 'a tongue load that presses on the ball'
      : rests?.holds === false && 'a tongue load that is not above the gross weight';
  const missing =
    shareReturnedByBars !== undefined && impossible
      ? impossible
      : 'axles alone, wheelbase and a measured overhang behind the rear axle';
  const paths = unhitched(spec, 'front', 'rear', 'wheelbase', 'overhang');
  return right({ ...base, notChecked: [{ id: 'bars', what: 'weight distributing bars', missing, paths }] });
}
