/**
 * Structural members: published sections, properties from geometry, plate, sheet and boards, frame and deck weight, a beam check.
 *
 * @module members
 */
export { type ReadDesignation, readDesignation } from './designation.js';
export * from './errors.js';
export * from './member.js';
export type * from './rows.js';
export type * from './stock-rows.js';
export { allSections, dimension, section, type Section, type SectionOf } from './section.js';
export { membersTables } from './tables.js';
export { wordsForMembers } from './words.js';
export { aluminiumDensity, steelDensity, steelDensityOf40_8, standardTaper } from './constants.js';
export type * from './outline.js';
export { outlineOf } from './outline-of.js';
export { sectionProperties, type SectionProperties } from './section-properties.js';
export * from './board.js';
export * from './plate.js';
export { densityOfWood, type Wood } from './wood.js';
export * from './compare-sections.js';
export type * from './cut-list.js';
export * from './deck-growth.js';
export { type Deck, type DeckArea, deckWeight } from './deck-weight.js';
export { frameWeight, type WeightLine, type WeightList } from './frame-weight.js';
export * from './beam/allowable.js';
export { beam, type BeamAnswer, type BeamMember, type BeamStation, type BendingCheck } from './beam/beam.js';
export { type Load, ownWeight, type PointLoad, type SpreadLoad } from './beam/loads.js';
export type { Reactions } from './beam/reactions.js';
export type { Spans } from './beam/spans.js';
export { readCutList, readDeck } from './codec.js';
export { readMember } from './member-codec.js';
export { readSurface } from './surface-codec.js';
