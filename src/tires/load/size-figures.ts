/** The figures of sizes, made once: a size code has few values, so each is kept. */
import { inch, mm, percent, type Quantity, type Unit } from '../../units/index.js';

/** Keeps what was made for a code. The callers have checked the range of the code, so there are few. */
function kept<U extends Unit>(
  make: (digits: string | number) => Quantity<U>,
): (digits: string | number) => Quantity<U> {
  const made = new Map<string | number, Quantity<U>>();
  return (digits) => {
    const found = made.get(digits);
    if (found !== undefined) return found;
    const figure = make(digits);
    if (made.size < 2000) made.set(digits, figure);
    return figure;
  };
}

export const inches = kept(inch);
export const millimetres = kept(mm);
export const percents = kept(percent);

const plain = new WeakMap<Quantity<'in'>, number>();

/** A size code as a plain number, for choosing among families; kept, because every reading asks for it. */
export function plainInches(code: Quantity<'in'>): number {
  const found = plain.get(code);
  if (found !== undefined) return found;
  const number = code.value.toNumber();
  plain.set(code, number);
  return number;
}
