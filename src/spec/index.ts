/**
 * The spec as one writes it: its keys, its reader, what contradicts what.
 *
 * @module spec
 */
export { contradictionsIn } from './contradictions.js';
export { decodeSpec, readJson } from './decode.js';
export * from './errors.js';
export { leavesOf } from './leaves.js';
export {
  type AxleSpec,
  type CargoSpec,
  type CurbSpec,
  type RulesSpec,
  type Spec,
  specCodec,
  type TiedownSpec,
  type TireSpec,
  type TowSpec,
  type TrailerSpec,
} from './spec.js';
export { wordsForSpec } from './words.js';
export { type Json, writtenSpec } from './written.js';
