/** Which published lines the combination of a spec crosses. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { federalRules, type Facts, type Finding, readLocalRules, type RulesError, screen } from '../rules/index.js';
import { type Derived, sum } from '../trace/index.js';
import { inPounds } from '../load/index.js';
import type { Spec } from './codec.js';
import type { Weighed } from './weigh.js';

export interface LinesPart {
  readonly findings: readonly Finding[];
}

/** The facts of a spec, in the names the rules use. What the spec does not say stays out. */
export function factsOf(spec: Spec, weighed: Weighed): Facts {
  const { trailer, tow, cargo = [], rules } = spec;
  const truck = tow?.front === undefined || tow.rear === undefined ? undefined
    : sum('tow vehicle gross', [inPounds('tow vehicle front axle', tow.front), inPounds('tow vehicle rear axle', tow.rear)]);
  const heaviest = cargo.length === 0 ? undefined : cargo.reduce((a, b) => (inPounds('', b.weight).value.value.gt(inPounds('', a.weight).value.value) ? b : a)).weight;
  const axleWeights: Derived<'lb'> | undefined = weighed.balance?.axleLoad;
  return {
    ...(trailer.gvwr && { 'trailer GVWR': trailer.gvwr }), ...(weighed.gross && { 'trailer gross': weighed.gross }), ...(weighed.curb && { 'trailer unloaded': weighed.curb }),
    ...(tow?.gvwr && { 'tow vehicle GVWR': tow.gvwr }), ...(truck && { 'tow vehicle gross': truck, 'towing axle weights': truck }),
    ...(weighed.balance && { 'weight on tow vehicle': weighed.balance.tongue }), ...(axleWeights && { 'trailer axle weights': axleWeights }),
    ...(heaviest && { 'cargo article weight': heaviest }),
    ...(trailer.width && { 'overall width': trailer.width }), ...(trailer.length && { 'overall length': trailer.length }),
    ...(rules?.commercial !== undefined && { commercial: rules.commercial }), ...(rules?.interstate !== undefined && { interstate: rules.interstate }),
    ...(rules?.actualWithinRatings !== undefined && { 'actual weights within ratings': rules.actualWithinRatings }),
    ...(rules?.labelGcwr !== undefined && { 'label GCWR': rules.labelGcwr }),
    'full trailer': false,
  };
}

/** Screens the spec against the federal lines and whatever local rules it brings. Their decisions stay with the findings: a study's rows carry no findings. */
export function linesPart(spec: Spec, weighed: Weighed): Either<RulesError, LinesPart> {
  const local = spec.rules?.local === undefined ? undefined : readLocalRules(spec.rules.local);
  if (local !== undefined && isLeft(local)) return left({ ...local.left, path: `rules.local${local.left.path === undefined ? '' : `.${local.left.path}`}` });
  const screened = screen(factsOf(spec, weighed), [...federalRules, ...(local?.right.rules ?? [])]);
  return isLeft(screened) ? screened : right({ findings: screened.right.findings });
}
