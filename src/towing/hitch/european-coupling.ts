/** The values on the plate of a European coupling: D, Dc, V and S, against the masses of the combination. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { note } from '../../ratings/index.js';
import { type AnyWeight, constant, type Derived, decide, inInches, inPounds } from '../../trace/index.js';
import { kg } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { ask, gathered, type LoadOrMissing } from '../checks/checks-or-missing.js';
import type { TowingError } from '../errors.js';
import { allAboveZero } from '../figures.js';
import type { CouplingFindings, CouplingQuestion } from './coupling-plate.js';
import { asWeight, bounceOf, pull, regulation } from './coupling-values.js';

const light = constant(kg(3500));

const needing = (load: Derived<'lb'> | undefined, missing: string): LoadOrMissing => load ?? { missing: [missing] };

/** A value that is not marked is not asked. */
const asked = <V, A>(value: V | undefined, question: (value: V) => A): readonly A[] =>
  value === undefined ? [] : [question(value)];

/**
 * Is this coupling marked for this combination?
 *
 * `D = g T R / (T + R)`, `Dc = g T C / (T + C)`, `V = a (X / L)^2 C` with `(X / L)^2` at least 1, a = 1.8 m/s2 for air
 * springs and 2.4 m/s2 for others; S is compared with the tongue load. T, R and C are permissible masses, X and L metres of
 * the same trailer. Forces are compared as the weights that press with them.
 *
 * V is asked for centre-axle trailers above 3.5 t only. Not for drawbars, turntables or fifth wheels, and no approval: the
 * plate, the maker and the regulation in force decide.
 *
 * @param question what the plate prints; masses from the plates of vehicle and trailer; tongue load by scale, deck and drawbar by tape
 * @returns a check for each value that is marked, in lb, and what is missing for it; Left `NotAboveZero`
 * @example orThrow(europeanCoupling({ plate: { d: quantity('17.2', 'kN') }, towVehicle: kg(3500), trailer: kg(3500) })).checks[0].verdict // within
 * @source UN Regulation No. 55, from memory: to be verified
 */
export function europeanCoupling(question: CouplingQuestion): Either<TowingError, CouplingFindings> {
  const { plate, suspension = 'other' } = question;
  const massOf = (symbol: string, mass: AnyWeight | undefined): Derived<'lb'> | undefined =>
    mass && inPounds(symbol, mass, 'label');
  const tow = massOf('T, tow vehicle', question.towVehicle);
  const trailer = massOf('R, trailer', question.trailer);
  const onAxles = massOf('C, on the axles', question.onAxles);
  const tongue = question.tongue && inPounds('tongue load', question.tongue);
  const deck = question.deckLength && inInches('X, loading area', question.deckLength);
  const drawbar = question.drawbar && inInches('L, coupling to axles', question.drawbar);
  const called: readonly (readonly [string, Derived<'lb' | 'in'> | undefined])[] = [
    ['T', tow],
    ['R', trailer],
    ['C', onAxles],
    ['L', drawbar],
  ];
  const above = allAboveZero(
    collected(called, ([what, figure]) => (figure === undefined ? [] : [[what, figure] as const])),
  );
  if (isLeft(above)) return above;
  const heavy = onAxles && decide(onAxles, '>', inPounds('3.5 t', light));
  const { d, dc, v, s } = plate;
  const printed = { clause: regulation };
  const found = gathered([
    ...asked(d, (value) =>
      ask(
        'coupling D',
        'drawbar pull',
        asWeight('D on the plate', value),
        needing(tow && trailer && pull('D needed', tow, trailer), 'permissible masses of tow vehicle and trailer'),
        printed,
      ),
    ),
    ...asked(dc, (value) =>
      ask(
        'coupling Dc',
        'drawbar pull',
        asWeight('Dc on the plate', value),
        needing(
          tow && onAxles && pull('Dc needed', tow, onAxles),
          'permissible mass of the tow vehicle, and what the trailer axles carry',
        ),
        printed,
      ),
    ),
    ...asked(heavy?.holds === false ? undefined : v, (value) =>
      ask(
        'coupling V',
        'drawbar bounce',
        asWeight('V on the plate', value),
        needing(
          onAxles && deck && drawbar && bounceOf(onAxles, deck, drawbar, suspension),
          'what the trailer axles carry, the length of the loading area, coupling to axles',
        ),
        printed,
      ),
    ),
    ...asked(s, (value) =>
      ask('coupling S', 'tongue', inPounds('S on the plate', value, 'label'), needing(tongue, 'tongue load'), printed),
    ),
  ]);
  if (isLeft(found)) return found;
  const notes =
    v !== undefined && heavy?.holds === false
      ? [
          note('VNotAsked', 'V is asked for centre-axle trailers above 3.5 t only: this one is not above.', [
            onAxles as Derived<'lb'>,
          ]),
        ]
      : [];
  return right({
    ...found.right,
    notes,
    decisions: [...above.right, ...(heavy ? [heavy] : []), ...found.right.decisions],
  });
}
