/** The id of a check: what programs look it up by. It does not change with the words of a report. */
import { remembered } from '../units/internal.js';
import type { ComponentKind, RatingKind } from './kinds.js';

/** The last part of the id, by what limits or what bears. */
const lastPart: Readonly<Record<RatingKind | ComponentKind, string>> = {
  GVWR: 'gvwr',
  GAWR: 'gawr',
  'weakest part': 'weakest-part',
  'axle group': 'axle-group',
  tire: 'tire',
  wheel: 'wheel',
  'coupler gross': 'coupler/gross',
  'coupler tongue': 'coupler/tongue',
  'coupling D': 'coupler/d',
  'coupling Dc': 'coupler/dc',
  'coupling V': 'coupler/v',
  'coupling S': 'coupler/s',
  'ball gross': 'tow/ball/gross',
  'ball mount gross': 'tow/ball-mount/gross',
  'ball mount tongue': 'tow/ball-mount/tongue',
  'receiver gross': 'tow/receiver/gross',
  'receiver tongue': 'tow/receiver/tongue',
  'trailer tow rating': 'tow/trailer-rating',
  'tow vehicle tongue': 'tow/tongue-rating',
  'tow vehicle GVWR': 'tow/gvwr',
  'tow vehicle front GAWR': 'tow/front-gawr',
  'tow vehicle rear GAWR': 'tow/rear-gawr',
  'occupant and cargo placard': 'tow/placard',
  GCWR: 'tow/gcwr',
  'safety chains': 'chains',
  jack: 'jack',
  'brake capacity': 'brake-capacity',
  'ramp pair, axle': 'ramps/axle',
  'ramp pair, machine': 'ramps/machine',
  'rear legs': 'rear-legs',
  beam: 'parts/beam',
  springs: 'parts/springs',
  hubs: 'parts/hubs',
  wheels: 'parts/wheels',
  tires: 'parts/tires',
  brakes: 'parts/brakes',
};

/** Lower case, a hyphen for whatever is neither letter nor digit. */
const slug = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** `axle 1 heavier side` is `axle-1/heavier-side`. */
const pathOfPart = remembered((part) => {
  const [, axle, rest = ''] = /^(axle \d+)(.*)$/.exec(part) ?? [];
  return [axle ?? part, rest]
    .map(slug)
    .filter((each) => each !== '')
    .join('/');
});

/** `bars on, off level` is `bars-on+off-level`. */
const wayOfStanding = remembered((how) => how.split(', ').map(slug).join('+'));

/**
 * What is this check called by programs?
 *
 * The part, when there are several alike; what limits it; behind `@` the way of standing: `axle-1/gawr`,
 * `tow/receiver/tongue@bars-on`, `axle-2/heavier-side/tire@off-level+bars-on`.
 *
 * @param kind what limits the load, or the part that must bear a rating
 * @param part which one: `axle 1`
 * @param how the way of standing: `bars on`
 * @example checkId('receiver tongue', undefined, 'bars on') // tow/receiver/tongue@bars-on
 */
export function checkId(kind: RatingKind | ComponentKind, part?: string, how?: string): string {
  const place = part === undefined ? '' : `${pathOfPart(part)}/`;
  const standing = how === undefined ? '' : `@${wayOfStanding(how)}`;
  return `${place}${lastPart[kind]}${standing}`;
}
