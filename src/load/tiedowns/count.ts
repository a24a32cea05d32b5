/** How many tiedowns does the rule ask for, whatever their strength? Every reading of the rule is kept. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import {
  aboveZero,
  allHold,
  constant,
  type Decision,
  decide,
  inFeet,
  inPounds,
  type OutsideItsRange,
} from '../../trace/index.js';
import { lb, toWire } from '../../units/index.js';
import type { SectionNotForThisWeight } from '../errors.js';
import { count, generalCount } from './count-general.js';
import { type CountReading, general, handbook, heavy, light, type TiedArticle } from './sections.js';

/** The least number of tiedowns by each reading of the section. */
export interface TiedownCount {
  readonly readings: readonly CountReading[];
  /** The reading that governs: of texts that disagree the one that asks for most. */
  readonly governing: CountReading;
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

/**
 * How many tiedowns at least, by this section of the rules?
 *
 * General, not blocked forward: up to 5 ft and 1,100 lb one; up to 5 ft heavier, or over 5 to 10 ft, two; over 10 ft
 * `2 + ceil((L - 10)/10)`. Blocked forward: `ceil(L/10)`, at least one. Heavy equipment, 10,000 lb or more: four, and where the
 * general section asks a long machine for more, that count too. Light vehicles, 10,000 lb or less: two in all by one reading,
 * two at each end by another. Where two texts disagree both are given, and the greater governs.
 *
 * Compared in feet and pounds as printed. The section is an argument: below 10,000 lb the carrier may choose. Strength is
 * another question: `tiedowns` asks both.
 *
 * @param article weight and length as loaded
 * @returns Left `OutsideItsRange`; `SectionNotForThisWeight` for a light vehicle above 10,000 lb
 * @example orThrow(tiedownCount({ weight: lb(2000), length: foot(12), blockedForward: false, section: 'general' })).readings[0].minimum // 3
 * @source 49 CFR 393.110, 393.128(a), 393.130(a); bind commercial carriers
 */
export function tiedownCount(article: TiedArticle): Either<SectionNotForThisWeight | OutsideItsRange, TiedownCount> {
  const weight = inPounds('article weight', article.weight);
  const length = inFeet('article length', article.length);
  const guarded = allHold([aboveZero('article weight', weight), aboveZero('article length', length)]);
  if (isLeft(guarded)) return guarded;
  const line = constant(lb(10000));
  const atLine = decide(weight, '=', line);
  const tie = atLine.holds
    ? [
        note(
          'BothSectionsAtTenThousand',
          'At exactly 10,000 lb the light-vehicle and the heavy-equipment section both apply as printed; a handbook has heavy equipment only above it.',
          [weight],
        ),
      ]
    : [];
  switch (article.section) {
    case 'general': {
      const { minimum, decisions } = generalCount(weight, length, article.blockedForward);
      const isHeavy = decide(weight, '>=', line);
      const byLength = { reading: 'length and weight', minimum, source: general };
      return right({
        readings: [byLength],
        governing: byLength,
        decisions: [...guarded.right, atLine, ...decisions, isHeavy],
        notes: isHeavy.holds
          ? [
              note(
                'HeavySectionMayBind',
                'A vehicle or machine on wheels or tracks of 10,000 lb or more comes under the heavy-equipment section: four at least.',
                [weight],
              ),
            ]
          : [],
      });
    }
    case 'heavy equipment': {
      const isHeavy = decide(weight, '>=', line);
      const four = { reading: 'heavy equipment', minimum: count(4), source: heavy };
      const byLength = generalCount(weight, length, article.blockedForward);
      const isLong = decide(byLength.minimum, '>', four.minimum);
      const long = { reading: 'length and weight', minimum: byLength.minimum, source: general };
      return right({
        ...(isLong.holds ? { readings: [four, long], governing: long } : { readings: [four], governing: four }),
        decisions: [...guarded.right, atLine, isHeavy, ...byLength.decisions, isLong],
        notes: [
          ...tie,
          ...(isLong.holds
            ? [
                note(
                  'TwoCountsForLongMachine',
                  'The heavy-equipment section asks for four tiedowns, the general section by length for more: both are minimums, and the greater governs.',
                  [long.minimum],
                ),
              ]
            : []),
          note('LowerAndLock', 'Accessories are lowered and secured, articulation is restrained.'),
          ...(isHeavy.holds
            ? []
            : [
                note(
                  'SectionByChoice',
                  'Below 10,000 lb this section is a choice: the light-vehicle or the general section may be used instead.',
                  [weight],
                ),
              ]),
        ],
      });
    }
    case 'light vehicle': {
      const isLight = decide(weight, '<=', line);
      if (!isLight.holds)
        return left({
          chapter: 'load',
          tag: 'SectionNotForThisWeight',
          section: article.section,
          weight: toWire(weight.value),
          most: toWire(line.value),
        });
      const inAll = { reading: 'two in all, front and rear restrained', minimum: count(2), source: light };
      const atEachEnd = { reading: 'two at each end', minimum: count(4), source: handbook };
      return right({
        readings: [inAll, atEachEnd],
        governing: atEachEnd,
        decisions: [...guarded.right, atLine, isLight],
        notes: tie,
      });
    }
  }
}
