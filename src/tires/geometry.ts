/** Dimensions of a tire: section height, diameter, revolutions a mile. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../ratings/index.js';
import {
  asDerived,
  constant,
  converted,
  type Derived,
  decide,
  fromTable,
  given,
  type Known,
  over,
  product,
  result,
  sum,
  times,
} from '../trace/index.js';
import { inch, quantity, ratio } from '../units/index.js';
import { collected, showInWords } from '../units/internal.js';
import { sources } from './data/sources.js';
import { designationOf } from './designation/cache.js';
import type { Designation, MetricSize } from './designation/designation.js';
import { readTireDesignation } from './designation/read-designation.js';
import { showSize, sizeKey } from './designation/show-designation.js';
import type { NotPositive, TiresError } from './errors.js';
import { aliasTable, diameterTables } from './tables.js';

/** One printed diameter of a size; several treads of one size may have several. */
export interface PublishedDiameter {
  readonly diameter: Derived<'in'>;
  readonly revolutionsPerMile: Derived<'ratio'>;
  readonly table: string;
  readonly pattern: string;
}

export interface TireGeometry {
  /** From width and aspect; absent where the size has no aspect. */
  readonly computed: { readonly sectionHeight: Derived<'mm'>; readonly diameter: Derived<'in'> } | undefined;
  /** Printed diameters of the size, with the revolutions that follow from each. */
  readonly published: readonly PublishedDiameter[];
  readonly notes: readonly Note[];
}

/**
 * How often does a tire of this published diameter turn in a mile?
 *
 * `revolutions = 63,360 / (3.05 x D)`: 63,360 inches to a mile, D the published outside diameter in inches; 3.05 in place of pi
 * because a loaded tire rolls on less than its diameter.
 *
 * Within 0.4 % of 15 published values when D is the published diameter; a diameter computed from the size is not meant. One
 * industrial bias tire prints what 2.95 would give.
 *
 * @param diameter published outside diameter, in
 * @returns revolutions; Left `NotPositive`
 * @example revolutionsPerMile(inch('31.7')) // Right: 655.3; published 655
 * @source common practice; factor from memory
 */
export function revolutionsPerMile(diameter: Known<'in'>): Either<NotPositive, Derived<'ratio'>> {
  const outside = asDerived('published diameter', diameter, 'published');
  return decide(outside, '>', constant(inch(0))).holds
    ? right(turns(outside))
    : left({ chapter: 'tires', tag: 'NotPositive', what: 'published diameter', found: showInWords(outside.value) });
}

const mile = converted('mile in inches', constant(quantity(1, 'mi')), 'in');
const rolling = constant(ratio('3.05'), 'rolling factor', sources.revolutions);
const turns = (outside: Derived<'in'>): Derived<'ratio'> =>
  result('revolutions a mile', over(mile, times(rolling, outside)), sources.revolutions);

function publishedDiameters(d: Designation): readonly PublishedDiameter[] {
  const key = sizeKey(d);
  const searched = aliasTable.rows.find(([written]) => written === key)?.[1] ?? key;
  return collected(diameterTables, (table) =>
    collected(table.rows, ([size, inches, , , pattern]) => {
      const row = readTireDesignation(size);
      if (isLeft(row) || sizeKey(row.right) !== searched) return [];
      const from = { table: table.name, key: pattern === '' ? size : `${size} ${pattern}`, source: table.source };
      const diameter = fromTable(`published diameter of ${from.key}`, inch(inches), from);
      return [{ diameter, revolutionsPerMile: turns(diameter), table: table.name, pattern }];
    }),
  );
}

function computed(size: MetricSize, aspect: NonNullable<MetricSize['aspect']>): NonNullable<TireGeometry['computed']> {
  const width = given('section width', size.width, 'label');
  const rim = given('rim diameter', size.rim, 'label');
  const share = converted('aspect', given('aspect in percent', aspect, 'label'), 'ratio');
  const sectionHeight = product('section height', width, share);
  const twice = product(
    'two section heights',
    converted('section height in inches', sectionHeight, 'in'),
    constant(ratio(2)),
  );
  return { sectionHeight, diameter: sum('diameter from the size', [rim, twice]) };
}

/**
 * How high is the sidewall, how large the tire, and how often does it turn in a mile?
 *
 * `section height = width x aspect`, `diameter = rim + 2 x section height / 25.4`: width in mm, aspect as a share, rim in inches.
 * Nominal: published diameters differ by 0.15 in on average, just under 0.5 in at worst. Revolutions are given for published
 * diameters only.
 *
 * Numeric and full-profile sizes (7.50-16, 175R14C) have no aspect and no computable diameter; the code in a flotation
 * size is nominal (33 is published as 33.5). For those there are published diameters or none. No loaded radius is
 * published in the texts read, so none is given.
 *
 * @param designation from the sidewall
 * @returns mm, in, revolutions a mile; Left `UnreadableDesignation`, `NoAspectRatio`
 * @example tireGeometry('ST225/75R15') // Right: section 168.75 mm, diameter 28.29 in, published 28.4 in
 * @source arithmetic of the size code; published diameters of a size chart and two maker sheets, grade B and C
 */
export function tireGeometry(designation: string | Designation): Either<TiresError, TireGeometry> {
  const read = designationOf(designation);
  if (isLeft(read)) return read;
  const { size } = read.right;
  const published = publishedDiameters(read.right);
  const aspect = size.form === 'metric' ? size.aspect : undefined;
  if (size.form === 'metric' && aspect !== undefined)
    return right({ computed: computed(size, aspect), published, notes: [] });
  if (published.length === 0) return left({ chapter: 'tires', tag: 'NoAspectRatio', size: showSize(read.right) });
  return right({
    computed: undefined,
    published,
    notes: [note('DiameterNotComputable', 'the size has no aspect; its diameter is looked up, not computed')],
  });
}
