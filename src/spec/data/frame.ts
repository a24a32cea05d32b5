import type { KeyRows } from '../key-row.js';

export const frameKeys = [
  { type: 'LengthwiseLine', about: 'Pieces that run lengthwise; the key `from` without `spacing` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'rails', ''],
    ['member', 'what it is cut from', ''],
    ['length', 'cut length of one piece', 'drawing', '20 ft', ''],
    ['count', 'how many pieces', 'drawing', 2, ''],
    ['from', 'where their front end stands', 'drawing', '48 in', ''],
  ] },
  { type: 'PlacedLine', about: 'Pieces at one place; the key `at` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'header', ''],
    ['member', 'what it is cut from', ''],
    ['length', 'cut length of one piece', 'drawing', '83 in', ''],
    ['count', 'how many pieces', 'drawing', 1, ''],
    ['at', 'where they stand', 'drawing', '49 in', ''],
  ] },
  { type: 'SpacedLine', about: 'Pieces at a spacing; the key `spacing` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'crossmembers', ''],
    ['member', 'what it is cut from', ''],
    ['length', 'cut length of one piece', 'drawing', '83 in', ''],
    ['spacing', 'from one to the next', 'drawing', '16 in', ''],
    ['over', 'the length they are spread over', 'drawing', '20 ft', ''],
    ['from', 'where the first of them may stand', 'drawing', '62 in', ''],
    ['rule', 'how a spacing becomes a number of pieces', 'drawing', 'first at the start', ''],
  ] },
  { type: 'WeighedLine', about: 'What was weighed; the key `weight` says so.', rows: [
    ['name', 'what it is', 'you choose it', 'coupler', ''],
    ['weight', 'what it weighs', 'scale or sheet', '35 lb', ''],
    ['at', 'where its middle stands', 'drawing', '4 in', ''],
  ] },
  { type: 'FlatBarMember', rows: [['flatBar', 'a flat bar', '']] },
  { type: 'FlatBar', rows: [
    ['thickness', 'its thickness', 'drawing', '3/8 in', ''],
    ['width', 'its width', 'drawing', '3 in', ''],
    ['material', 'what it is made of: `steel`, `steel at 40.8 lb/ft2 per inch`, `aluminium`, or a density', 'drawing', 'steel', ''],
  ] },
  { type: 'RoundBarMember', rows: [['roundBar', 'a round bar', '']] },
  { type: 'RoundBar', rows: [
    ['diameter', 'its diameter', 'drawing', '1 in', ''],
    ['material', 'what it is made of: a name, or a density', 'drawing', 'steel', ''],
  ] },
  { type: 'FormedChannelMember', rows: [['formedChannel', 'a channel bent from plate', '']] },
  { type: 'FormedChannel', rows: [
    ['depth', 'outside depth', 'drawing', '6 in', ''],
    ['flangeWidth', 'outside width of a flange', 'drawing', '2 in', ''],
    ['thickness', 'thickness of the plate', 'drawing', '3/16 in', ''],
    ['insideRadius', 'inside radius of the bends', 'drawing', '3/16 in', ''],
    ['material', 'what it is made of: a name, or a density', 'drawing', 'steel', ''],
  ] },
  { type: 'BoardMember', rows: [['board', 'a board', '']] },
  { type: 'Board', rows: [
    ['size', 'nominal size', 'yard ticket', '2x8', ''],
    ['wood', 'what wood it is', ''],
  ] },
  { type: 'StatedMember', rows: [['own', 'a member of known weight', '']] },
  { type: 'OwnMember', rows: [
    ['name', 'what it is', 'you choose it', 'side rail', ''],
    ['weightPerFoot', 'its weight per length', "maker's sheet, or a piece on the scale", '2.35 lb/ft', ''],
  ] },
  { type: 'WoodByNdsGravity', rows: [
    ['by', 'specific gravity of the NDS, by oven-dry volume', 'choose', 'NDS gravity', ''],
    ['species', 'species or combination, as the table prints it', 'grade stamp', 'Southern Pine', ''],
    ['moisture', 'moisture content', 'grade stamp, or a meter', '19 %', ''],
  ] },
  { type: 'WoodByHandbookGravity', rows: [
    ['by', 'specific gravity of the handbook, by the volume at 12 %', 'choose', 'handbook gravity at 12 %', ''],
    ['species', 'species, as the table prints it', 'yard ticket', 'Oak, white', ''],
  ] },
  { type: 'WoodByAirDryRange', rows: [
    ['by', 'the printed range of air-dry weights', 'choose', 'air-dry range', ''],
    ['species', 'species, as the table prints it', 'yard ticket', 'Keruing / apitong', ''],
    ['end', 'which end of the range', 'your judgement', 'high', ''],
  ] },
  { type: 'TreatedWood', rows: [
    ['by', 'the printed range for treated wood', 'choose', 'treated', ''],
    ['state', 'freshly treated, or dried since', 'look', 'treated, dried', ''],
    ['end', 'which end of the range', 'your judgement', 'high', ''],
  ] },
  { type: 'WoodByDensity', rows: [
    ['by', 'a density of your own', 'choose', 'density', ''],
    ['density', 'its weight per volume', 'a board on the scale', '38 lb/ft3', ''],
  ] },
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
