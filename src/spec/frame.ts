/** Cut list and deck inside a spec: the members chapter reads them, with their places in the spec. */
import { type Either, isLeft } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import {
  type CutList,
  type Deck,
  type MembersError,
  readCutList,
  readDeck,
  wordsForMembers,
} from '../members/index.js';
import { wordsForTrace } from '../trace/index.js';
import { wordsForUnits } from '../units/index.js';
import { pathOf } from './figure.js';

function inWords(error: MembersError, path: string): string {
  const words =
    error.chapter === 'units'
      ? wordsForUnits(error)
      : error.chapter === 'trace'
        ? wordsForTrace(error)
        : wordsForMembers(error);
  return typeof words === 'string' ? `${words} (at ${path})` : `${words.needed} (at ${path}: ${words.found})`;
}

function readBy<A>(
  name: string,
  read: (input: unknown, path: string) => Either<MembersError, A>,
): t.Type<A, unknown, unknown> {
  return new t.Type<A, unknown, unknown>(
    name,
    (input): input is A => Array.isArray(input),
    (input, context) => {
      const found = read(input, pathOf(context));
      if (!isLeft(found)) return t.success(found.right);
      return t.failure(input, context, inWords(found.left, found.left.path ?? pathOf(context)));
    },
    t.identity,
  );
}

/** Pieces, where they stand, and how many: see the members chapter. */
export const cutListCodec = readBy<CutList>('a cut list', readCutList);

/** Areas of deck. */
export const deckCodec = readBy<Deck>('a deck, area by area', readDeck);
