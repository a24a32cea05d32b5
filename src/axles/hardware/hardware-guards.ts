/** Guards for brakes and wheels: what must be greater than zero is. */
import { type Either, left, right } from 'fp-ts/lib/Either.js';
import { type Decision, type Derived, decide, zeroIn } from '../../trace/index.js';
import { toWire, type Unit } from '../../units/index.js';
import type { HardwareNotAboveZero } from './hardware-errors.js';

/** Every figure greater than zero, or the first that is not. */
export function allPositive(
  figures: readonly (readonly [what: string, figure: Derived<Unit>])[],
): Either<HardwareNotAboveZero, readonly Decision[]> {
  const decisions: Decision[] = [];
  for (const [what, figure] of figures) {
    const above = decide(figure, '>', zeroIn(figure.value.unit));
    if (!above.holds) return left({ chapter: 'axles', tag: 'HardwareNotAboveZero', what, found: toWire(figure.value) });
    decisions.push(above);
  }
  return right(decisions);
}
