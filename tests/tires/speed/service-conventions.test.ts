/** Speed symbols and the conventions of trailer tires without one. */
import { describe, expect, it } from 'vitest';
import { serviceNotes, speedInformation } from '../../../src/tires/index.js';
import { mph, show } from '../../../src/units/index.js';
import { rightOf } from '../../helpers/either.js';

const tags = ({ notes }: { notes: readonly { tag: string }[] }): string[] => notes.map(({ tag }) => tag);

describe('speed information', () => {
  it('says in every band that it is no rating, and asks for the wheel where it asks for pressure', () => {
    const at = (speed: number): string[] => tags(rightOf(speedInformation('ST205/75R15 LRD', mph(speed))));
    const always = serviceNotes.map(({ tag }) => tag);
    expect([at(65), at(66), at(75), at(76), at(86)]).toEqual([
      always,
      [...always, 'MorePressure', 'WheelLimit'],
      [...always, 'MorePressure', 'WheelLimit'],
      [...always, 'MorePressure', 'LessLoad', 'WheelLimit'],
      always,
    ]);
  });
  it('says how much the convention adds and takes off', () => {
    const { notes } = rightOf(speedInformation('ST205/75R15 LRD', mph(80)));
    const figures = (tag: string) => notes.find((each) => each.tag === tag)?.figures?.map(({ value }) => show(value));
    expect([figures('MorePressure'), figures('LessLoad')]).toEqual([['10 psi'], ['10 %']]);
  });
  it('has no load to put in place of a rating, and always says so', () => {
    const found = rightOf(speedInformation('ST205/75R15 LRD', mph(70)));
    expect(Object.keys(found).sort()).toEqual(['decisions', 'notes', 'says']);
    expect(tags(found)).toEqual(expect.arrayContaining(serviceNotes.map(({ tag }) => tag)));
    expect(rightOf(speedInformation('LT235/85R16 LRE', mph(70))).says).toBe('nothing published');
  });
});
