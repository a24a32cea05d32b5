/** The report's sections on weights and on what the trailer may carry. */
import type { Assessment } from '../../assessment/index.js';
import { compare } from '../../units/index.js';
import type { FiguresInPrint } from '../reader-units.js';
import { entry, namesOf, remark } from '../text-layout.js';

/** Weights, axle loads, pressures, and the tongue beside its guideline. */
export function weightLines(
  { weights: { curb, gross, balance }, axleLoads, advice, pressures }: Assessment,
  p: FiguresInPrint,
): readonly string[] {
  return [
    ...(curb ? [entry('trailer, empty', p.load(curb.value), curb.why.basis)] : []),
    ...(gross ? [entry('gross weight', p.load(gross.value), gross.why.basis)] : []),
    ...(balance
      ? [entry('tongue load', p.load(balance.tongue.value), `${p.share(balance.tongueShare.value)} of gross`)]
      : []),
    ...axleLoads.map(({ of, load }) => entry(`${of} load`, p.load(load.value))),
    ...pressures.map(({ of, needed }) =>
      entry(
        `${of} tires, cold: not below`,
        p.pressure(needed.pressure.value),
        `carries ${p.capacity(needed.carries.value)}`,
      ),
    ),
    ...(pressures.length > 0
      ? [
          remark(
            'Tires run at the cold pressure of the placard; the printed rows say only what would be too little for the heaviest tire load here.',
          ),
        ]
      : []),
    ...(advice
      ? [
          remark(
            `Tongue is ${advice.verdict === 'inside' ? 'inside' : `too ${advice.verdict} for`} the guideline of ${p.share(advice.guideline.low.value)} to ${p.share(advice.guideline.high.value)} (${p.load(advice.least.value)} to ${p.capacity(advice.most.value)}; ${advice.guideline.source.title}).`,
          ),
        ]
      : []),
  ];
}

/** Each limit's own answer, and the least of them. */
export function payloadLines({ payload: carry }: Assessment, p: FiguresInPrint): readonly string[] {
  if (carry === undefined) return [];
  const { payload, share } = carry;
  const band =
    compare(share.low.value, share.high.value) === 0
      ? p.share(share.low.value)
      : `${p.share(share.low.value)} to ${p.share(share.high.value)}`;
  return [
    ...payload.governed.limits.map(({ name, limit }) => entry(`by ${name}`, p.capacity(limit.value))),
    entry(
      'payload, the least of these',
      p.capacity(payload.most.value),
      `set by ${namesOf(payload.governed.governing)}`,
    ),
    remark(`Calculated with ${band} of the gross weight on the tongue.`),
  ];
}
