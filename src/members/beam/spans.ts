/** The beam and its two supports: places are measured from the left end. */
import {
  type AnyLength,
  aboveZero,
  type Derived,
  type Guard,
  inInches,
  notNegative,
  plus,
  result,
} from '../../trace/index.js';

/** Two supports, and what hangs over on either side; an overhang may be zero. */
export interface Spans {
  readonly leftOverhang: AnyLength;
  readonly span: AnyLength;
  readonly rightOverhang: AnyLength;
}

/** The places that follow from the spans. */
export interface Supports {
  readonly left: Derived<'in'>;
  readonly right: Derived<'in'>;
  readonly span: Derived<'in'>;
  readonly end: Derived<'in'>;
}

export function placeSupports(spans: Spans): { readonly supports: Supports; readonly guards: readonly Guard[] } {
  const left = inInches('left overhang', spans.leftOverhang);
  const span = inInches('span', spans.span);
  const rightOver = inInches('right overhang', spans.rightOverhang);
  const right = result('right support', plus(left, span));
  return {
    supports: { left, right, span, end: result('beam length', plus(right, rightOver)) },
    guards: [aboveZero('span', span), notNegative('left overhang', left), notNegative('right overhang', rightOver)],
  };
}
