/** Notes on a placement window: empty, narrower than its uncertainty, or with limits that were not given. */
import { type Note, note } from '../../ratings/index.js';
import { type Derived, decide } from '../../trace/index.js';
import { showBrief } from '../../units/index.js';
import type { LadenLimit } from '../balance/laden-limit.js';
import type { Lines } from './limit-lines.js';
import type { PlacedLimit, TrailerForPlacing } from './limits.js';
import type { Span, SpanEnd } from './span.js';

/** One sentence that names both sides of an empty window, with the figures. @example conflictText(orThrow(placementWindow(trailer, { weight: lb(9200), length: inch(120), balancePoint: inch(52), uncertainty: inch(2) }))).length > 0 // true */
export function conflictText({ lower, upper }: Span<PlacedLimit>): string {
  const names = (end: SpanEnd<PlacedLimit>): string => end.setBy.map(({ name }) => name).join(' and ');
  return `${names(lower)} asks for a balance point at ${showBrief(lower.at.value)} or further back, ${names(upper)} for ${showBrief(upper.at.value)} or further forward`;
}

const asks = ({ limits = [] }: TrailerForPlacing, what: LadenLimit['on']): boolean =>
  limits.some(({ on, atLeast }) => on === what && atLeast !== true);

/** The notes on a window and on its sure part. */
export function notesOn(
  span: Span<PlacedLimit>,
  sure: Span<PlacedLimit>,
  lines: Lines,
  trailer: TrailerForPlacing,
): readonly Note[] {
  const ends = (of: Span<PlacedLimit>): readonly Derived<'in'>[] => [of.lower.at, of.upper.at, of.width];
  return [
    ...(span.empty ? [note('EmptyWindow', `No place meets every limit: ${conflictText(span)}.`, ends(span))] : []),
    ...(!span.empty && sure.empty
      ? [
          note(
            'WindowWithinUncertainty',
            `The window is narrower than the balance point is known: ${conflictText(sure)}. Weigh the machine by its axles.`,
            ends(sure),
          ),
        ]
      : []),
    ...(decide(span.upper.at, '>', lines.axlesAt, 'a remark').holds
      ? [
          note(
            'BehindTheAxles',
            'Toward the rear end of the window the machine balances behind the axles and takes load off the tongue.',
            [span.upper.at, lines.axlesAt],
          ),
        ]
      : []),
    ...(trailer.guideline === 'no guideline'
      ? [note('NoGuideline', 'No tongue guideline was given, so no end is set by a tongue that is too light.')]
      : []),
    ...(trailer.tongueLimits.length === 0 && !asks(trailer, 'tongue')
      ? [note('NoTongueLimit', 'Not checked: no hitch or coupler tongue rating was given.')]
      : []),
    ...(trailer.axleLimits.length === 0 && !asks(trailer, 'axles')
      ? [note('NoAxleLimit', 'Not checked: no axle group rating was given.')]
      : []),
    note('GrossNotHere', 'Moving a machine never changes the gross weight: GVWR is a separate check.'),
  ];
}
