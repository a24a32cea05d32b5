/** The scale tickets of a spec, compared with the calculated weights. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type Note, note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import { type CannotTell, readScaleTickets, type TicketReading, type TowingError } from '../../towing/index.js';
import { type Derived, difference } from '../../trace/index.js';
import { frozen } from '../../units/internal.js';
import { emptyPart, open, type Part } from './part-of-answer.js';
import type { Weighed } from './weights.js';

export interface ScalePart extends Part {
  /** The weights the tickets give, in lb; absent when they give none. */
  readonly reading?: TicketReading | undefined;
  /** Weighed minus calculated, where both are known. */
  readonly gaps: readonly { readonly what: string; readonly gap: Derived<'lb'> }[];
}

/** The figures that tickets may not tell, as programs call them. */
const idOf: Readonly<Record<CannotTell['figure'], string>> = {
  tongue: 'tongue',
  gross: 'gross',
  combination: 'combination',
  offFront: 'tow-axles',
  trailerGain: 'bars',
  overhangOverWheelbase: 'overhang',
  restored: 'restored',
  moment: 'bars-moment',
};

const paths = ['tickets'];

const noTickets: ScalePart = frozen({ ...emptyPart, reading: undefined, gaps: [] });

/** Reads the tickets. They do not change the calculation: the weighed figures belong in the spec, with the basis `scale`. */
export function scalePart(
  { tickets }: DecodedSpec,
  { gross, balance }: Weighed,
  axlesAt: Derived<'in'> | undefined,
): Either<TowingError, ScalePart> {
  if (tickets === undefined) return right(noTickets);
  const { division, ...passes } = tickets;
  const read = readScaleTickets({ tickets: passes, division, axlesAt });
  if (isLeft(read)) {
    if (read.left.tag !== 'TicketsCannotTell') return left({ ...read.left, path: read.left.path ?? 'tickets' });
    return right({
      ...open({ id: 'tickets', what: read.left.asked, missing: read.left.needed, paths }),
      reading: undefined,
      gaps: [],
    });
  }
  const { cannotTell, notes, decisions } = read.right;
  const gapOf = (
    what: string,
    weighed: Derived<'lb'> | undefined,
    reckoned: Derived<'lb'> | undefined,
  ): ScalePart['gaps'] =>
    weighed === undefined || reckoned === undefined
      ? []
      : [{ what, gap: difference(`${what}, weighed minus reckoned`, weighed, reckoned) }];
  const gaps = [
    ...gapOf('gross weight', read.right.gross, gross),
    ...gapOf('tongue load', read.right.tongue, balance?.tongue),
  ];
  const told: readonly Note[] =
    gaps.length === 0
      ? []
      : [
          note(
            'ScaleBesideReckoning',
            'The tickets stand beside the reckoning and do not change it: put the weighed figures into the spec to reckon with them.',
            gaps.map(({ gap }) => gap),
          ),
        ];
  return right({
    reading: read.right,
    gaps,
    ...emptyPart,
    notes: [...notes, ...told],
    decisions,
    notChecked: cannotTell.map(({ figure, what, needs }) => ({
      id: `tickets/${idOf[figure]}`,
      what: `${what} from the scale tickets`,
      missing: needs,
      paths,
    })),
  });
}
