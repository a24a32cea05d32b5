/** The keys of a spec that are missing, by what depends on them. */
import type { DecodedCargo, DecodedSpec } from '../../spec/index.js';
import { collected } from '../../units/internal.js';

export type Keys = readonly string[];

/** An axle: the first is number 1 for people and in ids, and 0 in a path. */
export interface AxleName {
  readonly of: string;
  readonly id: string;
  readonly path: string;
}

export const axleName = (index: number): AxleName => ({
  of: `axle ${index + 1}`,
  id: `axle-${index + 1}`,
  path: `trailer.axles.${index}`,
});

/** Those of these keys that a record lacks, as paths. */
export const wantingOf = <K extends string>(
  path: string,
  record: { readonly [key in K]?: unknown } | undefined,
  ...keys: readonly K[]
): Keys => collected(keys, (key) => (record?.[key] === undefined ? [`${path}.${key}`] : []));

/** Those of these keys that axles lack. */
export const wantingOfAxles = <K extends keyof DecodedSpec['trailer']['axles'][number]>(
  { axles }: Pick<DecodedSpec['trailer'], 'axles'>,
  ...keys: readonly K[]
): Keys => collected(axles, (axle, i) => wantingOf(axleName(i).path, axle, ...keys));

/** Those of these keys that pieces of cargo lack. */
export const wantingOfCargo = (
  { cargo = [] }: Pick<DecodedSpec, 'cargo'>,
  ...keys: readonly (keyof DecodedCargo)[]
): Keys => collected(cargo, (piece, i) => wantingOf(`cargo.${i}`, piece, ...keys));

/** Keys of a piece whose place is unknown: its balance point, or its front and the distance from there to its balance point. */
export const unplacedPiece = (piece: DecodedCargo, index: number): Keys =>
  piece.at !== undefined || (piece.front !== undefined && piece.balancePoint !== undefined)
    ? []
    : wantingOf(`cargo.${index}`, piece, 'at', 'front', 'balancePoint');

/** Keys of all pieces whose place is unknown; of all of them, or of all but one. */
export const unplaced = ({ cargo = [] }: Pick<DecodedSpec, 'cargo'>, but?: number): Keys =>
  collected(cargo, (piece, i) => (i === but ? [] : unplacedPiece(piece, i)));

/** The weight of the empty trailer is not known. */
export const unweighed = ({ trailer: { curb } }: DecodedSpec): Keys =>
  curb?.weight !== undefined || [curb?.items, curb?.frame, curb?.deck].some((list) => (list?.length ?? 0) > 0)
    ? []
    : ['trailer.curb.weight', 'trailer.curb.items'];

/** How axles share is not known, or for three and more independent ones their rates. */
const unshared = ({ trailer }: DecodedSpec): Keys => {
  const { axles, sharing } = trailer;
  if (axles.length < 2) return [];
  if (sharing === undefined) return ['trailer.sharing'];
  return axles.length > 2 && sharing === 'independent' ? wantingOfAxles(trailer, 'rate') : [];
};

/** The trailer was weighed, but not its tongue. */
export const withoutTongue = ({ trailer: { curb } }: Pick<DecodedSpec, 'trailer'>): Keys =>
  curb?.weight !== undefined && curb.tongue === undefined && curb.tongueByLever === undefined
    ? ['trailer.curb.tongue', 'trailer.curb.tongueByLever']
    : [];

/** Where the axles act together is not known. */
export const ungrouped = (spec: DecodedSpec): Keys => [...unshared(spec), ...wantingOfAxles(spec.trailer, 'at')];

/** Every key the balance of the empty trailer needs. */
export const unbalancedEmpty = (spec: DecodedSpec): Keys => [
  ...unweighed(spec),
  ...withoutTongue(spec),
  ...ungrouped(spec),
];

/** Every key the balance of the laden trailer needs. */
export const unbalanced = (spec: DecodedSpec): Keys => [...unbalancedEmpty(spec), ...unplaced(spec)];

/** Axle loads of the tow vehicle alone and the place of its ball: the inputs of the hitched axle loads. */
export const unhitched = (
  { tow }: DecodedSpec,
  ...keys: readonly ('front' | 'rear' | 'wheelbase' | 'overhang')[]
): Keys => wantingOf('tow', tow?.overhang === 'unknown' ? { ...tow, overhang: undefined } : tow, ...keys);
