/** Axles, wheels and tires of a random spec. */
import type { Plan } from './plan.js';
import { ratingFor } from './plan.js';

/** Sizes with a printed load near half of an axle's rating, and pressures they are run at. */
const singles = {
  small: ['ST205/75R15 LRC', 'ST205/75R15 LRD', 'ST225/75R15 LRC', 'P205/75R15 97S', 'ST175/80R13 LRC'],
  middle: ['ST225/75R15 LRD', 'ST225/75R15 LRE', 'ST225/75R15 117/112L', 'LT235/85R16 LRD'],
  large: ['ST235/80R16 LRE', 'ST235/80R16 LRE 124/120L', 'LT235/85R16 LRE', 'ST235/85R16 LRF', 'ST235/80R16 LRG'],
} as const;
const duals = ['ST235/80R16 LRE', 'LT235/85R16 LRE', '215/75R17.5 LRH', 'LT235/85R16 120/116Q LRE'] as const;

function designationOf({ chance, dual, gawr }: Plan): string {
  if (dual) return chance.pick(duals);
  if (gawr < 4500) return chance.pick(singles.small);
  return chance.pick(gawr < 6500 ? singles.middle : singles.large);
}

/** A rating of a part, seldom below the share of the GAWR that it must bear: a label above its parts is refused. */
function partRating(plan: Plan, needed: number, step: number): number {
  const { chance, ties } = plan;
  const found = ratingFor(plan, needed, step);
  const least = Math.ceil(needed) + (ties ? 0 : 10); // kilograms are rounded
  return chance.happens(1) ? found : Math.max(found, least);
}

function tiresOf(plan: Plan, designation: string): object {
  const { chance, write, dual, gawr } = plan;
  const each = partRating(plan, gawr / (dual ? 4 : 2), 10);
  return {
    designation,
    count: dual ? 4 : 2,
    fitment: dual ? 'dual' : 'single',
    ...chance.maybe(plan.detail, 'molded', () => ({
      single: write.weight(dual ? each + 300 : each),
      ...(dual ? { dual: write.weight(each) } : {}),
      ...chance.maybe(70, 'pressure', () => chance.pick(['65 psi', '80 psi', '80 psi', '110 psi'])),
    })),
    ...chance.maybe(plan.detail, 'pressure', () => chance.pick(['50 psi', '65 psi', '80 psi', '80 psi', '550 kPa'])),
  };
}

function axleOf(plan: Plan, designation: string): object {
  const { chance, write, gawr, dual, detail } = plan;
  const tires = chance.maybe(90, 'tires', () => tiresOf(plan, designation));
  // A table load is seldom what the label was made by: without a molded load the label is left out more often.
  const labelled = 'tires' in tires && !('molded' in tires.tires) ? detail / 2 : detail;
  const part = (percent: number, key: string): object =>
    chance.maybe(percent, key, () => write.weight(partRating(plan, gawr, 100)));
  const brakes = chance.maybe(detail * 0.6, 'brakes', () => {
    const each = write.weight(Math.round(gawr / 2));
    return { left: each, right: each };
  });
  return {
    ...chance.maybe(labelled, 'gawr', () => write.weight(gawr)),
    ...part(90, 'beam'),
    ...part(detail, 'springs'),
    ...part(detail * 0.8, 'hubs'),
    ...chance.maybe(detail, 'wheels', () => ({
      each: write.weight(partRating(plan, gawr / (dual ? 4 : 2), 50)),
      count: dual ? 4 : 2,
    })),
    ...tires,
    ...brakes,
  };
}

/** All axles from the front: mostly alike, as they are built. */
export function axlesOf(plan: Plan): readonly object[] {
  const { chance, write, axles, first, spread } = plan;
  const designation = designationOf(plan);
  const alike = chance.happens(75);
  const placed = chance.happens(95);
  const model = axleOf(plan, designation);
  return Array.from({ length: axles }, (_, i) => ({
    ...(placed ? { at: write.length(first + i * spread) } : {}),
    ...(alike ? model : axleOf(plan, chance.happens(85) ? designation : designationOf(plan))),
  }));
}

/** How the axles share, with spring rates where they are independent. */
export function sharingOf(plan: Plan, axles: readonly object[]): { sharing?: string; axles: readonly object[] } {
  const { chance } = plan;
  if (axles.length === 1) return { axles };
  if (chance.happens(70)) return { sharing: 'equalised', axles };
  if (chance.happens(10)) return { axles };
  const rates = chance.happens(axles.length > 2 ? 90 : 60);
  const rate = `${chance.whole(1200, 3000, 100)} lb/in`;
  return { sharing: 'independent', axles: rates ? axles.map((axle) => ({ ...axle, rate })) : axles };
}
