/** The leaflet for the buyer as data: half a page, with boxes for missing facts. */
import { type Assessment, libraryVersion } from '../assessment/index.js';
import { type Check, tightest } from '../ratings/index.js';
import { type Derived, leastOf, nodesOf, type Source } from '../trace/index.js';
import { compare, lb } from '../units/index.js';
import { collected } from '../units/internal.js';
import type { Brief, BriefExtras } from './brief-data.js';
import { briefOf } from './brief-of.js';
import { cautions } from './cautions.js';
import type { Leaflet, LeafletBar, LoadingStep } from './leaflet-data.js';

/** What a leaflet needs in addition to the assessment. */
export interface LeafletOptions extends BriefExtras {
  /** The date to print, as text. The library does not read the clock, so that the same input gives the same leaflet. */
  readonly date: string;
}

/** Of checks with one of these ids the one closest to its limit, standing level. */
function barOf(name: string, checks: readonly Check[], id: RegExp): readonly LeafletBar[] {
  const [check] = tightest(checks.filter((each) => id.test(each.id)));
  return check === undefined ? [] : [{ name, check }];
}

const tongueLimits = /(coupler|receiver|ball-mount)\/tongue$|tongue-rating$/;

const barsOf = ({ checks, runningGear: { systems } }: Assessment): readonly LeafletBar[] => [
  ...barOf('whole trailer', checks, /^(gvwr|coupler\/gross)$/),
  ...barOf('tongue', checks, tongueLimits),
  ...collected(systems, ({ label }, i) => barOf(label, checks, new RegExp(`^axle-${i + 1}/(gawr|weakest-part)$`))),
];

/** Three checks, each of another rating, the closest to its limit first. */
function tightestThree(checks: readonly Check[]): readonly Check[] {
  const found: Check[] = [];
  let rest = checks;
  while (found.length < 3 && rest.length > 0) {
    const [next] = tightest(rest);
    if (next === undefined) break;
    found.push(next);
    const rating = next.id.replace(/@.*$/, '');
    rest = rest.filter(({ id }) => id.replace(/@.*$/, '') !== rating);
  }
  return found;
}

/** The most that the band and every limit on the tongue allow together. */
const mostOnTongue = ({ checks }: Assessment, most: Derived<'lb'>): Derived<'lb'> =>
  leastOf('most tongue load', [most, ...checks.filter(({ id }) => tongueLimits.test(id)).map(({ limit }) => limit)]);

function loadingOf(assessment: Assessment, { places }: Brief): readonly LoadingStep[] {
  const { spec, loading, tiedowns, tongue, pressures } = assessment;
  const { tailLift } = loading;
  const pulls = tailLift !== undefined && compare(tailLift.ball.value, lb(0)) < 0;
  return [
    ...((spec.cargo ?? []).length === 0 ? [] : [{ tag: 'chock' } as const]),
    ...(tailLift && pulls ? [{ tag: 'rear legs', from: tailLift.legs } as const] : []),
    ...collected(places, ({ name, none, from, to }) => (none ? [] : [{ tag: 'place', of: name, from, to } as const])),
    ...tiedowns.pieces.map(({ name, answer }) => ({ tag: 'tiedowns', of: name, from: answer.needed }) as const),
    ...(tongue
      ? [
          {
            tag: 'weigh the tongue',
            from: tongue.guideline.least,
            to: mostOnTongue(assessment, tongue.guideline.most),
          } as const,
        ]
      : []),
    ...pressures.map(({ of, needed }) => ({ tag: 'tires', of, from: needed.pressure }) as const),
  ];
}

/** The printed texts behind the checks, each once, in the order in which they are met. */
function sourcesOf({ checks, partChecks, tongue }: Assessment): readonly string[] {
  const all = [...checks, ...partChecks];
  const sources: readonly (Source | undefined)[] = [
    ...nodesOf(all.map(({ reserve }) => reserve.why)).map((node) => ('source' in node ? node.source : undefined)),
    ...all.map(({ clause }) => clause),
    tongue?.guideline.guideline.source,
  ];
  return [
    ...new Set(
      collected(sources, (source) =>
        source === undefined || source.grade === 'derived' || source.grade === 'memory' ? [] : [source.title],
      ),
    ),
  ];
}

/**
 * What does the buyer take along?
 *
 * Names, verdict, payload and what sets it, the loads as bars, where to park, the three checks closest to their limits, what
 * to do while loading, boxes for missing facts, date, version, sources and cautions.
 *
 * Not a certificate, a manual or a placard: those are the maker's.
 *
 * @param assessment from `assess`
 * @param options the date, as it is to be printed; remedies and sureness where they were asked for
 * @returns the leaflet as data; `leaflet` prints it
 * @example leafletOf(orThrow(assess(spec)), { date: '2026-11-28' }).bars[0].name // whole trailer
 * @source each figure carries its own
 */
export function leafletOf(assessment: Assessment, { date, ...extras }: LeafletOptions): Leaflet {
  const { spec, checks } = assessment;
  const brief = briefOf(assessment, extras);
  const { name } = spec.trailer;
  return {
    names: [...new Set([spec.name ?? name ?? 'Trailer', name ?? spec.name ?? 'Trailer'])],
    brief,
    bars: barsOf(assessment),
    tightest: tightestThree(checks),
    loading: loadingOf(assessment, brief),
    boxes: brief.open,
    date,
    version: libraryVersion,
    sources: sourcesOf(assessment),
    cautions,
  };
}
