/** The assessment as a person at the yard reads it: 80 columns of text, our own layout, cautions at the end. */
import type { Assessment } from '../assessment/index.js';
import type { Check, Note } from '../ratings/index.js';
import { compare, lb, showBrief } from '../units/index.js';
import {
  attitudeLines,
  buildLines,
  gearLines,
  placeLines,
  ruleLines,
  scaleLines,
  towLines,
} from './report-sections.js';
import {
  bare,
  capacityInPrint,
  entry,
  folded,
  loadInPrint,
  pressureInPrint,
  remark,
  row,
  section,
  shareInPrint,
  usedInPrint,
  width,
} from './text-layout.js';

/** The usual cautions; every report ends with them. */
export const cautions: readonly string[] = [
  'Ratings are what the labels, moldings and stampings say. No figure here replaces one, and the lowest-rated part governs.',
  'Weigh the loaded combination and the tongue before the road; stated and built-up weights drift.',
  'A static reckoning: road loads, wear, corrosion, fatigue and repairs are outside it. No safe speed follows from it.',
  'State and local rules on brakes, chains, licences and registration vary: ask the authority that enforces them.',
  'Structural changes and re-ratings belong to the maker, a registered alterer or a licensed engineer.',
];

const columns = [9, 9, 9, 7, 10] as const;
const firstColumn = 36;

function checkRow(check: Check, tightest: boolean): string {
  // A load below zero uses nothing of its limit, and is not well either.
  const lifts = compare(check.load.value, lb(0)) < 0;
  const well = lifts ? 'LIFT' : '  ok';
  const name = `${check.verdict === 'over' ? 'OVER' : well}${tightest ? '* ' : '  '}${check.what}`;
  const limitAndLoad = [
    bare(loadInPrint(check.load.value)),
    bare(capacityInPrint(check.limit.value)),
    bare(capacityInPrint(check.reserve.value)),
  ];
  return row(
    name,
    [...limitAndLoad, lifts ? '-' : usedInPrint(check.used.value), check.reserve.why.basis],
    firstColumn,
    columns,
  );
}

function checkLines({ checks, tightest }: Assessment): readonly string[] {
  if (checks.length === 0) return [];
  return [
    row('', ['load lb', 'limit lb', 'left lb', 'used', 'rests on'], firstColumn, columns),
    ...checks.map((check) => checkRow(check, tightest.includes(check))),
    `  * closest to its limit${tightest.length > 1 ? ' (they tie)' : ''}`,
  ];
}

function weightLines({ weights: weighed, axleLoads, advice, pressures }: Assessment): readonly string[] {
  const { curb, gross, balance } = weighed;
  return [
    ...(curb ? [entry('trailer, empty', loadInPrint(curb.value), curb.why.basis)] : []),
    ...(gross ? [entry('gross weight', loadInPrint(gross.value), gross.why.basis)] : []),
    ...(balance
      ? [entry('tongue load', loadInPrint(balance.tongue.value), `${shareInPrint(balance.tongueShare.value)} of gross`)]
      : []),
    ...axleLoads.map(({ of, load }) => entry(`${of} load`, loadInPrint(load.value))),
    ...pressures.map(({ of, needed }) =>
      entry(
        `${of} tires need, cold`,
        pressureInPrint(needed.pressure.value),
        `good for ${capacityInPrint(needed.carries.value)}`,
      ),
    ),
    ...(pressures.length > 0
      ? [
          remark(
            'Tires run at the cold pressure of the placard; the printed rows say only what would be too little for the heaviest tire load here.',
          ),
        ]
      : []),
    ...(advice
      ? [
          remark(
            `Tongue is ${advice.verdict === 'inside' ? 'inside' : `too ${advice.verdict} for`} the guideline of ${shareInPrint(advice.guideline.low.value)} to ${shareInPrint(advice.guideline.high.value)} (${loadInPrint(advice.least.value)} to ${capacityInPrint(advice.most.value)}; ${advice.guideline.source.title}).`,
          ),
        ]
      : []),
  ];
}

function payloadLines({ payload: carry }: Assessment): readonly string[] {
  if (carry === undefined) return [];
  const { payload, claim, share } = carry;
  const shares = [share.low, share.high].map(({ value }) => shareInPrint(value));
  const names = payload.governed.governing.map(({ name }) => name).join(' and ');
  return [
    ...payload.governed.limits.map(({ name, limit }) => entry(`by ${name}`, capacityInPrint(limit.value))),
    entry('payload, the least of these', capacityInPrint(payload.most.value), `set by ${names}`),
    remark(
      `Reckoned with ${shares[0] === shares[1] ? shares[0] : `${shares[0]} to ${shares[1]}`} of the gross weight on the tongue.`,
    ),
    ...(claim
      ? [
          remark(
            `Adding the tongue load to the payload on the rating gives a claim of ${loadInPrint(claim.claimed.value)}; loaded, the gross weight would be ${loadInPrint(claim.gross.value)} against a GVWR of ${capacityInPrint(claim.check.limit.value)}: ${claim.check.verdict === 'over' ? 'over. The tongue load is part of the gross weight.' : 'within.'}`,
          ),
        ]
      : []),
  ];
}

function partLines({ partChecks }: Assessment): readonly string[] {
  if (partChecks.length === 0) return [];
  return [
    row('', ['GAWR lb', 'bears lb', 'left lb', 'used', 'rests on'], firstColumn, columns),
    ...partChecks.map((check) => checkRow(check, false)),
  ];
}

/** A note and the figures it speaks of, each by its name. */
const noteText = ({ says, figures = [] }: Note): string =>
  figures.length === 0
    ? says
    : `${says} (${figures.map(({ value, why }) => `${why.symbol === undefined ? '' : `${why.symbol} `}${showBrief(value, 1)}`).join('; ')})`;

function answer({ checks: loads, partChecks, lifted, attention, notChecked }: Assessment): string {
  const checks = [...loads, ...partChecks];
  const over = checks.filter(({ verdict }) => verdict === 'over').length;
  const lift = lifted.length === 0 ? '' : ` Lifted: ${lifted.map(({ what }) => what).join(', ')}.`;
  const open =
    notChecked.length === 0
      ? ''
      : ` ${notChecked.length} question${notChecked.length === 1 ? ' is' : 's are'} open: see below.`;
  const besides = attention.length === 0 ? '' : ` Not well besides: ${attention.map(noteText).join('; ')}.`;
  if (checks.length === 0) return `Nothing could be checked.${besides}${open}`;
  const allWithin = lift === '' && attention.length === 0;
  const noneOver = allWithin ? `All ${checks.length} checks are within their limits.` : 'No check is over.';
  const told = over > 0 ? `${over} of ${checks.length} checks ${over === 1 ? 'is' : 'are'} over.` : noneOver;
  return `${told}${lift}${besides}${open}`;
}

/**
 * What does the assessment say, in words a buyer can read?
 *
 * Loads are rounded up and capacities down to whole pounds, shares of a limit up to a tenth of a percent; in print only.
 *
 * Not a certificate, and nothing to read figures back from: programs read the assessment.
 *
 * @param assessment from `assess`
 * @returns text of at most 80 columns
 * @example report(orThrow(assess(spec))).includes('WHAT IT MAY CARRY') // true
 * @source each figure carries its own
 */
export function report(assessment: Assessment): string {
  const { spec, notes, notChecked } = assessment;
  return [
    folded(spec.name ?? spec.trailer.name ?? 'Trailer', width, '  '),
    remark(answer(assessment)),
    ...section('WEIGHTS', weightLines(assessment)),
    ...section('CHECKS', checkLines(assessment)),
    ...section('PARTS AGAINST THE LABEL', partLines(assessment)),
    ...section('WHAT IT MAY CARRY', payloadLines(assessment)),
    ...section('BUILD AND DECK LENGTH', buildLines(assessment)),
    ...section('THE TOW VEHICLE', towLines(assessment)),
    ...section(
      `WHERE THE MACHINE MAY STAND${assessment.placement.machine === undefined ? '' : `: ${assessment.placement.machine}`}`,
      placeLines(assessment),
    ),
    ...section('JACK, LOADING, TIEDOWNS', gearLines(assessment)),
    ...section('HOW IT STANDS', attitudeLines(assessment)),
    ...section('SCALE TICKETS', scaleLines(assessment)),
    ...section('PUBLISHED LINES', ruleLines(assessment)),
    ...section(
      'NOTES',
      notes.map((each) => remark(noteText(each))),
    ),
    ...section(
      'NOT CHECKED',
      notChecked.map(({ what, missing }) => remark(`${what}: ${missing} not given`)),
    ),
    ...section('CAUTIONS', cautions.map(remark)),
    '',
  ].join('\n');
}
