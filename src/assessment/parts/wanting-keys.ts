/** The keys of a spec that are wanting, by what hangs on them. */
import type { DecodedSpec } from '../../spec/index.js';

export type Keys = readonly string[];

/** Where a piece stands is not known. */
export const unplaced = ({ cargo = [] }: DecodedSpec): Keys =>
  cargo.flatMap(({ at, front, balancePoint }, i) =>
    at !== undefined || (front !== undefined && balancePoint !== undefined)
      ? []
      : [`cargo.${i}.at`, ...(front === undefined ? [`cargo.${i}.front`] : []), `cargo.${i}.balancePoint`],
  );

/** The weight of the empty trailer is not known. */
export const unweighed = ({ trailer: { curb } }: DecodedSpec): Keys =>
  curb?.weight !== undefined || [curb?.items, curb?.frame, curb?.deck].some((list) => (list?.length ?? 0) > 0)
    ? []
    : ['trailer.curb.weight', 'trailer.curb.items'];

export const withoutPlace = ({ trailer: { axles } }: DecodedSpec): Keys =>
  axles.flatMap(({ at }, i) => (at === undefined ? [`trailer.axles.${i}.at`] : []));
const withoutSharing = ({ trailer: { axles, sharing } }: DecodedSpec): Keys =>
  axles.length > 1 && sharing === undefined ? ['trailer.sharing'] : [];
export const withoutTongue = ({ trailer: { curb } }: DecodedSpec): Keys =>
  curb?.weight !== undefined && curb.tongue === undefined && curb.tongueByLever === undefined
    ? ['trailer.curb.tongue', 'trailer.curb.tongueByLever']
    : [];

/** Whatever the balance of the laden trailer wants. */
export const unbalanced = (spec: DecodedSpec): Keys => [
  ...unweighed(spec),
  ...withoutTongue(spec),
  ...withoutSharing(spec),
  ...withoutPlace(spec),
  ...unplaced(spec),
];

/** The facts of the tow side, as the towing chapter calls them, and their keys. */
const towFacts: Readonly<Record<string, string>> = {
  'front axle, truck alone': 'tow.front',
  'rear axle, truck alone': 'tow.rear',
  'tow vehicle GVWR': 'tow.gvwr',
  'tow vehicle front GAWR': 'tow.frontGawr',
  'tow vehicle rear GAWR': 'tow.rearGawr',
  GCWR: 'tow.gcwr',
  wheelbase: 'tow.wheelbase',
  overhang: 'tow.overhang',
  'receiver gross': 'tow.receiver.gross',
  'receiver tongue': 'tow.receiver.tongue',
  'ball mount gross': 'tow.ballMount.gross',
  'ball mount tongue': 'tow.ballMount.tongue',
  'ball gross': 'tow.ball.gross',
  'coupler gross': 'trailer.coupler.gross',
  'coupler tongue': 'trailer.coupler.tongue',
  'safety chains': 'trailer.chains',
  'trailer tow rating': 'tow.trailerRating',
  'tow vehicle tongue': 'tow.tongueRating',
  'occupant and cargo placard': 'tow.placard.limit',
  'people aboard': 'tow.placard.people',
  'cargo aboard': 'tow.placard.cargo',
};

export function towKeys(missing: string, spec: DecodedSpec): Keys {
  const told = Object.entries(towFacts).flatMap(([fact, key]) => (missing.includes(fact) ? [key] : []));
  if (missing.includes('gross weight')) return [...told, ...unweighed(spec)];
  return missing.includes('tongue load') ? [...told, ...unbalanced(spec)] : told;
}

/** The first axle is number 1 for people and 0 in a path. */
export const axleKeys = (number: string | undefined, ...keys: Keys): Keys =>
  keys.map((key) => `trailer.axles.${Number(number) - 1}.${key}`);
export const everyAxle = ({ trailer: { axles } }: DecodedSpec, key: string): Keys =>
  axles.map((_, i) => `trailer.axles.${i}.${key}`);
export const pieceKeys = ({ cargo = [] }: DecodedSpec, name: string | undefined, ...keys: Keys): Keys => {
  const found = cargo.findIndex((piece) => piece.name === name);
  return keys.map((key) => `cargo.${Math.max(0, found)}.${key}`);
};

export const partsOf = (missing: string): Keys =>
  ['beam', 'springs', 'hubs', 'wheels', 'tires'].filter((part) => missing.includes(part));

export const brakesKeys = (missing: string, spec: DecodedSpec): Keys => {
  const named = [...missing.matchAll(/axle (\d+)/g)].flatMap(([, n]) => axleKeys(n, 'gawr'));
  return named.length > 0 ? named : everyAxle(spec, 'brakes');
};
export const sideKeys = (missing: string, spec: DecodedSpec): Keys => {
  if (missing.includes('track')) return ['trailer.track'];
  if (missing.includes('balance')) return unbalanced(spec);
  return (spec.cargo ?? []).flatMap(({ rightOfMiddle }, i) =>
    rightOfMiddle === undefined ? [`cargo.${i}.rightOfMiddle`] : [],
  );
};
export const tiedownKeys = (missing: string): Keys => {
  const [, n] = /^what tiedown (\d+) is$/.exec(missing) ?? [];
  if (n !== undefined) return [`tiedowns.${Number(n) - 1}`];
  return missing.includes('section') ? ['length', 'section'] : ['tiedowns'];
};
export const placeKeys = (name: string | undefined, missing: string, spec: DecodedSpec): Keys => {
  if (missing.includes('ends of the deck')) return ['trailer.deck'];
  if (missing.includes('balance of')) return unbalanced(spec);
  return pieceKeys(spec, name, 'length', 'balancePoint');
};
