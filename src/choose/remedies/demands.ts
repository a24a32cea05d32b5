/** What must be zero or more for a rig to be within, as far as figures say so: reserves, pressing loads, band, window, parts against the label. */
import type { Assessment } from '../../assessment/index.js';
import { leavesOf } from '../../spec/index.js';
import type { Derived, Given, Node } from '../../trace/index.js';
import { convert, quantity, type Unit } from '../../units/index.js';
import type { Ends } from '../ranges/backward.js';
import { coneOf, slopesOf } from '../ranges/backward.js';
import { type Flat, flatten } from '../ranges/flat.js';
import { forward } from '../ranges/forward.js';
import { point } from '../ranges/interval.js';
import { questionsOf } from '../sureness/asked.js';

/** One demand: figures, each with what it counts; their sum must not be below zero. */
interface Demand {
  readonly id: string;
  readonly parts: readonly (readonly [Node, number])[];
}

const one = (id: string, { why }: Derived<Unit>): Demand => ({ id, parts: [[why, 1]] });

function demandsOf(assessment: Assessment): readonly Demand[] {
  const { tongue, placement, attention } = assessment;
  return [
    ...questionsOf(assessment).map(({ id, figure }) => one(id, figure)),
    ...(tongue === undefined
      ? []
      : [one('band/low', tongue.guideline.aboveLeast), one('band/high', tongue.guideline.belowMost)]),
    ...attention.flatMap(({ tag, figures: [bears, against] = [] }): readonly Demand[] =>
      tag.endsWith('BelowLabel') && bears !== undefined && against !== undefined
        ? [
            {
              id: `label/${tag}`,
              parts: [
                [bears.why, 1],
                [against.why, -1],
              ],
            },
          ]
        : [],
    ),
    ...placement.pieces.flatMap(({ index, window, now }) =>
      now === undefined
        ? []
        : window.limits.map(({ end, at }, i): Demand => {
            const side = end === 'front' ? 1 : -1;
            return {
              id: `window/${index}/${i}`,
              parts: [
                [now.at.why, side],
                [at.why, -side],
              ],
            };
          }),
    ),
  ];
}

/** The demands of one assessment as functions of some inputs. */
export interface Demands {
  /** What is below zero now. */
  readonly short: readonly number[];
  readonly count: number;
  readonly idOf: (demand: number) => string;
  /** The figure of a demand with other figures at the inputs, in the units asked for. */
  readonly at: (demand: number, inputs: readonly number[]) => number;
  /** The slope of a demand with each input at its recorded value; zero for an input it does not depend on. */
  readonly slopes: (demand: number) => readonly number[];
}

/** A tie in decimals may miss zero by so much in doubles. */
export const nearZero = 1e-7;

/** A figure of the spec as something to vary, and the unit to refer to it in. */
export interface Input {
  readonly path: string;
  readonly unit: Unit;
}

/** The demands of an assessment as functions of some inputs. */
export function demandsIn(assessment: Assessment, inputs: readonly Input[]): Demands {
  const leaves = leavesOf(assessment.spec);
  const paths = inputs.map(({ path }) => path);
  const factors = inputs.map(({ path, unit }) => {
    const leaf = leaves.get(path)?.value.unit ?? unit;
    return convert(quantity(1, unit), leaf as never).value.toNumber();
  });
  const demands = demandsOf(assessment);
  const numberOf = new Map(paths.map((path, i) => [path, i]));
  const inputOf = ({ path }: Given): number | undefined => (path === undefined ? undefined : numberOf.get(path));
  const flat: Flat = flatten(
    demands.flatMap(({ parts }) => parts.map(([node]) => node)),
    inputOf,
  );
  const now: number[] = paths.map(() => 0);
  flat.input.forEach((input, i) => {
    if (input >= 0) now[input] = flat.at[i] as number;
  });
  const endsOf = demands.map(
    ({ parts }): Ends => parts.map(([node, counts]) => [flat.indexOf.get(node) as number, counts]),
  );
  const cones: (readonly number[] | undefined)[] = [];
  const cone = (demand: number): readonly number[] => {
    cones[demand] ??= coneOf(flat, endsOf[demand] as Ends);
    return cones[demand];
  };
  const figure = (demand: number, leafFigures: readonly number[]): number => {
    const found = forward(flat, leafFigures.map(point), cone(demand));
    return (endsOf[demand] as Ends).reduce((sum, [i, counts]) => sum + counts * (found[i]?.low as number), 0);
  };
  const numbers = demands.map((_, i) => i);
  return {
    short: numbers.filter((demand) => figure(demand, now) < -nearZero),
    count: demands.length,
    idOf: (demand) => (demands[demand] as Demand).id,
    at: (demand, asked) =>
      figure(
        demand,
        asked.map((value, i) => value * (factors[i] as number)),
      ),
    slopes: (demand) => {
      const which = cone(demand);
      const slopes = slopesOf(flat, endsOf[demand] as Ends, which, forward(flat, now.map(point), which));
      return paths.map((_, i) => (slopes.get(i)?.low ?? 0) * (factors[i] as number));
    },
  };
}
