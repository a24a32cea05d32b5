/** Parts put together: area, centre of gravity, second moments by the parallel-axis theorem. */
import { type Derived, minus, over, plus, result, times } from '../trace/index.js';
import { net, type Part, squared } from './parts.js';

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

function centre(symbol: string, parts: readonly Part[], along: Along, area: Derived<'in2'>): Derived<'in'> {
  const moved = parts.filter((part) => part[along] !== undefined);
  return result(
    symbol,
    over(
      net(undefined, moved, (part) => times(part.area, part[along] as Derived<'in'>)),
      area,
    ),
  );
}

/** `I = sum of (own + A x^2)`, x from the axis. */
function secondMoment(
  symbol: string,
  parts: readonly Part[],
  along: Along,
  axis: Derived<'in'> | undefined,
): Derived<'in4'> {
  const reaching = parts.filter((part) => part[ownOf[along]] !== undefined || part[along] !== undefined);
  return net(symbol, reaching, (part) => {
    const own = part[ownOf[along]];
    const from = part[along];
    if (from === undefined) return own as Derived<'in4'>;
    const shifted = times(part.area, squared(axis === undefined ? from : minus(from, axis)));
    return own === undefined ? shifted : plus(own, shifted);
  });
}

/** Area, centre of gravity and second moments of all parts together. Across an edge axis every part has its x (or y). */
export function compose(parts: readonly Part[], across: AxisKind, up: AxisKind): Composed {
  const area = net('area', parts, (part) => part.area);
  const x = across === 'symmetric' ? undefined : centre('centre of gravity from the back', parts, 'x', area);
  const y = up === 'symmetric' ? undefined : centre('centre of gravity from the bottom', parts, 'y', area);
  return {
    area,
    ...(x && { x }),
    ...(y && { y }),
    Ix: secondMoment('Ix', parts, 'y', y),
    Iy: secondMoment('Iy', parts, 'x', x),
  };
}
