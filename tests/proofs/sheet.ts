/** Sheets that agree raise no alarm; a planted error above its rounding is found, with the planted figure in every set. */
import fc from 'fast-check';
import { auditSheet, type Sheet, type SheetAudit } from '../../src/choose/index.js';
import { rightOf } from '../helpers/either.js';
import type { Proof } from './proof.js';
import { agreeing, planted } from './sheets.js';

/** The sheet without some of its figures. An axle is let go by a rounding that lets it be anything. */
function without(sheet: Sheet, paths: readonly string[]): Sheet {
  const axles = sheet.axles?.map((axle, i) =>
    paths.includes(`axles.${i}`) ? { text: '20000 lb', rounding: '40000 lb' } : axle,
  );
  const kept = Object.entries({ ...sheet, axles }).filter(
    ([key]) => !paths.includes(key) && !(key === 'tires' && paths.includes('tires.each')),
  );
  return Object.fromEntries(kept) as Sheet;
}

const pathsOf = ({ conflicts }: SheetAudit): readonly (readonly string[])[] =>
  conflicts.map(({ figures }) => figures.map(({ path }) => path));

const agrees = (sheet: Sheet): boolean => {
  const audit = auditSheet(sheet);
  return audit._tag === 'Left' || audit.right.conflicts.length === 0;
};

/** What is wrong with the audit of a sheet with one planted figure. */
function faultOf(path: string, sheet: Sheet): string | undefined {
  const audit = rightOf(auditSheet(sheet));
  const sets = pathsOf(audit);
  if (sets.length === 0) return 'not found';
  if (sets.some((set) => !set.includes(path))) return 'a set without the planted figure';
  if (!agrees(without(sheet, [path]))) return 'without it the sheet still disagrees';
  const all = audit.figures.map((figure) => figure.path);
  const isSmallest = (set: readonly string[]): boolean =>
    set.every((member) =>
      agrees(
        without(
          sheet,
          all.filter((one) => one === member || !set.includes(one)),
        ),
      ),
    );
  return sets.every(isSmallest) ? undefined : 'a set that is not the smallest';
}

/** `sheets` that agree, and as many with one planted error. */
export function proveSheets(sheets: number, seed: number): Proof {
  const alarms = fc
    .sample(agreeing, { numRuns: sheets, seed })
    .filter((sheet) => !agrees(sheet))
    .map((sheet) => `alarm: ${JSON.stringify(sheet)}`);
  const faults = fc.sample(planted, { numRuns: sheets, seed: seed + 1 }).flatMap(({ path, sheet }) => {
    const fault = faultOf(path, sheet);
    return fault === undefined ? [] : [`${path}: ${fault}: ${JSON.stringify(sheet)}`];
  });
  return {
    figures: {
      'sheets that agree': sheets,
      'of them without alarm': sheets - alarms.length,
      'sheets with one error': sheets,
      'of them found, smallest sets only': sheets - faults.length,
    },
    against: [...alarms, ...faults],
  };
}
