import type { KeyRows } from '../key-row.js';

export const rootKeys = [
  { type: 'Spec', rows: [
    ['trailer', 'the trailer', ''],
    ['name', 'a heading for the report', 'you choose it', 'TD-14 with excavator', "the trailer's name heads the report"],
    ['cargo', 'what lies on it, piece by piece', 'no cargo: the empty trailer is assessed'],
    ['tongueShare', 'the share of the gross weight it will be loaded to put on the tongue; payload is reckoned at it', "your practice, or the trailer maker's manual", '12 %', 'payload is reckoned for the whole guideline band, its harder end each time'],
    ['tow', 'the tow vehicle', 'every check on the tow side'],
    ['rules', 'facts for the published rules', 'rules that need them cannot be told'],
    ['tickets', 'what a scale printed, to stand beside what is reckoned', 'nothing is compared with the scale'],
  ] },
] as const satisfies readonly KeyRows[];
