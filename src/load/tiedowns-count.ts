/** How many tiedowns does the rule ask for, whatever their strength? Every reading of the rule is kept. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import {
  type AnyLength,
  type AnyWeight,
  aboveZero,
  allHold,
  constant,
  type Decision,
  type Derived,
  decide,
  greatestOf,
  inFeet,
  inPounds,
  minus,
  type OutsideItsRange,
  over,
  plus,
  result,
  roundedUp,
  type Source,
} from '../trace/index.js';
import { foot, lb, ratio } from '../units/index.js';
import type { SectionNotForThisWeight } from './errors.js';

/** Which section of the rules the article is tied by: the carrier's choice below 10,000 lb, so it is an argument. */
export type SecurementSection = 'general' | 'heavy equipment' | 'light vehicle';

/** The article to be tied down. */
export interface TiedArticle {
  readonly weight: AnyWeight;
  readonly length: AnyLength;
  /** Held against moving forward by a headboard, bulkhead, other secured cargo or other means. */
  readonly blockedForward: boolean;
  readonly section: SecurementSection;
}

/** A minimum count as one reading of the rule has it. */
export interface CountReading {
  readonly reading: string;
  readonly minimum: Derived<'ratio'>;
  readonly source: Source;
}

export interface TiedownCount {
  readonly readings: readonly CountReading[];
  readonly decisions: readonly Decision[];
  readonly notes: readonly Note[];
}

const general: Source = {
  id: 'cfr-393-110',
  title: '49 CFR 393.110',
  edition: 'agency rules page, two web copies',
  grade: 'C',
  note: 'interval ends partly from memory',
};
const heavy: Source = {
  id: 'cfr-393-130',
  title: '49 CFR 393.130',
  clause: '(a)',
  edition: 'quoted in a web copy',
  grade: 'B',
};
const light: Source = {
  id: 'cfr-393-128',
  title: '49 CFR 393.128',
  clause: '(a)',
  edition: 'archived agency page',
  grade: 'A',
};
const handbook: Source = {
  id: 'driver-handbook-light',
  title: "agency driver's handbook page",
  edition: '2014-12-18',
  grade: 'B',
  note: 'can be read as two at each end',
};

const count = (digits: number): Derived<'ratio'> => constant(ratio(digits));
const tenths = (symbol: string, length: Derived<'ft'>): Derived<'ratio'> =>
  roundedUp(symbol, over(length, constant(foot(10))), ratio(1));

/** 393.110: by length and weight when nothing blocks the article, by length alone when something does. */
function generalCount(
  weight: Derived<'lb'>,
  length: Derived<'ft'>,
  blocked: boolean,
): { readonly minimum: Derived<'ratio'>; readonly decisions: readonly Decision[] } {
  if (blocked)
    return {
      minimum: greatestOf('tiedowns by length, blocked forward', [
        count(1),
        tenths('tens of feet, rounded up', length),
      ]),
      decisions: [],
    };
  const short = decide(length, '<=', constant(foot(5)));
  const lightWeight = decide(weight, '<=', constant(lb(1100)));
  if (short.holds && lightWeight.holds) return { minimum: count(1), decisions: [short, lightWeight] };
  const ten = decide(length, '<=', constant(foot(10)));
  const decisions = [short, lightWeight, ten];
  if (ten.holds) return { minimum: count(2), decisions };
  const beyond = result('length beyond 10 ft', minus(length, constant(foot(10))));
  return { minimum: result('tiedowns by length', plus(2, tenths('tiedowns beyond 10 ft', beyond))), decisions };
}

/**
 * How many tiedowns at least, by this section of the rules?
 *
 * General, not blocked forward: up to 5 ft and 1,100 lb one; up to 5 ft heavier, or over 5 to 10 ft, two; over 10 ft
 * `2 + ceil((L - 10)/10)`. Blocked forward: `ceil(L/10)`, at least one. Heavy equipment, 10,000 lb or more: four. Light
 * vehicles, 10,000 lb or less: two in all by one reading, two at each end by another; both are given.
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
      return right({
        readings: [{ reading: 'length and weight', minimum, source: general }],
        decisions: [...guarded.right, ...decisions, isHeavy],
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
      return right({
        readings: [{ reading: 'heavy equipment', minimum: count(4), source: heavy }],
        decisions: [...guarded.right, atLine, isHeavy],
        notes: [
          ...tie,
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
          weight: weight.value,
          most: line.value,
        });
      return right({
        readings: [
          { reading: 'two in all, front and rear restrained', minimum: count(2), source: light },
          { reading: 'two at each end', minimum: count(4), source: handbook },
        ],
        decisions: [...guarded.right, atLine, isLight],
        notes: tie,
      });
    }
  }
}
