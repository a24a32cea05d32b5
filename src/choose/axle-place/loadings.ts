/** Every way of loading, and the places of the axles at which it keeps the band. */
import type { Assessment } from '../../assessment/index.js';
import type { Guideline } from '../../load/index.js';
import {
  asDerived,
  type Derived,
  inInches,
  inPounds,
  minus,
  over,
  plus,
  result,
  statics,
  times,
} from '../../trace/index.js';
import type { AxleLimit, DesignMachine } from './design.js';
import type { Empty } from './empty-trailer.js';

type Lb = Derived<'lb'>;
type Moment = Derived<'lb*in'>;

/** `a >= M / (W - Wm - low W)` and `a <= M / (W - Wm - high W)`. */
export function limitOf(name: string, weight: Lb, moment: Moment, moves: Lb, { low, high }: Guideline): AxleLimit {
  const at = (end: 'low' | 'high', share: Derived<'ratio'>): Derived<'in'> =>
    result(
      `axles by the ${end} end of the band, ${name}`,
      over(moment, minus(minus(weight, moves), times(weight, share))),
      statics,
    );
  return { name, from: at('low', low), to: at('high', high) };
}

/** Empty, loaded to the GVWR over the whole deck, and each machine. */
export function loadings(
  { spec: { trailer } }: Assessment,
  empty: Empty,
  front: Derived<'in'>,
  length: Derived<'in'>,
  machines: readonly DesignMachine[],
): readonly { readonly name: string; readonly weight: Lb; readonly moment: Moment }[] {
  const gvwr = trailer.gvwr && inPounds('GVWR', trailer.gvwr);
  const middle = result('middle of the deck', plus(front, over(length, 2)));
  const rated = gvwr && result('load to the GVWR', minus(gvwr, empty.weight));
  const withLoad = (name: string, load: Lb, at: Derived<'in'>) => ({
    name,
    weight: result(`weight, ${name}`, plus(empty.weight, load)),
    moment: result(`moment, ${name}`, plus(empty.moment, times(load, at))),
  });
  return [
    { name: 'empty', weight: empty.weight, moment: empty.moment },
    ...(rated === undefined || !rated.value.value.gt(0)
      ? []
      : [withLoad('loaded to its GVWR over the whole deck', rated, middle)]),
    ...machines.map(({ name, weight, behindDeckFront }) =>
      withLoad(
        name,
        inPounds(`${name} weight`, asDerived(`${name} weight`, weight)),
        result(
          `${name} position`,
          plus(front, inInches(`${name} behind the deck front`, asDerived('behind the deck front', behindDeckFront))),
        ),
      ),
    ),
  ];
}
