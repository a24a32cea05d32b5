/** Reading figures and records out of JSON, with the place of whatever cannot be read. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { type Basis, type Derived, type Given, given, isBasis } from '../trace/index.js';
import {
  convert,
  type Decimal,
  type Dimension,
  dimensionOf,
  inch,
  lb,
  lbPerFt,
  lbPerFt2,
  lbPerFt3,
  parseMeasure,
  parseQuantity,
  type Quantity,
  quantity,
  ratio,
  type Unit,
  type UnitOf,
  wireQuantity,
} from '../units/index.js';
import { inShort, neededToRead } from '../units/internal.js';
import type { MembersError } from './errors.js';

/** A figure as it was written down, with what it rests on. */
export interface Written<D extends Dimension> {
  readonly quantity: Quantity<UnitOf<D>>;
  readonly basis: Basis;
  /** The text that a person wrote. */
  readonly written?: string | undefined;
}

/** The least and the most a figure of a cut list or a deck may be; what lies outside is a slip of the pen. */
const ends: Partial<Record<Dimension, readonly [Quantity<Unit>, Quantity<Unit>]>> = {
  length: [inch(-120), inch(1200)],
  mass: [lb(0), lb(200000)],
  ratio: [ratio(0), ratio(10000)],
  'weight per length': [lbPerFt(0), lbPerFt(5000)],
  'weight per area': [lbPerFt2(0), lbPerFt2(1000)],
  density: [lbPerFt3(0), lbPerFt3(2000)],
};

const plausible = (figure: Quantity<Unit>): boolean => {
  const within = ends[dimensionOf(figure.unit)]?.map((end) => convert(end, figure.unit as never).value);
  return within === undefined || (figure.value.gte(within[0] as Decimal) && figure.value.lte(within[1] as Decimal));
};

/** Text such as `20 ft`, or `{"value":"20","unit":"ft"}` with an optional `"basis"`; without one the figure is `stated`. */
export function measure<D extends Dimension>(dimension: D): t.Type<Written<D>, unknown, unknown> {
  const wire = wireQuantity(dimension);
  const needed = `a figure of ${dimension}, as text or {"value", "unit"}`;
  return new t.Type<Written<D>, unknown, unknown>(
    needed,
    (input): input is Written<D> =>
      typeof input === 'object' && input !== null && 'quantity' in input && wire.is(input.quantity),
    (input, context) => {
      if (typeof input === 'string') {
        const read = parseMeasure(input, dimension);
        if (isLeft(read)) return t.failure(input, context, `${needed}: ${neededToRead(read.left)}`);
        return plausible(read.right as Quantity<Unit>)
          ? t.success({ quantity: read.right, basis: 'stated', written: input })
          : t.failure(input, context, needed);
      }
      const record = typeof input === 'object' && input !== null ? (input as Record<string, unknown>) : {};
      const basis = record['basis'] ?? 'stated';
      const read = wire.decode({ value: record['value'], unit: record['unit'] });
      const known = Object.keys(record).every((key) => ['value', 'unit', 'basis'].includes(key));
      return isLeft(read) ||
        !plausible(read.right as Quantity<Unit>) ||
        !known ||
        typeof basis !== 'string' ||
        !isBasis(basis)
        ? t.failure(input, context, needed)
        : t.success({ quantity: read.right, basis });
    },
    (written) => ({ ...wire.encode(written.quantity), basis: written.basis }),
  );
}

/** A number of pieces: `2` or `"2"`. Whether it is whole is asked when it is weighed. */
export const pieceCount = new t.Type<Written<'ratio'> & { readonly quantity: Quantity<'ratio'> }, unknown, unknown>(
  'a number of pieces, such as 2',
  (input): input is Written<'ratio'> & { readonly quantity: Quantity<'ratio'> } =>
    typeof input === 'object' && input !== null && 'quantity' in input && wireQuantity('ratio').is(input.quantity),
  (input, context) => {
    const read =
      typeof input === 'number' && Number.isFinite(input)
        ? right(quantity(input, 'ratio'))
        : parseQuantity(typeof input === 'string' ? input : '', 'ratio');
    return isLeft(read) ? t.failure(input, context) : t.success({ quantity: read.right, basis: 'stated' });
  },
  ({ quantity: pieces }) => pieces.value.toFixed(),
);

/** A figure under its name, with its place in the spec. */
export const placed = <U extends Unit>(
  symbol: string,
  { quantity: figure, basis, written }: Omit<Written<Dimension>, 'quantity'> & { readonly quantity: Quantity<U> },
  path: string,
): Derived<U> => {
  const leaf = given(symbol, figure, basis, path, ends[dimensionOf(figure.unit)] as Parameters<typeof given<U>>[4]);
  return written === undefined ? leaf : { value: leaf.value, why: { ...leaf.why, written } as Given };
};

/** A record with these keys and no others: a key that nobody reads is a slip that would change the answer. */
export function closed<P extends t.Props>(name: string, props: P): t.Type<t.TypeOf<t.TypeC<P>>, unknown, unknown> {
  const inner = t.type(props, name);
  return new t.Type<t.TypeOf<t.TypeC<P>>, unknown, unknown>(
    name,
    inner.is,
    (input, context) => {
      if (typeof input !== 'object' || input === null || Array.isArray(input)) return t.failure(input, context, name);
      const stray = Object.keys(input).find((key) => !Object.hasOwn(props, key));
      return stray === undefined
        ? inner.validate(input, context)
        : t.failure(
            input,
            context,
            `without the key "${stray.slice(0, 40)}": only ${Object.keys(props).join(', ')} are read`,
          );
    },
    inner.encode,
  );
}

/** One of a few words. */
export const oneOf = <W extends string>(...words: readonly [W, ...W[]]): t.Type<W, unknown, unknown> => {
  const is = (input: unknown): input is W => words.some((word) => word === input);
  return new t.Type<W, unknown, unknown>(
    words.join(' or '),
    is,
    (input, context) => (is(input) ? t.success(input) : t.failure(input, context)),
    t.identity,
  );
};

export const under = (path: string, key: string | number): string => (path === '' ? `${key}` : `${path}.${key}`);

export const undecodable = (input: unknown, needed: string, path: string): MembersError => ({
  chapter: 'members',
  tag: 'UndecodableList',
  found: inShort(input),
  needed,
  path,
});

/** Decodes; what cannot be decoded is named with its place. */
export function decodeAt<A>(codec: t.Decoder<unknown, A>, input: unknown, path: string): Either<MembersError, A> {
  const read = codec.decode(input);
  if (!isLeft(read)) return right(read.right);
  const [first] = read.left;
  const keys = first?.context.slice(1).map(({ key }) => key) ?? [];
  const place = keys.reduce((at, key) => under(at, key), path);
  return left(undecodable(first?.value, first?.message ?? first?.context.at(-1)?.type.name ?? codec.name, place));
}

/** The same error with a place, when it has none. */
export const at = <A>(path: string, read: Either<MembersError, A>): Either<MembersError, A> =>
  isLeft(read) && read.left.path === undefined ? left({ ...read.left, path }) : read;

/** The one key of a record that says which kind it is, with what stands under it. */
export function onlyKey<K extends string>(
  input: unknown,
  kinds: readonly K[],
  path: string,
): Either<MembersError, { readonly kind: K; readonly inside: unknown; readonly path: string }> {
  const keys = typeof input === 'object' && input !== null ? Object.keys(input) : [];
  const kind = kinds.find((each) => each === keys[0]);
  if (kind === undefined || keys.length !== 1)
    return left(undecodable(input, `a record with exactly one of ${kinds.join(', ')}`, path));
  return right({ kind, inside: (input as Record<string, unknown>)[kind], path: under(path, kind) });
}
