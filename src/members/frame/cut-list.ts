/** A cut list: what the frame is made of, how long, how many, and where. Places are behind the coupler. */
import type { AnyLength, AnyWeight, Known } from '../../trace/index.js';
import type { Member } from './member.js';

interface Pieces {
  readonly name: string;
  readonly member: Member;
  /** Cut length of one piece. */
  readonly length: AnyLength;
}

/** Pieces that run lengthwise: a rail, a side tube. `from` is their front end. */
export interface LengthwiseLine extends Pieces {
  readonly count: Known<'ratio'>;
  readonly from: AnyLength;
}

/** Pieces at one place: a header, a pair of uprights. `at` is their centre of gravity. */
export interface PlacedLine extends Pieces {
  readonly count: Known<'ratio'>;
  readonly at: AnyLength;
}

/**
 * How a spacing becomes a number of pieces over a length, the first place being `from`:
 * 'first at the start': one there and one at every full spacing that fits, `floor(over / spacing) + 1`;
 * 'first at the start, last at the end': the same and one at the end, so the last gap may be shorter, `ceil(over / spacing) + 1`;
 * 'none at either end': only at spacings that lie between, `ceil(over / spacing) - 1`.
 */
export type CountRule = 'first at the start' | 'first at the start, last at the end' | 'none at either end';

/** Pieces at a spacing: crossmembers at 16 in over 18 ft. Each lies across, its centre of gravity at its place. */
export interface SpacedLine extends Pieces {
  readonly spacing: AnyLength;
  readonly over: AnyLength;
  readonly from: AnyLength;
  readonly rule: CountRule;
}

/** Something of known weight: a coupler, a box of gussets. */
export interface WeighedLine {
  readonly name: string;
  readonly weight: AnyWeight;
  readonly at: AnyLength;
}

export type CutLine = LengthwiseLine | PlacedLine | SpacedLine | WeighedLine;
export type CutList = readonly CutLine[];
