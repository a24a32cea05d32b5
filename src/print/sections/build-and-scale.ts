/** The report's sections on the trailer as built, and on the scale tickets. */
import type { Assessment } from '../../assessment/index.js';
import type { FiguresInPrint } from '../figures-in-print.js';
import { entry, remark } from '../text-layout.js';

/** The trailer as its parts add up, and what more deck costs. */
export function buildLines(
  { weights: { built }, deckGrowth: longer }: Assessment,
  p: FiguresInPrint,
): readonly string[] {
  return [
    ...(built
      ? [
          ...built.lines.map(({ name, weight, at }) => entry(name, p.load(weight.value), `at ${p.placeNow(at.value)}`)),
          entry('built up', p.load(built.weight.value), `acts at ${p.placeNow(built.at.value)}`),
        ]
      : []),
    ...(longer
      ? [
          entry('more deck weighs', p.weightOfDeck(longer.growth.perFoot.value)),
          ...longer.byLength.rows.map(({ length, emptyWeight, payload }) =>
            entry(
              `deck of ${p.longLength(length.value)}`,
              p.capacity(payload.value),
              `empty ${p.load(emptyWeight.value)}`,
            ),
          ),
          remark(
            'Payload on the GVWR, and the weight of the empty trailer. The same design at other lengths: axles, tongue and placement are asked again for each.',
          ),
        ]
      : []),
  ];
}

/** The scale tickets compared with the calculation. */
export function scaleLines({ scale: { reading, gaps } }: Assessment, p: FiguresInPrint): readonly string[] {
  if (reading === undefined) return [];
  const { tongue, gross, restored, closures } = reading;
  return [
    ...(gross ? [entry('trailer gross, weighed', p.load(gross.value))] : []),
    ...(tongue ? [entry('tongue load, weighed', p.load(tongue.value))] : []),
    ...(restored ? [entry('front axle load restored by the bars', p.share(restored.value))] : []),
    ...gaps.map(({ what, gap }) => entry(`${what}, weighed minus calculated`, p.load(gap.value))),
    ...closures.map(({ what, gap, allowed }) =>
      remark(`${what}: the sums agree within ${p.load(gap.value)}; ${p.load(allowed.value)} allowed.`),
    ),
  ];
}
