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
export { specJsonSchema } from './schema.js';
export { specCodec } from './spec.js';
export { type SpecSchema, specSchema } from './standard-schema.js';
export type * from './types/axles.js';
export type * from './types/cargo.js';
export type * from './types/curb.js';
export type * from './types/deck.js';
export type * from './types/figures.js';
export type * from './types/frame.js';
export type * from './types/made.js';
export type * from './types/member.js';
export type * from './types/rules.js';
export type * from './types/spec.js';
export type * from './types/tickets.js';
export type * from './types/tow.js';
export type * from './types/trailer.js';
export { wordsForProblem, wordsForSpec } from './words.js';
export { type Json, writtenSpec } from './written.js';
