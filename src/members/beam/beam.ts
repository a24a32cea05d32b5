/** A beam on two supports: reactions, shear, moment, deflection, bending stress. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  aboveZero,
  allHold,
  asDerived,
  between,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  inPsi,
  minus,
  over,
  result,
  times,
  zeroIn,
} from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { MembersError } from '../errors.js';
import type { Allowable } from './allowable.js';
import type { BeamAnswer, BeamMember, BeamStation, BendingCheck } from './beam-answer.js';
import { momentAt } from './brackets.js';
import { atSupport, elasticCurve } from './elastic.js';
import { type Load, placeLoad } from './loads.js';
import { type Reactions, reactionsOf } from './reactions.js';
import { shearDiagram, zeroShear } from './shear.js';
import { placeSupports, type Spans } from './spans.js';
import { fixedStations, insert, type Keep, type Station } from './stations.js';

const caution = note(
  'StaticCheckOnly',
  'A static check of one member in bending: road loads, twisting, buckling, welds, fatigue and connections are not in it. A licensed engineer decides.',
);

function holdDowns(reactions: Reactions, keep: Keep): readonly Note[] {
  return (['left', 'right'] as const)
    .filter((side) => keep(decide(reactions[side], '<', zeroIn('lbf'))))
    .map((side) =>
      note('HoldDown', `The ${side} support is pulled up: it must hold the beam down.`, [reactions[side]]),
    );
}

function bendingOf(moment: Derived<'lbf*in'>, modulus: Derived<'in3'>, allowable: Allowable, keep: Keep): BendingCheck {
  const stress = result('bending stress', over(moment, modulus));
  return {
    stress,
    allowable,
    reserve: result('reserve, bending stress', minus(allowable.stress, stress)),
    used: result('share used, bending stress', over(stress, allowable.stress)),
    verdict: keep(decide(stress, '<=', allowable.stress)) ? 'within' : 'over',
  };
}

/**
 * What do these loads do to this beam: reactions, shear, moment, deflection, bending stress?
 *
 * Balance of moments for the reactions; `V = R - P - w <x - s>`, `M = R <x - a> - P <x - p> - w/2 (<x - s>^2 - <x - e>^2)` with
 * `<x> = x` where it is above zero, else zero; deflection by integrating `M / (E I)` twice with none at the supports;
 * `f = |M| / S`. Forces in lbf, lengths in in, stress in psi.
 *
 * A static check of one straight member of one section on two supports. Road loads, twisting, lateral and local buckling, shear
 * stress, welds, fatigue and connections are outside it, and so is any dynamic factor: none is printed for trailers. A licensed
 * engineer decides. Deflection is given at the stations; between them it may be larger: ask with `alsoAt`.
 *
 * @param spans overhangs and span by drawing, any unit of length; an overhang may be zero
 * @param loads point loads and spread loads, down positive, places from the left end; weights enter by `weightAsForce` or `ownWeight`
 * @param member E, I, S of the section and a named allowable stress
 * @returns stations in order from the left, greatest moment, bending check (over is an answer), notes (a hold-down is named);
 * Left `OutsideItsRange` (a span of zero, a load off the beam or one that ends before it starts), `NothingListed`
 * @example beam({ leftOverhang: inch(0), span: foot(21), rightOverhang: inch(0) }, [{ kind: 'spread', name: 'deck', perLength: lbfPerFt(550), from: inch(0), to: foot(21) }], member)
 * @source statics and the elastic curve, derived; agrees with the cases of AISC Table 3-23 (from memory)
 */
export function beam(spans: Spans, loads: readonly Load[], member: BeamMember): Either<MembersError, BeamAnswer> {
  if (loads.length === 0) return left({ chapter: 'members', tag: 'NothingListed', what: 'loads on the beam' });
  const E = inPsi('modulus of elasticity', member.E);
  const [I, S] = [asDerived('I', member.I), asDerived('S', member.S)];
  const { supports, guards } = placeSupports(spans);
  const placing = loads.map((load) => placeLoad(load, supports.end));
  const tested = allHold([
    ...guards,
    aboveZero('modulus of elasticity', E),
    aboveZero('I', I),
    aboveZero('S', S),
    aboveZero('allowable bending stress', member.allowable.stress),
    ...collected(placing, (each) => each.guards),
  ]);
  if (isLeft(tested)) return tested;
  const decisions: Decision[] = [...tested.right];
  const keep: Keep = (decision) => {
    decisions.push(decision);
    return decision.holds;
  };

  const placed = placing.map((each) => each.placed);
  const reactions = reactionsOf(placed, supports);
  const shear = shearDiagram(placed, supports, reactions, keep);
  const fixed = fixedStations(placed, supports, member.alsoAt ?? [], keep);
  const onBeam = allHold(collected(fixed, ({ name, at }) => between(name, at, zeroIn('in'), supports.end, 'included')));
  if (isLeft(onBeam)) return onBeam;
  decisions.push(...onBeam.right);
  const places = zeroShear(fixed, shear, placed, keep).reduce<readonly Station[]>(
    (list, next) => insert(list, next, keep),
    fixed,
  );
  const deflect = elasticCurve(placed, supports, reactions, result('stiffness', times(E, I)));
  const stations = places.map(
    (station): BeamStation => ({
      name: station.name,
      at: station.at,
      shearLeft: shear(station, 'left'),
      shearRight: shear(station, 'right'),
      moment: momentAt(station.name, station.at, placed, supports, reactions),
      deflection: station.held === true ? atSupport : deflect(station.name, station.at),
    }),
  );
  const sizes = stations.map(({ name, moment }) => ({
    name,
    size: greatestOf([moment, minus(zeroIn('lbf*in'), moment)]),
  }));
  const greatest = greatestOf(
    'greatest moment',
    sizes.map(({ size }) => size),
  );
  return right({
    reactions,
    stations,
    greatestMoment: {
      moment: greatest,
      at: sizes.filter(({ size }) => keep(decide(size, '=', greatest))).map(({ name }) => name),
    },
    bending: bendingOf(greatest, S, member.allowable, keep),
    notes: [caution, ...holdDowns(reactions, keep)],
    decisions,
  });
}
