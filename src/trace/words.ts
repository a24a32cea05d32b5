/** The words for what can go wrong with tables. */
import type { Words } from '../units/index.js';
import type { TraceError } from './errors.js';

export function wordsForTrace(error: TraceError): Words {
  return {
    asked: `${error.asked} in the table ${error.table}`,
    found: 'no such row',
    needed: error.nearest.length === 0 ? 'a row of that table' : `a row of that table; the nearest are ${error.nearest.join(', ')}`,
  };
}
