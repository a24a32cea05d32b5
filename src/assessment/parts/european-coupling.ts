/** What a European plate asks: D, Dc and V of the coupling against the permissible masses, and whose practice the tongue band is. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type { AxleGroup } from '../../axles/index.js';
import { type Check, checkId, note } from '../../ratings/index.js';
import type { DecodedSpec, DecodedTrailer } from '../../spec/index.js';
import { europeanCoupling, type TowingError } from '../../towing/index.js';
import { type Derived, inInches, minus, nodesOf } from '../../trace/index.js';
import { dimensionOf, type Unit } from '../../units/index.js';
import { frozen } from '../../units/internal.js';
import { emptyPart, type Part } from './part-of-answer.js';
import { ungrouped, wantingOf } from './wanting-keys.js';

/** Checks of permissible masses: they are listed with the parts, not with the loads. */
export interface CouplingPart extends Part {
  readonly againstLabel: readonly Check[];
}

const noPlate: CouplingPart = frozen({ ...emptyPart, againstLabel: [] });

const takenWhole = note(
  'CAsGvwr',
  'For Dc and V the axles were taken to carry the whole permissible mass of the trailer: the coupling carries part of it.',
);

/** Asks the values that the plate of the coupling prints. */
export function couplingPart(spec: DecodedSpec, group: AxleGroup | undefined): Either<TowingError, CouplingPart> {
  const { trailer, tow } = spec;
  const { coupler, gvwr, deck } = trailer;
  const [d, dc, v] = [coupler?.d, coupler?.dc, coupler?.v];
  if (d === undefined && dc === undefined && v === undefined) return right(noPlate);
  const found = europeanCoupling({
    plate: { d, dc, v },
    towVehicle: tow?.gvwr,
    trailer: gvwr,
    onAxles: gvwr,
    deckLength: deck && minus(inInches('deck rear end', deck.rear), inInches('deck front end', deck.front)),
    drawbar: group?.at,
  });
  if (isLeft(found)) return left({ ...found.left, path: found.left.path ?? 'trailer.coupler' });
  const { checks, notes, notChecked, decisions } = found.right;
  return right({
    againstLabel: checks,
    ...emptyPart,
    notes: dc === undefined && v === undefined ? notes : [...notes, takenWhole],
    notChecked: notChecked.map(({ kind, what, missing }) => ({
      id: checkId(kind),
      what,
      missing: missing.join(', '),
      paths: [
        ...wantingOf('trailer', trailer, 'gvwr'),
        ...(kind === 'coupling V'
          ? [...wantingOf('trailer', trailer, 'deck'), ...ungrouped(spec)]
          : wantingOf('tow', tow, 'gvwr')),
      ],
    })),
    decisions,
  });
}

const metric: ReadonlySet<Unit> = new Set(['kg', 't']);

/** Whether this figure was written in kilograms. */
const inKilograms = (figure: Derived<'lb'> | undefined): boolean =>
  figure !== undefined &&
  nodesOf([figure.why]).some(
    ({ kind, value }) => kind === 'given' && dimensionOf(value.unit) === 'mass' && metric.has(value.unit),
  );

/**
 * The usual band of tongue shares depends on the country. For a ball trailer whose label or coupler is in kilograms, without a
 * country and without a band of its own, a note asks for it: the American band is not used silently.
 */
export function practicePart({ hitch, practice, guideline, gvwr, coupler }: DecodedTrailer): Part {
  const open = hitch === 'ball' && practice === undefined && guideline === undefined;
  if (!open || !(inKilograms(gvwr) || inKilograms(coupler?.tongue))) return emptyPart;
  const says =
    'The tongue band is that of the US and Canada, for want of the place: European nose weights are a fraction of it. Say trailer.practice.';
  return {
    ...emptyPart,
    notes: [{ ...note('PracticeNotTold', says), paths: ['trailer.practice'] }],
    notChecked: [
      {
        id: 'tongue-practice',
        what: 'tongue band of the place',
        missing: 'whose practice it is (trailer.practice)',
        paths: ['trailer.practice'],
      },
    ],
  };
}
