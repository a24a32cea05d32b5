import type { KeyRows } from '../key-row.js';

export const memberKeys = [
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
] as const satisfies readonly KeyRows[];
