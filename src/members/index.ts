/**
 * Structural members: published sections, properties from geometry, plate, sheet and boards, frame and deck weight, a beam check.
 *
 * @module members
 */

export * from './beam/allowable.js';
export { type BeamAnswer, type BeamMember, type BeamStation, type BendingCheck, beam } from './beam/beam.js';
export { type Load, ownWeight, type PointLoad, type SpreadLoad } from './beam/loads.js';
export type { Reactions } from './beam/reactions.js';
export type { Spans } from './beam/spans.js';
export * from './board.js';
export { readCutList, readDeck } from './codec.js';
export * from './compare-sections.js';
export { aluminiumDensity, standardTaper, steelDensity, steelDensityByPlate } from './constants.js';
export type * from './cut-list.js';
export * from './deck-growth.js';
export { type Deck, type DeckArea, deckWeight } from './deck-weight.js';
export { type ReadDesignation, readSectionName } from './designation.js';
export * from './errors.js';
export { frameWeight, type WeightLine, type WeightList } from './frame-weight.js';
export * from './member.js';
export { readMember } from './member-codec.js';
export type * from './outline.js';
export { outlineOf } from './outline-of.js';
export * from './plate.js';
export type * from './rows.js';
export { allSections, publishedSection, type Section, type SectionOf, sectionDimension } from './section.js';
export { type SectionProperties, sectionProperties } from './section-properties.js';
export type * from './stock-rows.js';
export { readSurface } from './surface-codec.js';
export { membersTables } from './tables.js';
export { densityOfWood, type Wood } from './wood.js';
export { wordsForMembers } from './words.js';
