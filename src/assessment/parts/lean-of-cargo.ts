/** How cargo off the centre line loads the two sides: all of it in its proportions, or one piece with the others staying. */
import type { DecodedSpec } from '../../spec/index.js';
import {
  constant,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  inInches,
  inPounds,
  leastOf,
  minus,
  over,
  plus,
  result,
  sum,
  times,
} from '../../trace/index.js';
import { lb } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { Side } from './laden-limits-sides.js';
import type { Rig } from './rig.js';

const nothing = constant(lb(0));

/** The load leans as the cargo of the spec does: what a pound of it adds to the heavier side, and takes from the other. Cargo of no weight leans nowhere. */
export function sidesOfCargo(
  { stance: { sides } }: Rig,
  { cargo = [] }: DecodedSpec,
): { readonly sides: readonly Side[]; readonly decisions: readonly Decision[] } {
  if (sides === undefined || cargo.length === 0) return { sides: [], decisions: [] };
  const loaded = sum(
    'cargo',
    cargo.map(({ name, weight }) => inPounds(`${name} weight`, weight)),
  );
  const weighs = decide(loaded, '>', nothing);
  if (!weighs.holds) return { sides: [], decisions: [weighs] };
  const [heavier, lighter] = [
    greatestOf('heavier side', [sides.left, sides.right]),
    leastOf('lighter side', [sides.left, sides.right]),
  ];
  return {
    sides: [
      {
        name: 'heavier side',
        lean: result('lean of the cargo', over(minus(heavier, lighter), loaded)),
        added: undefined,
      },
      {
        name: 'lighter side',
        lean: result('lean away from the cargo', over(minus(lighter, heavier), loaded)),
        added: undefined,
      },
    ],
    decisions: [weighs],
  };
}

/** One piece, the others staying: twice a side is `W - T + q P` and what the others add; `q = 2 y / track`. */
export function sidesOfPiece({ trailer: { track }, cargo = [] }: DecodedSpec, index: number): readonly Side[] {
  const offsets = cargo.map(({ rightOfMiddle }) => rightOfMiddle);
  const own = offsets[index];
  if (track === undefined || own === undefined || offsets.some((each) => each === undefined)) return [];
  const wheels = inInches('track', track);
  const lean = result('lean of the piece', over(times(2, inInches('piece right of the middle', own)), wheels));
  const [first, ...rest] = collected(cargo, ({ name, weight, rightOfMiddle }, i) =>
    i === index || rightOfMiddle === undefined
      ? []
      : [times(inPounds(`${name} weight`, weight), inInches(`${name} right of the middle`, rightOfMiddle))],
  );
  const added = first && result('added to the right side by what stays', over(times(2, plus(first, ...rest)), wheels));
  const left = (figure: Derived<'lb'>): Derived<'lb'> =>
    result('added to the left side by what stays', minus(constant(lb(0)), figure));
  return [
    { name: 'right side', lean, added },
    {
      name: 'left side',
      lean: result('lean of the piece to the left', minus(0, lean)),
      added: added && left(added),
    },
  ];
}
