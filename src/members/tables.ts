/** Every table of this chapter, for the list of sources and for laws over all of them. */
import type { Table } from '../trace/index.js';
import { allowableBending } from './data/allowable-bending.js';
import { angles } from './data/angles.js';
import { beams } from './data/beams.js';
import { channels } from './data/channels.js';
import { expandedMetal } from './data/expanded-metal.js';
import { floorPlate } from './data/floor-plate.js';
import { furtherBeams } from './data/further-beams.js';
import { furtherChannels } from './data/further-channels.js';
import { leastWebs } from './data/least-webs.js';
import { lumberSizes } from './data/lumber-sizes.js';
import { materialStrength } from './data/material-strength.js';
import { ndsGravity } from './data/nds-gravity.js';
import { pipes } from './data/pipes.js';
import { plateWeights } from './data/plate-weights.js';
import { rectangularTubes } from './data/rectangular-tubes.js';
import { roundTubes } from './data/round-tubes.js';
import { sheetGauges } from './data/sheet-gauges.js';
import { slendernessLimits } from './data/slenderness-limits.js';
import { treatedWood } from './data/treated-wood.js';
import { woodDensity } from './data/wood-density.js';
import type { AnyShapeRow } from './sections/shape-rows.js';

/** The tables of shapes, in the order a designation is looked for. */
export const shapeTables: readonly Table<AnyShapeRow>[] = [
  channels,
  furtherChannels,
  beams,
  furtherBeams,
  angles,
  rectangularTubes,
  roundTubes,
  pipes,
];

/** All tables of this chapter. @example membersTables.map((table) => table.name) */
export const membersTables: readonly Table<unknown>[] = [
  ...shapeTables,
  leastWebs,
  plateWeights,
  sheetGauges,
  floorPlate,
  expandedMetal,
  lumberSizes,
  ndsGravity,
  woodDensity,
  treatedWood,
  materialStrength,
  allowableBending,
  slendernessLimits,
];
