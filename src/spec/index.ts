/**
 * The spec as one writes it: its keys, its reader, what contradicts what.
 *
 * @module spec
 */
export { type Contradictions, contradictionsIn, type Partly } from './contradictions.js';
export {
  decodeCutList,
  decodeDeck,
  decodeLocalRules,
  decodeMember,
  decodeSpec,
  decodeSurface,
  readJson,
} from './decode.js';
export type { FaultTag, MalformedJson, Problem, SpecError, UndecodableSpec } from './errors.js';
export { type SpecKey, specKeys } from './keys.js';
export { leafBehind, leavesOf } from './leaves.js';
export { type SpecSchema, specJsonSchema, specSchema } from './schema.js';
export { specCodec } from './spec.js';
export type * from './types/axles.js';
// The older names, until every file says what it means.
export type { DecodedAxle as AxleSpec, DecodedTires as TireSpec } from './types/axles.js';
export type * from './types/cargo.js';
export type { DecodedCargo as CargoSpec, DecodedTiedown as TiedownSpec } from './types/cargo.js';
export type * from './types/curb.js';
export type { DecodedCurb as CurbSpec } from './types/curb.js';
export type * from './types/figures.js';
export type * from './types/frame.js';
export type * from './types/made.js';
export type * from './types/rules.js';
export type { DecodedRules as RulesSpec } from './types/rules.js';
export type * from './types/spec.js';
export type { DecodedSpec as Spec } from './types/spec.js';
export type * from './types/tickets.js';
export type * from './types/tow.js';
export type { DecodedTow as TowSpec } from './types/tow.js';
export type * from './types/trailer.js';
export type { DecodedTrailer as TrailerSpec } from './types/trailer.js';
export { wordsForProblem, wordsForSpec } from './words.js';
export { type Json, writtenSpec } from './written.js';
