/** Two statements of a spec that cannot both be so: one of them was read wrongly, and every answer built on either would be a guess. */

import type { Problem, UndecodableSpec } from './errors.js';
import type { AxleSpec, CargoSpec, Spec } from './spec.js';

/** A place told in two ways. */
const placedTwice = ({ at, front }: CargoSpec, path: string): readonly Problem[] =>
  at === undefined || front === undefined
    ? []
    : [
        {
          path,
          got: 'a position and the place of the front face',
          needed: 'one of the two: "at", or "front" with "balancePoint"',
        },
      ];

/** An axle has a tire on either side, or a pair, and a wheel under each. */
function tiresOf({ tires, wheels }: AxleSpec, path: string): readonly Problem[] {
  if (tires === undefined) return [];
  const { count, fitment } = tires;
  const fits = fitment === 'single' ? count === 2 : count % 4 === 0;
  return [
    ...(fits
      ? []
      : [
          {
            path: `${path}.tires.count`,
            got: `${count} tires, ${fitment}`,
            needed:
              fitment === 'single'
                ? '2 tires when single, or the fitment "dual"'
                : '4 or 8 tires when dual, or the fitment "single"',
          },
        ]),
    ...(wheels === undefined || wheels.count === count
      ? []
      : [
          {
            path: `${path}.wheels.count`,
            got: `${wheels.count} wheels for ${count} tires`,
            needed: 'a wheel for each tire',
          },
        ]),
  ];
}

/** Every contradiction, with its place; undefined when there is none. @example contradictionsIn(orThrow(decodeSpec(spec))) === undefined // true */
export function contradictionsIn({ trailer, cargo = [] }: Spec): UndecodableSpec | undefined {
  const problems = [
    ...trailer.axles.flatMap((axle, i) => tiresOf(axle, `trailer.axles.${i}`)),
    ...cargo.flatMap((piece, i) => placedTwice(piece, `cargo.${i}`)),
  ];
  const [first] = problems;
  return first && { chapter: 'spec', tag: 'UndecodableSpec', path: first.path, problems };
}
