/** Where the facts of this chapter come from. */
import type { Source } from '../../trace/index.js';

export const publishedOverhangBound = Object.freeze({
  id: 'owner-manuals-trailer-example', title: 'vehicle owner manuals, trailer worked example', edition: '2008-2010', clause: '1.5 x tongue load on the rear axle', grade: 'B',
} as const satisfies Source);

export const chainsTogether = Object.freeze({
  id: 'fmcsr-safety-device', title: '49 CFR 393.70(d) and its guidance', clause: 'ultimate strength not less than the gross weight towed; two chains may count together', edition: 'archived agency page, current to 2012-08-30', grade: 'A',
} as const satisfies Source);

/** Of one State; two chains certified to SAE J684 (July 2005) are asked by Wash. WAC 204-70-070. */
export const chainsEachByState = Object.freeze({
  id: 'nh-rsa-266-63', title: 'N.H. RSA 266:63', edition: 'State page, read November 2026', clause: 'each chain: ultimate strength not less than the gross weight towed', grade: 'A',
} as const satisfies Source);

export const chainsEach = Object.freeze({
  id: 'j684-chains', title: 'two secondary pages on SAE J684 (July 2005)', clause: 'each chain not below the class limit, class 4 not below the trailer GVWR', grade: 'C',
} as const satisfies Source);
