/** Whether an assessment needs no change. */
import type { Assessment } from '../assessment/index.js';

/** Every check is within, and there is no attention note. */
export const isWithin = ({ verdict }: Assessment): boolean => verdict === 'within';
