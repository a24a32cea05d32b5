/** Parts put together: area, centre of gravity, second moments by the parallel-axis theorem. */
import { type Derived, minus, over, plus, result, times } from '../../trace/index.js';
import { net, type Part } from './parts.js';

/** About an axis of symmetry, parts are placed from that axis; about any other, from an edge, and the axis is found first. */
export type AxisKind = 'symmetric' | 'from the edge';

export interface Composed {
  readonly area: Derived<'in2'>;
  /** Of the centre of gravity, from the edge; absent for an axis of symmetry. */
  readonly x?: Derived<'in'>;
  readonly y?: Derived<'in'>;
  readonly Ix: Derived<'in4'>;
  readonly Iy: Derived<'in4'>;
}

type Along = 'x' | 'y';
const ownOf = { x: 'Iy', y: 'Ix' } as const;

/** `sum of (a x) / A`. */
function centre(parts: readonly Part[], along: Along, area: Derived<'in2'>): Derived<'in'> {
  const firstMoment = net(parts, (part) => {
    const x = part[along];
    return x && times(part.area, x);
  });
  return over(firstMoment, area);
}

/** `I = sum of (own + a d^2)`, d from the axis. */
function secondMoment(parts: readonly Part[], along: Along, axis: Derived<'in'> | undefined): Derived<'in4'> {
  return net(parts, (part) => {
    const [own, x] = [part[ownOf[along]], part[along]];
    if (x === undefined) return own;
    const d = axis === undefined ? x : minus(x, axis);
    const shifted = times(part.area, d, d);
    return own === undefined ? shifted : plus(own, shifted);
  });
}

/** Area, centre of gravity and second moments of all parts together. Across an edge axis every part has its x (or y). */
export function compose(parts: readonly Part[], across: AxisKind, up: AxisKind): Composed {
  const area = result(
    'area',
    net(parts, (part) => part.area),
  );
  const x = across === 'symmetric' ? undefined : result('centre of gravity from the back', centre(parts, 'x', area));
  const y = up === 'symmetric' ? undefined : result('centre of gravity from the bottom', centre(parts, 'y', area));
  return {
    area,
    ...(x && { x }),
    ...(y && { y }),
    Ix: result('Ix', secondMoment(parts, 'y', y)),
    Iy: result('Iy', secondMoment(parts, 'x', x)),
  };
}
