/** Where must the axles be, so that the tongue share stays in its band empty, at the rating, and with every machine? */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AssessError, assessJson } from '../../assessment/index.js';
import { guideline, guidelineFor } from '../../load/index.js';
import { type Derived, greatestOf, inInches, leastOf, minus, result, statics } from '../../trace/index.js';
import { compareFigures } from '../../units/internal.js';
import type { ChooseError } from '../errors.js';
import { questionRefusal } from '../refusal.js';
import type { AxleDesign, AxleInterval } from './design.js';
import { emptyOf, missing } from './empty-trailer.js';
import { grown, inchesIn } from './grown.js';
import { limitOf, loadings } from './loadings.js';

type Problem = AssessError | ChooseError;

function intervalOf(spec: unknown, { moving, machines = [] }: AxleDesign): Either<Problem, AxleInterval> {
  const assessed = assessJson(spec);
  if (isLeft(assessed)) return assessed;
  const { trailer } = assessed.right.spec;
  if (trailer.deck === undefined) return missing('the ends of the deck', 'trailer.deck');
  const own = trailer.guideline;
  const band = own === undefined ? right(guidelineFor(trailer.hitch)) : guideline(own.low, own.high, statics);
  if (isLeft(band)) return band;
  const empty = emptyOf(assessed.right, moving);
  if (isLeft(empty)) return empty;
  const front = inInches('deck front', trailer.deck.front);
  const length = result('deck length', minus(inInches('deck rear', trailer.deck.rear), front));
  const limits = loadings(assessed.right, empty.right, front, length, machines).map(({ name, weight, moment }) =>
    limitOf(name, weight, moment, empty.right.moves, band.right),
  );
  const from = greatestOf(
    'nearest place of the axles',
    limits.map((limit) => limit.from),
  );
  const to = leastOf(
    'farthest place of the axles',
    limits.map((limit) => limit.to),
  );
  const setBy = (end: 'from' | 'to', at: Derived<'in'>): readonly string[] =>
    limits.filter((limit) => compareFigures(limit[end].value, at.value) === 0).map(({ name }) => name);
  return right({
    deck: length,
    empty: empty.right.weight,
    from,
    to,
    fromSetBy: setBy('from', from),
    toSetBy: setBy('to', to),
    none: compareFigures(from.value, to.value) > 0,
    limits,
    how: empty.right.how,
  });
}

/**
 * Where must the axles be for each deck length, so that the tongue share stays in its band empty, at the rating, and with every machine?
 *
 * W the weight and M the moment about the coupler of one way of loading with the axles at the coupler, Wm what moves with the
 * axles: `T = W - Wm - M / a`, so `a >= M / (W - Wm - low W)` and `a <= M / (W - Wm - high W)`. The interval runs from the
 * greatest near end to the least far end. Weights in lb, places in inches behind the coupler, the middle of an equalised group.
 *
 * Not for axles that share by their springs. Ratings are not asked here: assess the trailer with its axles in place.
 *
 * @param design the trailer, the lines that move with its axles, deck lengths, machines
 * @returns one interval a deck length, with what sets its ends; `none` when they are in conflict. Left as `assess`, `NothingToAnswer`, `NotInTheSpec`
 * @example orThrow(axlePlace({ spec, moving: [] }))[0].how // 'built up'
 * @source static equilibrium, derived; the band carries its own source
 */
export function axlePlace(design: AxleDesign): Either<Problem, readonly AxleInterval[]> {
  const unusable = questionRefusal('axlePlace', design);
  if (unusable !== undefined) return left(unusable);
  const { spec, decks } = design;
  if (decks?.length === 0) return missing('a deck length', 'decks');
  const found: AxleInterval[] = [];
  const now = intervalOf(spec, design);
  if (isLeft(now)) return now;
  if (decks === undefined) return right([now.right]);
  for (const [i, text] of decks.entries()) {
    const wanted = inchesIn(text);
    if (wanted === undefined)
      return left({
        chapter: 'choose',
        tag: 'UnusableFigure',
        path: `decks.${i}`,
        found: String(text).slice(0, 40),
        needed: 'a length such as "20 ft"',
      });
    const by = wanted - now.right.deck.value.value.toNumber();
    if (by !== 0 && now.right.how === 'weighed')
      return missing('the parts that the trailer is built up from', 'trailer.curb');
    const one = by === 0 ? now : intervalOf(grown(spec, by), design);
    if (isLeft(one)) return one;
    found.push(one.right);
  }
  return right(found);
}
