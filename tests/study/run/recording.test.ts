/** A row's figures come from a program: the recorded working of a study doubts no more of them than `assess` does of the row's own spec. */

import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson } from '../../../src/assessment/index.js';
import { alternatives, levels, type Measure } from '../../../src/study/index.js';
import { constant } from '../../../src/trace/index.js';
import { ratio } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';
import { changed, tiltDeck } from '../../helpers/specs.js';
import { type StudyPlan, study } from '../../helpers/untyped.js';

const ours = ['GvwrHardToBelieve', 'MachineHardToBelieve', 'ReadWithDecimals'];
const tags = ({ attention }: Assessment): readonly string[] =>
  attention.map(({ tag }) => tag).filter((tag) => ours.includes(tag));
const counted: Measure = (assessment) => ({ remarks: constant(ratio(tags(assessment).length)) });

const base = [
  ['trailer.gvwr', '400 lb'],
  ['cargo.0.weight', '14.100 kg'],
  ['tow.receiver.tongue', '900.000 kg'],
].reduce<Record<string, unknown>>((spec, [path, text]) => changed(spec, path as string, text), tiltDeck());

const plans: Readonly<Record<string, StudyPlan['vary']>> = {
  'the doubted GVWR': { 'trailer.gvwr': levels('300 lb', '499 lb', '500 lb', '14,000 lb') },
  'the doubted weight': { 'cargo.0.weight': levels('14.100 kg', '20 kg', '3,000 kg') },
  'the doubted rating': { 'tow.receiver.tongue': levels('900.000 kg', '800 kg') },
  'all of them': {
    'trailer.gvwr': levels('499 lb', '14,000 lb'),
    'cargo.0.weight': levels('20 kg', '3,000 kg'),
    which: alternatives({ now: {}, other: { 'trailer.gvwr': '300 lb', 'cargo.0.weight': '9.500 kg' } }),
  },
};

describe('a study of figures that are hard to believe', () => {
  it('has something to doubt', () => expect(tags(rightOf(assessJson(base)))).toEqual([...ours, 'ReadWithDecimals']));
  it.each(Object.entries(plans))('agrees row by row: %s', (_, vary) => {
    const made = rightOf(study({ base, vary, design: { kind: 'grid' }, measure: counted }));
    const rows = [...made.rows()];
    expect(rows.length).toBe(made.count);
    for (const [i, row] of rows.entries()) {
      const own = rightOf(assessJson(rightOf(made.specAt(i))));
      expect(row.answered && [row.figures['remarks'], row.verdict]).toEqual([tags(own).length, own.verdict]);
    }
  });
});
