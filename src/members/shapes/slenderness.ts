/** Is a formed channel so thin that its flat parts buckle before the steel yields? */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  type AnyPressure,
  aboveZero,
  allHold,
  type Decision,
  type Derived,
  decide,
  fromTable,
  inInches,
  inPsi,
  minus,
  notNegative,
  type OutsideItsRange,
  over,
  plus,
  result,
  root,
  times,
} from '../../trace/index.js';
import { ksi, ratio } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { type SlendernessRow, slendernessLimits } from '../data/slenderness-limits.js';
import type { FormedChannel } from './outline.js';

/** One flat part of the channel. */
export interface FlatSlenderness {
  readonly part: 'flange' | 'web';
  /** Flat width over thickness. */
  readonly ratio: Derived<'ratio'>;
  /** The greatest that the text allows. */
  readonly most: Derived<'ratio'>;
  /** Up to here all of the flat counts at this stress; above it only a part of it does. */
  readonly full: Derived<'ratio'>;
  /** `outside the text`, `counts in part`, or `counts in full`; an exact tie is on the good side. */
  readonly verdict: 'counts in full' | 'counts in part' | 'outside the text';
}

/** Flange and web of a formed channel. */
export interface ChannelSlenderness {
  readonly parts: readonly FlatSlenderness[];
  readonly decisions: readonly Decision[];
}

const source = slendernessLimits.source;
const steelE = inPsi('modulus of elasticity', ksi(29500));

/** `0.673 / 1.052 sqrt(k E / f)`: the plate of this k whose buckling is far enough above the stress. */
const fullUpTo = (k: Derived<'ratio'>, stress: Derived<'psi'>): Derived<'ratio'> =>
  result(
    'width over thickness that counts in full',
    over(times(0.673, root(times(k, over(steelE, stress)))), 1.052),
    source,
  );

function judge(
  part: 'flange' | 'web',
  flat: Derived<'in'>,
  t: Derived<'in'>,
  stress: Derived<'psi'>,
  row: SlendernessRow,
) {
  const from = { table: slendernessLimits.name, key: row.clause, source };
  const share = result(`flat ${part} over thickness`, over(flat, t));
  const most = fromTable('greatest width over thickness', ratio(row.most), from);
  const full = fullUpTo(fromTable('buckling coefficient', ratio(row.k), from), stress);
  const [allowed, whole] = [decide(share, '<=', most), decide(share, '<=', full)];
  const counts = whole.holds ? 'counts in full' : 'counts in part';
  const found: FlatSlenderness = {
    part,
    ratio: share,
    most,
    full,
    verdict: allowed.holds ? counts : 'outside the text',
  };
  return { found, decisions: [allowed, whole] };
}

/**
 * Are the flats of this bent channel too thin for what they bear?
 *
 * `w / t` of each flat, compared with the greatest that is allowed (60 for a flange with a free edge, 200 for a web) and with the one up
 * to which it counts in full: `0.673 / 1.052 sqrt(k E / f)`, k 0.43 for the flange, 24 for a web in bending, E 29,500 ksi, f the
 * stress at its edge.
 *
 * Not the effective section: above `full` the gross properties of `sectionProperties` say more than the channel bears. No lips,
 * no holes, no crippling under a support.
 *
 * @param channel depth, flange width, thickness, inside bend radius: outside sizes
 * @param stress greatest compression at the edge, such as the allowable stress
 * @returns plain numbers; Left `OutsideItsRange`, also where the bends use a flat up
 * @example orThrow(channelSlenderness({ kind: 'formed channel', depth: inch(8), flangeWidth: inch(3), thickness: inch('0.125'), insideRadius: inch('0.25') }, ksi(30))).parts[0].verdict // counts in part
 * @source AISI S100, from memory (verify)
 */
export function channelSlenderness(
  channel: FormedChannel,
  stress: AnyPressure,
): Either<OutsideItsRange, ChannelSlenderness> {
  const [depth, width] = [inInches('depth', channel.depth), inInches('flange width', channel.flangeWidth)];
  const [t, r] = [inInches('thickness', channel.thickness), inInches('inside bend radius', channel.insideRadius)];
  const f = inPsi('stress', stress);
  const bend = plus(r, t);
  const flange = result('flat of a flange', minus(width, bend));
  const web = result('flat of the web', minus(depth, times(2, bend)));
  const guarded = allHold([
    aboveZero('the thickness', t),
    notNegative('the inside bend radius', r),
    notNegative('the flat of a flange', flange),
    notNegative('the flat of the web', web),
    aboveZero('the stress', f),
  ]);
  if (isLeft(guarded)) return guarded;
  const [free, held] = slendernessLimits.rows;
  const judged = [judge('flange', flange, t, f, free), judge('web', web, t, f, held)];
  return right({
    parts: judged.map(({ found }) => found),
    decisions: [...guarded.right, ...collected(judged, ({ decisions }) => decisions)],
  });
}
