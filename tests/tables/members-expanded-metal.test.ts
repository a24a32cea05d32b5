/** expanded metal: the printed rows a second time. Source: steel service-centre catalogue page. */
import { expect, it } from 'vitest';
import { expandedMetal } from '../../src/members/data/expanded-metal.js';
import { pickColumns, readLines } from '../helpers/second-transcription.js';

const columns = 'style,weight,pairing';
const printed = `
1/2 #20,0.43,by the reader
1/2 #18,0.7,by the reader
1/2 #16,0.86,by the reader
1/2 #13,1.47,printed
3/4 #16,0.54,by the reader
3/4 #13,0.8,by the reader
3/4 #10,1.2,by the reader
3/4 #9,1.8,printed
1 #16,0.44,by the reader
1-1/2 #18,0.2,by the reader
1-1/2 #16,0.4,by the reader
1-1/2 #13,0.6,by the reader
1-1/2 #10,0.79,by the reader
1-1/2 #9,1.2,by the reader
`;

it('expanded metal: every row and figure as printed', () => {
  expect(pickColumns(expandedMetal.rows, columns)).toEqual(readLines(columns, printed));
});
