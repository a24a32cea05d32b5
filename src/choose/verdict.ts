/** Whether an assessment leaves nothing to put right. */
import type { Assessment } from '../assessment/index.js';

/** Everything asked is within, and nothing asks attention. */
export const isWithin = ({ verdict }: Assessment): boolean => verdict === 'within';
