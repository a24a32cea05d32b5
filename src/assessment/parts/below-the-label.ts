/** Parts weaker than the label of the trailer, whatever it carries today: coupler, chains, ball, axles, jack; and brakes the spec leaves open. */
import type { Guideline } from '../../load/index.js';
import { type Note, note } from '../../ratings/index.js';
import type { DecodedSpec } from '../../spec/index.js';
import {
  constant,
  type Decision,
  type Derived,
  decide,
  inPounds,
  minus,
  product,
  renamed,
  result,
  sum,
  times,
} from '../../trace/index.js';
import { lb, ratio } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import { jackAtLabel } from './jack.js';
import type { Stack } from './running-gear.js';

/** What asks attention, what is only remarked, and the comparisons that said so. */
export interface BelowLabel {
  readonly attention: readonly Note[];
  readonly notes: readonly Note[];
  readonly decisions: readonly Decision[];
}

interface Weaker {
  readonly tag: string;
  readonly says: string;
  readonly figure: Derived<'lb'>;
  readonly path: string;
}

/** From this label on carriers' trailers must have brakes, and most States ask for them. 49 CFR 393.42(b)(2) excepts 3,000 lb or less. */
const braked = constant(lb(3000), 'light trailer');

/** What each part of the hitch is rated for, as far as known. */
function hitchParts({ trailer: { coupler, chains }, tow }: DecodedSpec): readonly Weaker[] {
  const ball = tow?.ball?.gross;
  const each = chains && inPounds('breaking strength of a chain', chains.each);
  return [
    ...(coupler?.gross === undefined
      ? []
      : [
          {
            tag: 'CouplerBelowLabel',
            says: 'the coupler is rated below the GVWR on the label',
            figure: inPounds('coupler gross rating', coupler.gross),
            path: 'trailer.coupler.gross',
          },
        ]),
    ...(chains === undefined || each === undefined
      ? []
      : [
          {
            tag: 'ChainsBelowLabel',
            says:
              chains.count === 1
                ? 'the safety chain is weaker than the GVWR on the label'
                : 'the safety chains together are weaker than the GVWR on the label',
            figure: chains.count === 1 ? each : product('chains together', each, constant(ratio(chains.count))),
            path: 'trailer.chains.each',
          },
        ]),
    ...(ball === undefined
      ? []
      : [
          {
            tag: 'BallBelowLabel',
            says: 'the ball is rated below the GVWR on the label',
            figure: inPounds('ball rating', ball),
            path: 'tow.ball.gross',
          },
        ]),
  ];
}

/** `GVWR (1 - t)`, t the lower end of the band: what the axles of a trailer loaded to its label carry at most. */
const onAxlesAtLabel = (gvwr: Derived<'lb'>, { low }: Guideline): Derived<'lb'> =>
  result('axle load at the GVWR and the low tongue share', times(gvwr, minus(1, low)));

/** Compares each part with the label; no label, no comparison. A stated tongue share does not narrow the band, because the label covers every load. */
export function belowLabel(spec: DecodedSpec, { group, at }: Stack, band: Guideline): BelowLabel {
  const { gvwr, axles } = spec.trailer;
  if (gvwr === undefined) return { attention: [], notes: [], decisions: [] };
  const label = inPounds('GVWR', gvwr);
  const weaker: Weaker[] = [...hitchParts(spec)];
  const decisions: Decision[] = [];
  const attention: Note[] = [];
  const ask = ({ tag, says, figure, path }: Weaker, against: Derived<'lb'>): void => {
    const bears = decide(figure, '>=', against);
    decisions.push(bears);
    if (!bears.holds) attention.push({ ...note(tag, says, [figure, against]), paths: ['trailer.gvwr', path] });
  };
  for (const part of weaker) ask(part, label);
  const notes: Note[] = [];
  if (group !== undefined) {
    const says = 'the axles cannot bear the GVWR on the label at the low end of the tongue band';
    const figure = renamed('what the axles carry together', group.capacity);
    ask({ tag: 'AxlesBelowLabel', says, figure, path: 'trailer.axles' }, onAxlesAtLabel(label, band));
  }
  const jack = jackAtLabel(spec, label, band.high, at);
  if (jack !== undefined) {
    const says = 'the jack is rated below the load at its foot at the GVWR and the top of the tongue band';
    ask({ tag: 'JackBelowLabel', says, figure: jack.limit, path: 'trailer.jack.rating' }, jack.load);
  }
  const gawrs = collected(axles, ({ gawr }, i) => (gawr === undefined ? [] : [inPounds(`axle ${i + 1} GAWR`, gawr)]));
  if (gawrs.length > 1 && gawrs.length === axles.length) {
    const all = sum('sum of the GAWRs', gawrs);
    const more = decide(all, '>', label);
    decisions.push(more);
    const says = 'The axle ratings add up to more than the GVWR. That grants nothing: the GVWR stands.';
    if (more.holds) notes.push(note('SumOfGawrsGrantsNothing', says, [all, label]));
  }
  if (axles.every(({ brakes }) => brakes === undefined)) {
    const heavy = decide(label, '>', braked);
    decisions.push(heavy);
    if (heavy.holds)
      attention.push({
        ...note('NoBrakesTold', 'no brakes are told for a trailer of more than 3,000 lb', [label]),
        paths: axles.map((_, i) => `trailer.axles.${i}.brakes`),
      });
  }
  return { attention, notes, decisions };
}
