/** What is wrong with a question over whole answers that types did not check: one form a question. */
import type { Form } from '../units/internal.js';
import { aFigure, aNumber, anything, aRecord, aText, listOf, recordOf } from '../units/internal.js';
import type { NothingToAnswer, UnusableFigure } from './errors.js';

const weight = aFigure('mass');
const length = aFigure('length');
const member = { span: length };

/** The record of each question; a spec in it is read by the reader of specs. */
export const questionForms = {
  specs: recordOf(anything),
  levers: listOf(aText),
  assessment: aRecord({
    spec: aRecord({}),
    checks: listOf(anything),
    partChecks: listOf(anything),
    uplift: aRecord({}),
  }),
  tolerances: aRecord(
    {},
    {
      byBasis: listOf(aRecord({ basis: aText, dimension: aText, amount: aText, source: aText })),
      byPath: recordOf(aText),
    },
  ),
  stock: aRecord(
    { stock: recordOf(anything), cargo: listOf(anything) },
    { want: aRecord({}, { payload: weight, reserve: weight, lines: listOf(aText) }) },
  ),
  duty: aRecord(
    { trips: listOf(aRecord({ name: aText, cargo: listOf(anything), count: aNumber })) },
    { most: aNumber },
  ),
  axlePlace: aRecord(
    { moving: listOf(aText) },
    {
      decks: listOf(aText),
      machines: listOf(aRecord({ name: aText, weight, behindDeckFront: length })),
    },
  ),
  frame: aRecord(
    { rail: aRecord({ section: aText, count: aNumber, end: length }), allowable: aRecord({}) },
    {
      crossmember: aRecord({ section: aText, ...member }),
      board: aRecord({ I: anything, S: anything, E: aFigure('pressure'), allowable: aRecord({}), ...member }),
      wheel: weight,
    },
  ),
  sheet: aRecord({}, { axles: listOf(anything), tires: aRecord({}), tongueShareMost: aText }),
} as const satisfies Readonly<Record<string, Form>>;

/** The first thing in a question that is not what its type says; nothing when all is. */
export function questionRefusal(name: keyof typeof questionForms, asked: unknown): UnusableFigure | undefined {
  const misfit = questionForms[name](asked, name === 'levers' ? name : '');
  return (
    misfit && { chapter: 'choose', tag: 'UnusableFigure', ...misfit, path: misfit.path === '' ? name : misfit.path }
  );
}

/** The error of a question that lacks its input. */
export const nothingToAnswer = (question: string, missing: string, path?: string): NothingToAnswer => ({
  chapter: 'choose',
  tag: 'NothingToAnswer',
  question,
  missing,
  ...(path !== undefined && { path }),
});
