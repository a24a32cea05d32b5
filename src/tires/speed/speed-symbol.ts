/** Speed symbol: the letter behind the load index. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import { type Derived, findRow, fromTable, type NotTabulated } from '../../trace/index.js';
import { kmh, mph } from '../../units/index.js';
import { speedSymbolTable } from '../tables.js';

/** The speed that a symbol means. */
export interface SpeedSymbol {
  readonly symbol: string;
  /** The figure that governs. */
  readonly kmh: Derived<'km/h'>;
  /** As lists print it; P is 94 and Q is 100 there, one more than the nearest. */
  readonly mph: Derived<'mph'>;
  /** Place in the order of speed, from 0: H (210 km/h) is between U and V. */
  readonly rank: number;
  /** Above 300 km/h without a stated end: the maker must be asked. */
  readonly openEnded: boolean;
}

/**
 * What speed does this speed symbol mean?
 *
 * A table figure: km/h governs, mph is what the lists print. The symbol is a limit of the tire, never a recommended speed.
 * There is no I, O or X; ZR belongs to the size and is not a symbol.
 *
 * @param symbol the letter behind the load index, or A1 to A8, or (Y)
 * @returns km/h, mph as printed, place in the order; Left `NotTabulated`
 * @example speedSymbol('M') // Right: 130 km/h, 81 mph
 * @source three speed-symbol lists, undated, grade C
 */
export function speedSymbol(symbol: string): Either<NotTabulated, SpeedSymbol> {
  const found = findRow(speedSymbolTable, ([key]) => key, symbol.slice(0, 8).toUpperCase());
  if (isLeft(found)) return found;
  const [key, metric, miles, openEnded] = found.right;
  const from = { table: speedSymbolTable.name, key, source: speedSymbolTable.source };
  return right({
    symbol: key,
    kmh: fromTable(`speed of symbol ${key}`, kmh(metric), from),
    rank: speedSymbolTable.rows.indexOf(found.right),
    openEnded,
    mph: fromTable(`printed speed of symbol ${key}`, mph(miles), from),
  });
}
