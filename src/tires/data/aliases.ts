/** Small sizes written by diameter and width: source ST-3. Columns: as written, the metric size it is. */
import type { AliasRow } from '../rows.js';

export const aliases = [
  ['16.5x6.5-8', '165/65-8'],
  ['18.5x8.5-8', '215/60-8'],
  ['20.5x8.0-10', '205/65-10'],
] as const satisfies readonly AliasRow[];
