/** What is asked of a frame, and what is answered. */
import type { Allowable, BeamAnswer } from '../../members/index.js';
import type { AnyLength, AnyPressure, AnyWeight, Known } from '../../trace/index.js';

/** What the frame is made of, in addition to the spec. */
export interface FrameQuestion {
  /** The trailer with its cargo as a spec. */
  readonly spec: unknown;
  /** The main rails: a published section, how many, and their rear end behind the coupler. */
  readonly rail: { readonly section: string; readonly count: number; readonly end: AnyLength };
  /** A crossmember: its section and the clear span between the rails. */
  readonly crossmember?: { readonly section: string; readonly span: AnyLength };
  /** A deck board: its own section properties, its stiffness, what it may bear, and the clear span between crossmembers. */
  readonly board?: {
    readonly I: Known<'in4'>;
    readonly S: Known<'in3'>;
    readonly E: AnyPressure;
    readonly allowable: Allowable;
    readonly span: AnyLength;
  };
  /** The heaviest wheel that rolls over a crossmember or a board, at the middle of it. */
  readonly wheel?: AnyWeight;
  /** The stress that the steel may bear, by name. */
  readonly allowable: Allowable;
}

/** Stress and deflection of one member each. */
export interface FrameChecks {
  /** One rail over coupler and axles. */
  readonly rail: BeamAnswer;
  /** One crossmember under the wheel; absent where it or the wheel is not given. */
  readonly crossmember?: BeamAnswer;
  /** One board under the wheel; absent where it or the wheel is not given. */
  readonly board?: BeamAnswer;
  /** What these figures are, and what they are not. */
  readonly caution: string;
}

export const frameCaution =
  'One member, static, alone: no road loads, no twist, no welds, no fatigue, no buckling. Real frames bear more than this. A licensed engineer decides.';
