/** The report's sections on weights and on what the trailer may carry. */
import type { Assessment, TonguePart } from '../../assessment/index.js';
import type { Derived } from '../../trace/index.js';
import { compare, inch, type Quantity, subtract } from '../../units/index.js';
import type { FiguresInPrint } from '../figures-in-print.js';
import { entry, namesOf, remark } from '../text-layout.js';

function guidelineLines(tongue: TonguePart | undefined, p: FiguresInPrint): readonly string[] {
  if (tongue === undefined) return [];
  const { verdict, least, most, guideline } = tongue.guideline;
  const { low, high, source } = guideline;
  return [
    remark(
      `Tongue is ${verdict === 'inside' ? 'inside' : `too ${verdict} for`} the guideline of ${p.share(low.value)} to ${p.share(high.value)} (${p.load(least.value)} to ${p.capacity(most.value)}; ${source.title}).`,
    ),
  ];
}

/** Weights, axle loads, pressures, and the tongue load compared with its guideline. */
export function weightLines(
  { weights: { curb, gross }, tongue, axleLoads, pressures }: Assessment,
  p: FiguresInPrint,
): readonly string[] {
  return [
    ...(curb ? [entry('trailer, empty', p.load(curb.value), curb.why.basis)] : []),
    ...(gross ? [entry('gross weight', p.load(gross.value), gross.why.basis)] : []),
    ...(tongue ? [entry('tongue load', p.load(tongue.load.value), `${p.share(tongue.share.value)} of gross`)] : []),
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
    ...guidelineLines(tongue, p),
  ];
}

const sixteenth = inch('0.0625');

/** A stretch rounded inward; one that is shorter than what a tape shows is one place. */
const stretch = (from: Quantity<'in'>, to: Quantity<'in'>, p: FiguresInPrint): string =>
  compare(subtract(to, from), sixteenth) < 0
    ? `at ${p.placeNow(from)}`
    : `from ${p.place(from, 'rear')} to ${p.place(to, 'front')}`;

/** What each limit allows by itself, and the payload: at the best share of the band, and at every share of it. */
export function payloadLines({ payload }: Assessment, p: FiguresInPrint): readonly string[] {
  if (payload === undefined) return [];
  const { best, anywhere, lifts, share } = payload;
  const span = (from: Derived<'ratio'>, to: Derived<'ratio'>): string =>
    compare(from.value, to.value) === 0 ? p.share(from.value) : `${p.share(from.value)} to ${p.share(to.value)}`;
  const one = share.low === share.high;
  const { from, to } = best?.shares ?? { from: share.low, to: share.high };
  return [
    ...((anywhere ?? best)?.limits.map(({ name, limit }) => entry(`by ${name}`, p.capacity(limit.value))) ?? []),
    ...(best
      ? [
          entry(
            one ? 'payload' : 'payload, at the best share',
            p.capacity(best.weight.value),
            `set by ${namesOf(best.governing)}`,
          ),
          remark(`Holds with ${span(from, to)} of the gross weight on the tongue.`),
          ...(best.places
            ? [
                remark(
                  `Its balance point then stands ${stretch(best.places.from.value, best.places.to.value, p)} behind the coupler.`,
                ),
              ]
            : []),
        ]
      : []),
    ...(anywhere && !one
      ? [
          entry(
            'payload, at every share of the band',
            p.capacity(anywhere.weight.value),
            `set by ${namesOf(anywhere.governing)}`,
          ),
          remark(`Holds with ${span(share.low, share.high)} of the gross weight on the tongue.`),
        ]
      : []),
    ...(lifts.length === 0 ? [] : [remark(`No figure where something lifts: ${lifts.join(', ')}.`)]),
  ];
}
