/** One of several forms of a thing; and what is made of a form when it has been read. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import { type Fault, failed, fault } from './fault.js';
import { type AnyCoded, type Coded, coded, type Kind } from './kind.js';

/** One of several forms, chosen by the keys of the input: faults are reported for the chosen form only. */
export function forms<const F extends readonly AnyCoded[]>(
  type: string,
  title: string,
  all: F,
  pick: (input: unknown) => F[number] | string,
): Coded<t.TypeOf<F[number]>, t.OutputOf<F[number]>> {
  type A = t.TypeOf<F[number]>;
  const codec = new t.Type<A, t.OutputOf<F[number]>, unknown>(
    title,
    (input): input is A => all.some((form) => form.is(input)),
    (input, context) => {
      const form = pick(input);
      return typeof form === 'string'
        ? failed(input, context, 'wrong kind', form)
        : (form.validate(input, context) as t.Validation<A>);
    },
    (value) => (all.find((form) => form.is(value)) as AnyCoded).encode(value),
  );
  return coded(codec, { kind: 'forms', type, title, forms: all });
}

/** A word or a few in place of a figure. Unlike a union it adds no part to the path. */
export function wordsOr<const W extends string, A, O>(words: readonly W[], other: Coded<A, O>): Coded<W | A, W | O> {
  const isWord = (input: unknown): input is W => words.some((word) => word === input);
  const codec = new t.Type<W | A, W | O, unknown>(
    `${words.map((word) => `"${word}"`).join(', ')}, or ${other.name}`,
    (input): input is W | A => isWord(input) || other.is(input),
    (input, context) => (isWord(input) ? t.success<W | A>(input) : other.validate(input, context)),
    (value) => (isWord(value) ? value : other.encode(value)),
  );
  return coded(codec, { ...other.says, orWords: words } as Kind);
}

/** Why a form that was read cannot be used: a table that does not know it, a formula that refuses it. */
export interface Refusal {
  /** The whole sentence. */
  readonly says: string;
  /** Where, when it is not the place of the form. */
  readonly path?: string | undefined;
}

/**
 * What is made of a form when it has been read, and the form it is written as again.
 *
 * @param is whether something has been made by `make`
 */
export function made<A, B, O>(
  form: Coded<A, O>,
  make: (read: A, context: t.Context) => Either<Refusal | readonly Fault[], B>,
  unmake: (made: B) => A,
  is: (input: unknown) => input is B,
): Coded<B, O> {
  const codec = new t.Type<B, O, unknown>(
    form.name,
    (input): input is B => is(input) && form.is(unmake(input)),
    (input, context) => {
      const read = form.validate(input, context);
      if (isLeft(read)) return read;
      const found = make(read.right, context);
      if (!isLeft(found)) return t.success(found.right);
      if (!Object.hasOwn(found.left, 'says')) return t.failures([...(found.left as readonly Fault[])]);
      const { says, path } = found.left as Refusal;
      return t.failures([fault(input, context, 'refused', says, path === undefined ? {} : { path })]);
    },
    (value) => form.encode(unmake(value)),
  );
  return coded(codec, { ...form.says, made: true } as Kind);
}
