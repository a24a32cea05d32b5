/** Remedies and sureness on the first page: what `choose` found, in its order, and the page still fits. */
import { describe, expect, it } from 'vitest';
import { assessJson } from '../../src/assessment/index.js';
import { remedies, sureness } from '../../src/choose/index.js';
import { brief, briefExtras } from '../../src/print/index.js';
import type { SpecInput } from '../../src/spec/index.js';
import { rightOf } from '../helpers/either.js';
import { rigs } from '../helpers/rigs.js';

const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('what choose found out', () => {
  it.each(rigs.filter(({ file }) => /^0[13]/.test(file)))('stands on the first page of $file', ({ spec }) => {
    const assessment = rightOf(assessJson(spec));
    const [found, sure] = [rightOf(remedies(spec as SpecInput)), rightOf(sureness(assessment))];
    const extras = briefExtras({ remedies: found, sureness: sure });
    const page = brief(assessment, extras);
    expect(page.split('\n').length).toBeLessThanOrEqual(20);
    const first = found.anyhow[0] ?? found.single[0]?.steps[0] ?? found.together[0]?.steps[0];
    expect(first).toBeDefined();
    expect(flat(page)).toContain(`To put right ${first?.says.slice(0, 30)}`);
    expect(flat(page)).toMatch(/How sure (within for sure|over for sure|not sure: \w)/);
  });
  it('says nothing where nothing was asked', () => expect(briefExtras({})).toEqual({}));
});
