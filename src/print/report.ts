/** The assessment as a person at the yard reads it: the first page, then the tables; 80 columns of text, cautions at the end. */
import type { Assessment } from '../assessment/index.js';
import type { ReaderUnits } from '../units/index.js';
import { collected } from '../units/internal.js';
import { briefLines } from './brief.js';
import type { BriefExtras } from './brief-data.js';
import { briefOf } from './brief-of.js';
import { noteText } from './brief-words.js';
import { cautions } from './cautions.js';
import { figuresIn } from './reader-units.js';
import { buildLines, scaleLines } from './sections/build-and-scale.js';
import { checkTable } from './sections/check-table.js';
import { type RulesInFull, ruleLines } from './sections/rules.js';
import { gearLines, stanceLines } from './sections/stance-and-gear.js';
import { placeLines, towLines } from './sections/tow-and-place.js';
import { payloadLines, weightLines } from './sections/weights-and-payload.js';
import { remark, section } from './text-layout.js';

/** What a report may be asked for. */
export interface ReportOptions extends BriefExtras {
  /** Feet, inches and pounds (`us`, the default), or metres, millimetres and kilograms. */
  readonly units?: ReaderUnits;
  /** Published rules in full: those that apply or are within a twentieth of their line (`near`, the default), or all. */
  readonly rules?: RulesInFull;
}

/**
 * What does the assessment say, in words a buyer can read?
 *
 * The first page of `brief`, then the tables behind it. Loads are rounded up and capacities down, to whole pounds or
 * kilograms, shares of a limit up to a tenth of a percent; in print only. A published rule keeps the unit it is printed in.
 *
 * Not a certificate. Programs read the assessment, not this text.
 *
 * @param assessment from `assess`
 * @param options the reader's units; which rules are printed in full; remedies and sureness where they were asked for
 * @returns text of at most 80 columns
 * @example report(orThrow(assess(spec)), { units: 'metric' }).includes('WHAT IT MAY CARRY') // true
 * @source each figure carries its own
 */
export function report(assessment: Assessment, { units, rules = 'near', ...extras }: ReportOptions = {}): string {
  const { checks, partChecks, tightest, notes, notChecked, placement } = assessment;
  const p = figuresIn(units);
  return [
    ...briefLines(briefOf(assessment, extras), p),
    ...section('WEIGHTS', weightLines(assessment, p)),
    ...section('CHECKS', checkTable(checks, tightest, p)),
    ...section('AXLE PARTS AND BRAKES AGAINST GAWR', checkTable(partChecks, [], p, ['GAWR', 'bears'])),
    ...section('WHAT IT MAY CARRY', payloadLines(assessment, p)),
    ...section('BUILD AND DECK LENGTH', buildLines(assessment, p)),
    ...section('THE TOW VEHICLE', towLines(assessment, p)),
    ...collected(placement.pieces, (piece) => section(`WHERE IT MAY STAND: ${piece.name}`, placeLines(piece, p))),
    ...section('JACK, LOADING, TIEDOWNS', gearLines(assessment, p)),
    ...section('SIDE TO SIDE, LEVEL, YAW', stanceLines(assessment, p)),
    ...section('SCALE TICKETS', scaleLines(assessment, p)),
    ...section('PUBLISHED RULES', ruleLines(assessment, p, rules)),
    ...section(
      'NOTES',
      notes.map((each) => remark(noteText(each, p))),
    ),
    ...section(
      'NOT CHECKED',
      notChecked.map(({ what, missing }) => remark(`${what}: ${missing} not given`)),
    ),
    ...section('CAUTIONS', cautions.map(remark)),
    '',
  ].join('\n');
}
