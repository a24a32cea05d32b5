/**
 * Structural members: published sections, properties from geometry, plate, sheet and boards, frame and deck weight, a beam check.
 *
 * @module members
 */

export * from './beam/allowable.js';
export { beam } from './beam/beam.js';
export type * from './beam/beam-answer.js';
export { type DeflectionCheck, deflectionLimit } from './beam/deflection-limit.js';
export { type Load, ownWeight, type PointLoad, type SpreadLoad } from './beam/loads.js';
export type { Reactions } from './beam/reactions.js';
export type { Spans } from './beam/spans.js';
export { aluminiumDensity, standardTaper, steelDensity, steelDensityByPlate } from './constants.js';
export * from './errors.js';
export type * from './frame/cut-list.js';
export * from './frame/deck-growth.js';
export { type Deck, type DeckArea, deckWeight } from './frame/deck-weight.js';
export { frameWeight, type WeightLine, type WeightList } from './frame/frame-weight.js';
export * from './frame/member.js';
export * from './frame/payload-by-length.js';
export * from './sections/compare-sections.js';
export { type ReadDesignation, readSectionName } from './sections/designation.js';
export {
  allSections,
  publishedSection,
  type Section,
  type SectionOf,
  sectionDimension,
} from './sections/published-section.js';
export type * from './sections/shape-rows.js';
export { type BentChannel, blankWidth } from './shapes/bent-blank.js';
export type * from './shapes/outline.js';
export { outlineOf } from './shapes/outline-of.js';
export { type SectionProperties, sectionProperties } from './shapes/section-properties.js';
export { type ChannelSlenderness, channelSlenderness, type FlatSlenderness } from './shapes/slenderness.js';
export * from './stock/board.js';
export { expandedMetalWeight, floorPlateWeight, type SurfaceWeight } from './stock/patterned.js';
export * from './stock/plate.js';
export { type GaugeSystem, gaugeSystems, type Sheet, sheetWeight } from './stock/sheet.js';
export type * from './stock/stock-rows.js';
export { densityOfWood, type Wood } from './stock/wood.js';
export { membersTables } from './tables.js';
export { wordsForMembers } from './words.js';
