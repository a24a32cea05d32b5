/** Loaded to the payload at its share nothing is over and nothing lifts; one pound more, and something is. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { convert } from '../../../src/units/index.js';
import type { Decimal } from '../../../src/units/internal.js';
import { answerTo } from '../../helpers/facts.js';
import { fewOf, lawSeeds } from '../../helpers/law-seeds.js';
import { isPlace } from '../../helpers/loaded.js';
import { type JsonSpec, randomSpec } from '../../helpers/random-specs.js';

const wire = (value: Decimal, unit: 'lb' | 'in') => ({ value: value.toFixed(), unit });

/**
 * The spec with its cargo in the same proportions, this heavy in all, every piece at the one place that gives this tongue share;
 * undefined where that is no place: a few pounds would have to stand far off the trailer.
 */
function loaded(spec: JsonSpec, answer: Assessment, weight: Decimal, share: Decimal): JsonSpec | undefined {
  const { weights, runningGear } = answer;
  const [curb, gross] = [weights.curb!.value.value, weights.gross!.value.value];
  const axles = runningGear.group!.at.value.value;
  // The tongue load of the trailer with its cargo over the axles is that of the empty one.
  const empty = weights.balance!.tongue.value.value.minus(
    weights.cargo.reduce((sum, piece) => {
      const at = piece!.at as { value: { value: Decimal } };
      const load = piece!.weight as { value: { value: Decimal } };
      return sum.plus(load.value.value.times(axles.minus(at.value.value)).div(axles));
    }, curb.minus(curb)),
  );
  const place = axles.minus(curb.plus(weight).times(share).minus(empty).times(axles).div(weight));
  if (!isPlace(place)) return undefined;
  const factor = weight.div(gross.minus(curb));
  const cargo = (spec['cargo'] as readonly Record<string, unknown>[]).map((piece, i) => {
    const { front: _front, balancePoint: _point, uncertainty: _unsure, ...rest } = piece;
    const read = answer.spec.cargo![i]!;
    return {
      ...rest,
      weight: wire(convert(read.weight.value, 'lb').value.times(factor), 'lb'),
      at: wire(place, 'in'),
      ...(read.axles && { axles: read.axles.map((each) => wire(convert(each.value, 'lb').value.times(factor), 'lb')) }),
    };
  });
  return { ...spec, cargo };
}

/** What is over or lifts; undefined when the spec is refused. */
function wrongWith(spec: JsonSpec): readonly string[] | undefined {
  const found = assessJson(spec);
  if (isLeft(found)) return undefined;
  const { checks, uplift } = found.right;
  return [
    ...checks.filter(({ verdict }) => verdict === 'over').map(({ id }) => id),
    ...uplift.lifted.map(({ what }) => `${what} lifts`),
  ];
}

const askable = ({ payload, weights, runningGear, spec }: Assessment): boolean =>
  payload !== undefined &&
  weights.balance !== undefined &&
  runningGear.group !== undefined &&
  (spec.cargo ?? []).length > 0;

const tenths = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

const tried: { readonly broken: string[]; readonly loose: string[]; asked: number } = {
  broken: [],
  loose: [],
  asked: 0,
};

/** Loads a rig to one of its payloads at the shares at which it holds, and with one pound more at every share of the band. */
function tryPayload(
  seed: number,
  answer: Assessment,
  which: 'best' | 'anywhere',
  shares: readonly Decimal[],
  across: readonly Decimal[],
): void {
  const spec = randomSpec(seed);
  const weight = answer.payload?.[which]?.weight.value.value;
  if (weight === undefined || weight.lte(0)) return;
  tried.asked += 1;
  for (const each of shares) {
    const laden = loaded(spec, answer, weight, each);
    if (laden === undefined) continue;
    const wrong = wrongWith(laden);
    if (wrong?.length !== 0) tried.broken.push(`seed ${seed}, ${which}: ${wrong?.join(', ') ?? 'refused'}`);
  }
  const more = across.map((each) => {
    const laden = loaded(spec, answer, weight.plus('1.001'), each);
    return laden === undefined ? undefined : wrongWith(laden);
  });
  const fine = more.filter((wrong) => wrong?.length === 0);
  if (which === 'best' ? fine.length > 0 : fine.length === across.length) tried.loose.push(`seed ${seed}, ${which}`);
}

describe('the payload of a random rig', () => {
  for (const seed of lawSeeds(60)) {
    const answer = answerTo(randomSpec(seed));
    if (answer?.payload === undefined || !askable(answer)) continue;
    const { best, share } = answer.payload;
    const [low, high] = [share.low.value.value, share.high.value.value];
    const across = tenths.map((tenth) => low.plus(high.minus(low).times(tenth).div(10)));
    const ends = best?.shares === undefined ? [] : [best.shares.from.value.value, best.shares.to.value.value];
    tryPayload(seed, answer, 'best', ends, across);
    tryPayload(seed, answer, 'anywhere', across, across);
  }
  it('loaded to it at its shares leaves nothing over and nothing lifted', () =>
    expect(fewOf(tried.broken)).toEqual([]));
  it('with one pound more is over at every share, or at some share of the band', () =>
    expect(fewOf(tried.loose)).toEqual([]));
  it('was asked', () => expect(tried.asked).toBeGreaterThan(0));
});
