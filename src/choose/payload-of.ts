/** The payload of an answer. */
import type { Assessment } from '../assessment/index.js';
import type { Derived } from '../trace/index.js';

/** The most it may carry at the share it is loaded to. */
export const payloadOf = ({ payload }: Assessment): Derived<'lb'> | undefined => payload?.best?.weight;
