import type { KeyRows } from '../key-row.js';

export const deckKeys = [
  { type: 'DeckArea', rows: [
    ['name', 'what it is', 'you choose it', 'planking', ''],
    ['length', 'along the trailer', 'drawing', '18 ft', ''],
    ['width', 'across it', 'drawing', '83 in', ''],
    ['from', 'where its front edge stands', 'drawing', '62 in', ''],
    ['surface', 'what it is laid with', ''],
  ] },
  { type: 'BoardSurface', rows: [['boards', 'boards laid edge to edge', '']] },
  { type: 'PlateSurface', rows: [['plate', 'plain plate', '']] },
  { type: 'Plate', rows: [
    ['thickness', 'its thickness', 'drawing', '3/16 in', ''],
    ['material', 'what it is made of: a name, or a density', 'drawing', 'aluminium', ''],
  ] },
  { type: 'SheetSurface', rows: [['sheet', 'sheet by its gauge', '']] },
  { type: 'Sheet', rows: [
    ['gauge', 'its gauge number', 'drawing', 11, ''],
    ['system', 'the gauge system', 'drawing', "manufacturers' standard", ''],
  ] },
  { type: 'FloorPlateSurface', rows: [['floorPlate', 'raised-pattern floor plate by its nominal thickness in inches, as text', 'drawing', '1/8', '']] },
  { type: 'ExpandedMetalSurface', rows: [['expandedMetal', 'expanded metal by its style', 'drawing', '3/4 #9', '']] },
  { type: 'StatedSurface', rows: [['weightPerSquareFoot', 'its weight per area', "maker's sheet", '4.75 lb/ft2', '']] },
] as const satisfies readonly KeyRows[];
