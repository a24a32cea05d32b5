/** The facts of a spec, in the names that the published rules use. */
import type { AxleGroupFinding, Facts } from '../../rules/index.js';
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import { type Derived, greatestOf, inPounds, leastOf, sum } from '../../trace/index.js';
import { signOfFigure } from '../../units/internal.js';
import { heaviestGroup } from './rig-axle-groups.js';
import type { Weighed } from './weights.js';

type CargoFacts = Pick<Facts, 'cargo article weight' | 'lightest article not tied as heavy equipment'>;
type AxleFacts = Pick<Facts, 'heaviest single axle' | 'heaviest tandem'>;

/** A weight of zero is no fact for a rule. */
const ifPressing = (figure: Derived<'lb'>): Derived<'lb'> | undefined =>
  signOfFigure(figure.value) > 0 ? figure : undefined;

const weightsOf = (pieces: readonly DecodedCargo[]): readonly Derived<'lb'>[] =>
  pieces.map(({ name, weight }) => inPounds(`${name} weight`, weight));

/** The heaviest piece, and the lightest of those that nobody ties by the section on heavy equipment. */
function cargoFacts({ cargo }: DecodedSpec): CargoFacts {
  if (cargo === undefined) return {};
  const others = cargo.filter(({ section }) => section !== 'heavy equipment');
  return {
    'cargo article weight':
      cargo.length === 0 ? 'none' : ifPressing(greatestOf('heaviest piece of cargo', weightsOf(cargo))),
    'lightest article not tied as heavy equipment':
      others.length === 0 ? 'none' : ifPressing(leastOf('lightest piece of cargo', weightsOf(others))),
  };
}

/** A truck has two axles in a spec: with one axle under the trailer there is no tandem, wherever the axles are. */
function axleFacts({ trailer, tow }: DecodedSpec, groups: readonly AxleGroupFinding[] | undefined): AxleFacts {
  if (groups === undefined) return tow !== undefined && trailer.axles.length === 1 ? { 'heaviest tandem': 'none' } : {};
  const single = heaviestGroup(groups, 'single');
  return {
    ...(single !== 'none' && { 'heaviest single axle': single }),
    'heaviest tandem': heaviestGroup(groups, 'tandem'),
  };
}

/** What was put on the trailer before its first sale: as given, else what was added to it since it was weighed. */
function addedWeight({ trailer: { curb }, rules }: DecodedSpec): Derived<'lb'> | undefined {
  const added = curb?.added ?? [];
  if (rules?.addedWeight !== undefined || added.length === 0) return rules?.addedWeight;
  return sum(
    'weight of the options',
    added.map(({ name, weight }) => inPounds(`${name} weight`, weight)),
  );
}

/** What rules may be asked with. What the spec does not say stays out. */
export function ruleFacts(
  spec: DecodedSpec,
  { gross, curb, balance }: Weighed,
  groups: readonly AxleGroupFinding[] | undefined,
): Facts {
  const { trailer, tow, rules } = spec;
  const truck =
    tow?.front === undefined || tow.rear === undefined
      ? undefined
      : ifPressing(
          sum('tow vehicle gross', [
            inPounds('tow vehicle front axle', tow.front),
            inPounds('tow vehicle rear axle', tow.rear),
          ]),
        );
  // With the axles in the air nobody can say what rests where.
  const onAxles = balance && ifPressing(balance.axleLoad);
  const chain = trailer.chains && inPounds('breaking strength of a chain', trailer.chains.each);
  return {
    'trailer GVWR': trailer.gvwr,
    'trailer gross': gross,
    'trailer unloaded': curb,
    'tow vehicle GVWR': tow?.gvwr,
    'tow vehicle gross': truck,
    'towing axle weights': truck,
    'weight on tow vehicle': onAxles && balance?.tongue,
    'trailer axle weights': onAxles,
    'safety device strength': trailer.chains?.count === 2 && chain ? sum('chains together', [chain, chain]) : chain,
    'overall width': trailer.width,
    'overall length': trailer.length,
    'added weight': addedWeight(spec),
    'path deviation': rules?.pathDeviation,
    ...cargoFacts(spec),
    ...axleFacts(spec, groups),
    commercial: rules?.commercial,
    interstate: rules?.interstate,
    'surge brakes': rules?.surgeBrakes,
    'actual weights within ratings': rules?.actualWithinRatings,
    'label GCWR': rules?.labelGcwr,
    // Part of every trailer that a spec can tell of rests on the truck: a full trailer has a front axle of its own.
    'full trailer': false,
  };
}
