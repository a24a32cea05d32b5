/** The ids of open questions, by their words, and the keys of the spec that would answer them. */
import type { DecodedSpec } from '../../spec/index.js';
import {
  axleKeys,
  brakesKeys,
  everyAxle,
  type Keys,
  partsOf,
  pieceKeys,
  placeKeys,
  sideKeys,
  tiedownKeys,
  unbalanced,
  unplaced,
  unweighed,
  withoutPlace,
  withoutTongue,
} from './wanting-keys.js';

interface Row {
  readonly asks: RegExp;
  readonly id: string;
  readonly keys: (found: readonly string[], missing: string, spec: DecodedSpec) => Keys;
}

/** By the words of the question; `$1` in an id is what the first parentheses found. */
export const rows: readonly Row[] = [
  { asks: /^whether .+ is wider than /, id: 'width', keys: () => [] },
  { asks: /^whether .+ stands on the deck$/, id: 'on-deck', keys: () => [] },
  { asks: /^whether .+ stand clear of each other/, id: 'side-by-side', keys: () => [] },
  { asks: /^whether pieces stand on one another$/, id: 'pieces-apart', keys: () => ['cargo'] },
  { asks: /^tongue band of the place$/, id: 'tongue-practice', keys: () => ['trailer.practice'] },
  { asks: /^axle loads by the spring rates/, id: 'spring-rates', keys: () => [] },
  { asks: /^axle (\d+), and payload by axles/, id: 'axle-$1/rating', keys: ([, n]) => axleKeys(n, 'gawr') },
  { asks: /^scale tickets$/, id: 'tickets', keys: () => ['tickets'] },
  { asks: /^axle (\d+) brakes against its GAWR$/, id: 'axle-$1/parts/brakes', keys: ([, n]) => axleKeys(n, 'brakes') },
  { asks: /^axle (\d+) parts against its GAWR$/, id: 'axle-$1/gawr', keys: ([, n]) => axleKeys(n, 'gawr') },
  { asks: /^axle (\d+) parts$/, id: 'axle-$1/parts', keys: ([, n], missing) => axleKeys(n, ...partsOf(missing)) },
  {
    asks: /^axle (\d+) tires at the pressure/,
    id: 'axle-$1/tires/as-run',
    keys: ([, n]) => axleKeys(n, 'tires.pressure'),
  },
  { asks: /^axle (\d+) tire/, id: 'axle-$1/tires', keys: ([, n]) => axleKeys(n, 'tires.molded') },
  { asks: /^axle groups$/, id: 'axle-groups', keys: () => ['tow.front', 'tow.rear', 'tow.wheelbase', 'tow.overhang'] },
  { asks: /^axle loads, and payload by axles/, id: 'sharing', keys: () => ['trailer.sharing'] },
  { asks: /^axle loads, tongue, and payload/, id: 'axle-places', keys: (_, __, spec) => withoutPlace(spec) },
  {
    asks: /^axle loads and tongue$/,
    id: 'balance',
    keys: (_, __, spec) => [...withoutTongue(spec), ...unplaced(spec)],
  },
  { asks: /^brakes against the GAWRs$/, id: 'brake-capacity', keys: (_, missing, spec) => brakesKeys(missing, spec) },
  { asks: /^coupler, chains and tow vehicle$/, id: 'tow/gross', keys: (_, __, spec) => unweighed(spec) },
  { asks: /^gross weight and payload against GVWR$/, id: 'gvwr', keys: () => ['trailer.gvwr'] },
  { asks: /^gross weight and payload$/, id: 'gross', keys: (_, __, spec) => unweighed(spec) },
  {
    asks: /^hanging up at the edge/,
    id: 'edges',
    keys: (_, __, spec) => pieceKeys(spec, undefined, 'wheelbase', 'lowPoint'),
  },
  {
    asks: /^independent axles off level$/,
    id: 'off-level',
    keys: (_, __, spec) => [...everyAxle(spec, 'rate'), 'trailer.ballAboveLevel'],
  },
  {
    asks: /^jack against tongue$/,
    id: 'jack',
    keys: (_, missing, spec) => (missing.includes('rating') ? ['trailer.jack'] : unbalanced(spec)),
  },
  {
    asks: /^lifting the tongue while/,
    id: 'loading/uplift',
    keys: (_, __, spec) => ['trailer.deck', ...unweighed(spec), ...withoutTongue(spec)],
  },
  {
    asks: /^ramps against the machine$/,
    id: 'ramps/rating',
    keys: () => ['trailer.ramps.rating', 'trailer.ramps.basis'],
  },
  { asks: /^ramps$/, id: 'ramps', keys: () => ['trailer.ramps'] },
  { asks: /^side to side$/, id: 'side-to-side', keys: (_, missing, spec) => sideKeys(missing, spec) },
  { asks: /^the laden trailer/, id: 'cargo', keys: () => ['cargo'] },
  {
    asks: /^tiedowns of (.*)$/,
    id: 'tiedowns',
    keys: ([, name], missing, spec) => pieceKeys(spec, name, ...tiedownKeys(missing)),
  },
  { asks: /^tow vehicle$/, id: 'tow', keys: () => ['tow'] },
  {
    asks: /^weight distributing bars$/,
    id: 'bars',
    keys: () => ['tow.front', 'tow.rear', 'tow.wheelbase', 'tow.overhang'],
  },
  {
    asks: /^what the truck holds down/,
    id: 'loading/truck-hold',
    keys: () => ['tow.rear', 'tow.wheelbase', 'tow.overhang'],
  },
  {
    asks: /^where (.*) may stand$/,
    id: 'placement',
    keys: ([, name], missing, spec) => placeKeys(name, missing, spec),
  },
  { asks: /^where to set the ramps$/, id: 'ramps/setting', keys: () => ['trailer.ramps.setting'] },
  { asks: /scale tickets$/, id: 'tickets', keys: () => ['tickets'] },
];
