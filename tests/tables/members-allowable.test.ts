/** allowable bending stress: the printed rows a second time. Source: AISC ASD 1989, AISC 360, AASHTO, secondary copies. */
import { expect, it } from 'vitest';
import { allowableBending } from '../../src/members/data/allowable-bending.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'rule|expression|a36|grade50|from';
const printed = `
ASD 1989, compact, braced|0.66 Fy|23.76|33.0|AISC ASD 1989 eq. F1-1, secondary copy
ASD 1989, non-compact, braced|0.60 Fy|21.6|30.0|AISC ASD 1989 eq. F1-5, secondary copy
AISC 360 ASD, omega 1.67|Mn/1.67|21.56|29.94|AISC 360, secondary copy
AASHTO, for contrast|0.55 Fy|19.8|27.5|structural program technical reference, 2006
`;

it('allowable bending stress: every row and figure as printed', () => {
  expect(pickColumns(allowableBending.rows, columns, '|')).toEqual(readLines(columns, printed, '|'));
});
