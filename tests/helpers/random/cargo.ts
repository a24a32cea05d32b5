/** The cargo of a random spec: machines and other pieces, placed in one of the ways people tell it. */
import type { Piece, Plan } from './plan.js';

function tiedownsOf({ chance, write }: Plan): readonly object[] {
  const runs = (): string => chance.pick(['direct', 'same side', 'other side']);
  const what = (): object => {
    if (chance.happens(30)) return { marked: write.weight(chance.whole(2000, 7000, 100)) };
    if (chance.happens(30)) return { webbing: chance.pick(['2', '3', '4']) };
    return {
      chain: { size: chance.pick(['5/16', '3/8', '1/4']), grade: chance.pick(['43', '70', '100', 'unmarked']) },
    };
  };
  return Array.from({ length: chance.pick([2, 4, 4, 5]) }, () => ({ ...what(), runs: runs() }));
}

function placeOf({ chance, write, detail }: Plan, { at, length }: Piece): object {
  if (chance.happens(4)) return {};
  const behind = Math.round((length * chance.whole(38, 58)) / 100);
  if (chance.happens(35))
    return { at: write.length(at), ...chance.maybe(detail, 'balancePoint', () => write.length(behind)) };
  return { front: write.length(Math.max(at - behind, -100)), balancePoint: write.length(behind) };
}

/** What is asked when a wheeled machine climbs the ramps. */
function climbOf({ chance, write }: Plan, { length }: Piece): object {
  const wheelbase = Math.round(length * 0.6);
  return {
    wheelbase: write.length(wheelbase),
    ...chance.maybe(60, 'lowPoint', () => ({
      behindFrontAxle: write.length(Math.round(wheelbase / 2)),
      height: write.length(chance.whole(5, 14)),
    })),
    ...chance.maybe(60, 'gauges', () => [
      { gauge: '46 in', tireWidth: '10 in' },
      { gauge: '48 in', tireWidth: '12 in' },
    ]),
  };
}

function pieceOf(plan: Plan, piece: Piece, index: number): object {
  const { chance, write, detail } = plan;
  const half = Math.round(piece.weight * 0.42);
  return {
    name: piece.name,
    weight: write.weight(piece.weight),
    ...placeOf(plan, piece),
    ...chance.maybe(Math.max(detail, 60), 'length', () => write.length(piece.length)),
    ...chance.maybe(detail * 0.5, 'uncertainty', () => write.length(chance.whole(0, 4))),
    ...chance.maybe(detail * 0.5, 'rightOfMiddle', () => write.length(chance.whole(-4, 4))),
    ...(index === 0 && chance.happens(detail * 0.5) ? climbOf(plan, piece) : {}),
    ...chance.maybe(detail * 0.5, 'axles', () => [write.weight(half), write.weight(piece.weight - half)]),
    ...chance.maybe(detail * 0.8, 'tiedowns', () => tiedownsOf(plan)),
    ...chance.maybe(detail, 'section', () =>
      chance.pick(['general', piece.weight > 10000 ? 'heavy equipment' : 'general']),
    ),
    ...chance.maybe(20, 'blockedForward', () => chance.happens(50)),
  };
}

/** Every piece of the plan, the front one first. */
export const cargoOf = (plan: Plan): readonly object[] =>
  plan.pieces.map((piece, index) => pieceOf(plan, piece, index));
