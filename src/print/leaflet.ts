/** The leaflet for the buyer as text: half a page of eighty columns. */
import type { Assessment } from '../assessment/index.js';
import type { Derived } from '../trace/index.js';
import { compare, type Quantity, type ReaderUnits } from '../units/index.js';
import { collected } from '../units/internal.js';
import { overText, payloadItems, placeText } from './brief-words.js';
import { shortCaution } from './cautions.js';
import type { FiguresInPrint } from './figures-in-print.js';
import { barLine } from './leaflet-bars.js';
import type { Leaflet, LoadingStep } from './leaflet-data.js';
import { type LeafletOptions, leafletOf } from './leaflet-of.js';
import { labelWidth } from './page-room.js';
import { figuresIn } from './reader-units.js';
import { folded, width } from './text-layout.js';

/** What a leaflet may be asked for. */
export interface LeafletPrint extends LeafletOptions {
  /** Feet, inches and pounds (`us`, the default), or metres, millimetres and kilograms. */
  readonly units?: ReaderUnits;
}

const verdictWords = {
  over: 'OVER. A rating is exceeded, or something lifts that must press. Do not use it so.',
  attention: 'ATTENTION. No rating is exceeded, but something is not right.',
  within: 'WITHIN. Each check that was made is within its limit.',
  unchecked: 'NOT CHECKED. Nothing could be checked with what was told.',
} as const;

/** From the low end of the band to the least of its high end and every tongue limit; the range may be empty. */
const tongueText = (from: Derived<'lb'>, to: Derived<'lb'>, p: FiguresInPrint): string =>
  compare(from.value, to.value) > 0
    ? `No tongue load serves: the guideline begins at ${p.load(from.value)}, and no more than ${p.capacity(to.value)} is allowed.`
    : `Weigh the tongue when loaded: ${p.load(from.value)} to ${p.capacity(to.value)}.`;

function stepText({ tag, of = '', from, to }: LoadingStep, p: FiguresInPrint): string {
  const load = (figure: LoadingStep['from']): string =>
    figure === undefined ? '' : p.load(figure.value as Quantity<'lb'>);
  switch (tag) {
    case 'chock':
      return 'Stay coupled, set the brakes and chock the trailer wheels before anything climbs.';
    case 'rear legs':
      return `Set the rear legs first: loading pulls the ball up; the legs take up to ${load(from)}.`;
    case 'place':
      return `Park ${of} with its front between ${p.place(from?.value as Quantity<'in'>, 'rear')} and ${p.place(to?.value as Quantity<'in'>, 'front')} behind the coupler.`;
    case 'tiedowns':
      return `Tie ${of} down: the working load limits counted must reach ${load(from)}.`;
    case 'weigh the tongue':
      return tongueText(from as Derived<'lb'>, to as Derived<'lb'>, p);
    case 'tires':
      return `Check the ${of} tires cold: the placard governs; not below ${p.pressure(from?.value as Quantity<'psi'>)}.`;
  }
}

/** Steps that say the same of several axles are one. */
function stepTexts(steps: readonly LoadingStep[], p: FiguresInPrint): readonly string[] {
  const tires = steps.filter(({ tag }) => tag === 'tires');
  const texts = steps.filter(({ tag }) => tag !== 'tires').map((step) => stepText(step, p));
  const pressures = new Set(tires.map((step) => stepText({ ...step, of: '' }, p)));
  const [first] = tires;
  if (first === undefined) return texts;
  return pressures.size === 1
    ? [...texts, stepText({ ...first, of: tires.length === 1 ? (first.of ?? '') : 'trailer' }, p)]
    : [...texts, ...tires.map((step) => stepText(step, p))];
}

const mostBoxes = 3;
const mostOver = 2;

/** The lines of a leaflet that is data already. */
function leafletLines(data: Leaflet, p: FiguresInPrint): readonly string[] {
  const { names, brief, bars, tightest, loading, boxes, date, version, sources } = data;
  const left = boxes.length - mostBoxes;
  const more = brief.over.length - mostOver;
  const block = (label: string, texts: readonly string[]): readonly string[] =>
    collected(texts, (text) => folded(text, width - labelWidth, '  ').split('\n')).map(
      (line, i) => `${(i === 0 ? label : '').padEnd(labelWidth)}${line}`,
    );
  return [
    ...names.slice(0, 2).map((name) => folded(name, width, '  ')),
    ...block('Verdict', [
      verdictWords[brief.verdict],
      ...brief.over.slice(0, mostOver).map((check) => overText(check, p)),
      ...(more > 0 ? [`and ${more} more`] : []),
      ...brief.attention.slice(0, 1).map(({ says }) => says),
      ...(brief.attention.length > 1 ? [`and ${brief.attention.length - 1} more to attend to: see the report`] : []),
    ]),
    ...block('Carries', payloadItems(brief, p)),
    ...bars.map((each) => barLine(each, p)),
    ...block(
      'Park',
      brief.places.map((place) => placeText(place, p)),
    ),
    ...block(
      'Closest',
      tightest.map(
        ({ what, used, reserve }) => `${what}: ${p.used(used.value)} used, reserve ${p.capacity(reserve.value)}`,
      ),
    ),
    ...block('Loading', stepTexts(loading, p)),
    ...block('Fill in', [
      ...boxes.slice(0, mostBoxes).map(boxText),
      ...(left > 0 ? [`[ ] and ${left} more: see the report`] : []),
    ]),
    ...block('Date', [`${date}; trailer-ratings ${version}`]),
    ...block('Sources', [sourceText(sources)]),
    ...block('Cautions', [shortCaution]),
  ];
}

/** What is missing, and what it is for where a line has room for both. */
function boxText({ missing, what }: Leaflet['boxes'][number]): string {
  const [short, long] = [`[ ] ${missing} ______`, `[ ] ${missing} ______ (${what})`];
  return long.length <= width - labelWidth ? long : short;
}

const mostSources = 2;
const sourceText = (sources: readonly string[]): string =>
  sources.length === 0
    ? 'the labels and weights that were told'
    : `${sources.slice(0, mostSources).join('; ')}${sources.length > mostSources ? `; and ${sources.length - mostSources} more` : ''}`;

/**
 * What does the buyer take along, on half a page?
 *
 * Bars are drawn to scale with the limit as their whole width: `#` is load, `.` is reserve, `X` is beyond the limit, with the
 * figures next to them. Places are measured from the coupler rearward, as a tape shows them.
 *
 * Not a certificate, a manual or a placard: those are the maker's.
 *
 * @param assessment from `assess`
 * @param options the date, as it is to be printed; the reader's units; remedies and sureness where they were asked for
 * @returns text of at most 80 columns
 * @example leaflet(orThrow(assess(spec)), { date: '2026-11-28' }).includes('whole trailer') // true
 * @source each figure carries its own
 */
export function leaflet(assessment: Assessment, { units, ...options }: LeafletPrint): string {
  return [...leafletLines(leafletOf(assessment, options), figuresIn(units)), ''].join('\n');
}
