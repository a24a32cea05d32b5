/** Whether a designation that was read names a printed row, and how far it is from one. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { compare, type Quantity, ratio, roundNearest } from '../../units/index.js';
import { type ReadDesignation, readSectionName } from './designation.js';

const thousandth = ratio('0.001');

/** As the tables print it: 3/16 is printed 0.188 in some rows and 0.1875 in others. */
const toThousandths = (a: Quantity<'ratio'>): Quantity<'ratio'> =>
  a.value.decimalPlaces() > 3 ? roundNearest(a, thousandth) : a;

/** Equal, or equal once the longer of the two is cut to the three places of print. */
function sameFigure(a: Quantity<'ratio'>, b: Quantity<'ratio'>): boolean {
  return compare(a, b) === 0 || compare(toThousandths(a), b) === 0 || compare(a, toThousandths(b)) === 0;
}

/** True when the two name one shape. */
export function sameShape(a: ReadDesignation, b: ReadDesignation): boolean {
  return (
    a.letters === b.letters &&
    a.weightClass === b.weightClass &&
    a.figures.length === b.figures.length &&
    a.figures.every((figure, i) => sameFigure(figure, b.figures[i] as Quantity<'ratio'>))
  );
}

const far = 1000;

/** For the list of nearest rows only: other letters are far, then the share by which each figure differs, depth first. */
export function shapeDistance(asked: ReadDesignation, designation: string): number {
  const read = readSectionName(designation);
  if (isLeft(read)) return 10 * far;
  const other = read.right;
  const family = asked.letters === other.letters ? 0 : far;
  const form = asked.figures.length === other.figures.length ? 0 : far;
  const weightClass = asked.weightClass === other.weightClass ? 0 : 0.1;
  const figures = asked.figures.map((figure, i) => {
    const [a, b] = [figure.value.toNumber(), other.figures[i]?.value.toNumber() ?? 0];
    return (Math.abs(a - b) / Math.max(a, b, 0.001)) * (i === 0 ? 2 : 1);
  });
  return family + form + weightClass + figures.reduce((total, part) => total + part, 0);
}
