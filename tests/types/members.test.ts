/** Lines that must not compile. They are not run: the type check reads them. */
import { expect, it } from 'vitest';
import { allowableStress, beam, compareSections, frameWeight, plateWeight, publishedSection, sectionProperties, sheetWeight, statedMember, steelDensity, weightPerFoot } from '../../src/members/index.js';
import { foot, inch, inch3, kg, lb, lbf, lbPerFt, ratio } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';

const never = (): void => {
  // @ts-expect-error kilograms are not a weight per length
  statedMember('side rail', kg(3));
  // @ts-expect-error a gauge number alone says nothing: which system?
  sheetWeight(10);
  // @ts-expect-error no such gauge system
  sheetWeight(10, 'US');
  // @ts-expect-error the density is never assumed
  plateWeight(inch('0.25'));
  // @ts-expect-error a section has no weight without a density
  sectionProperties({ kind: 'flat', height: inch(3), width: inch('0.25') });
  // @ts-expect-error the wall that properties are computed with is never assumed
  sectionProperties({ kind: 'round tube', outside: inch(2), wall: inch('0.154') }, steelDensity);
  // @ts-expect-error a thickness is not a weight
  plateWeight(lb(10), steelDensity);
  // @ts-expect-error a section may not be found: the answer must be read first
  weightPerFoot(publishedSection('C5x6.7'));
  const c5 = rightOf(publishedSection('C5x6.7'));
  const spaced = { name: 'crossmembers', member: c5, length: inch(83), spacing: inch(16), over: foot(18), from: inch(0) };
  // @ts-expect-error pieces at a spacing need their count rule
  frameWeight([spaced]);
  // @ts-expect-error a place is a length
  frameWeight([{ name: 'rails', member: c5, length: inch(83), count: ratio(2), at: lb(3) }]);
  // @ts-expect-error a bare number is not a length
  frameWeight([{ name: 'rails', member: c5, length: 83, count: ratio(2), at: inch(3) }]);
  const spans = { leftOverhang: inch(0), span: foot(8), rightOverhang: inch(0) };
  // @ts-expect-error a weight is not a force: it presses through `pressing`
  beam(spans, [{ kind: 'point', name: 'machine', force: lb(500), at: foot(4) }], {} as never);
  // @ts-expect-error a weight per foot is not a force per length
  beam(spans, [{ kind: 'spread', name: 'deck', perLength: lbPerFt(50), from: inch(0), to: foot(4) }], {} as never);
  // @ts-expect-error a beam without an allowable stress has no verdict
  beam({ leftOverhang: inch(0), span: foot(8), rightOverhang: inch(0) }, [{ kind: 'point', name: 'machine', force: lbf(500), at: foot(4) }], { E: {} as never, I: {} as never, S: inch3(4) });
  // @ts-expect-error no such rule
  allowableStress('two thirds', 'A36');
  // @ts-expect-error a weight per foot alone has no section modulus to compare
  compareSections(c5, rightOf(statedMember('rail', lbPerFt(3))));
};

it('compiles only what means something', () => expect(typeof never).toBe('function'));
