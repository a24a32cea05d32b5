/** Load index and kilograms, 181 to 200: source LI-1 alone and the decade pattern; 182 and 193 also LI-7. */
import type { LoadIndexRow } from '../rows.js';

export const loadIndexHigh = [
  ['181', '8250'],
  ['182', '8500'],
  ['183', '8750'],
  ['184', '9000'],
  ['185', '9250'],
  ['186', '9500'],
  ['187', '9750'],
  ['188', '10000'],
  ['189', '10300'],
  ['190', '10600'],
  ['191', '10900'],
  ['192', '11200'],
  ['193', '11500'],
  ['194', '11800'],
  ['195', '12150'],
  ['196', '12500'],
  ['197', '12850'],
  ['198', '13200'],
  ['199', '13600'],
  ['200', '14000'],
] as const satisfies readonly LoadIndexRow[];
