/** Cut lists and decks as JSON: quantities as text or wire records, every figure with its place in the spec. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import * as t from 'io-ts';
import type { MembersError } from './errors.js';
import type { CutLine, CutList } from './frame/cut-list.js';
import type { Deck, DeckArea } from './frame/deck-weight.js';
import { closed, decodeAt, measure, oneOf, pieceCount, placed, undecodable, under } from './measure-codec.js';
import { readMember } from './member-codec.js';
import { readSurface } from './surface-codec.js';

const length = measure('length');
const count = pieceCount;
const pieces = { name: t.string, member: t.unknown, length };

const lines = {
  weighed: closed('a line of known weight', { name: t.string, weight: measure('mass'), at: length }),
  spaced: closed('pieces at a spacing', {
    ...pieces,
    spacing: length,
    over: length,
    from: length,
    rule: oneOf('first at the start', 'first at the start, last at the end', 'none at either end'),
  }),
  placed: closed('pieces at one place', { ...pieces, count, at: length }),
  lengthwise: closed('lengthwise pieces', { ...pieces, count, from: length }),
};

/** The key that only this kind of line has says which it is. */
function kindOf(input: unknown): keyof typeof lines {
  const has = (key: string): boolean => typeof input === 'object' && input !== null && Object.hasOwn(input, key);
  if (has('weight')) return 'weighed';
  if (has('spacing')) return 'spaced';
  return has('at') ? 'placed' : 'lengthwise';
}

function readLine(input: unknown, path: string): Either<MembersError, CutLine> {
  const kind = kindOf(input);
  const here = (key: string): string => under(path, key);
  if (kind === 'weighed') {
    const read = decodeAt(lines.weighed, input, path);
    if (isLeft(read)) return read;
    const { name, weight, at } = read.right;
    return right({
      name,
      weight: placed(`${name} weight`, weight, here('weight')),
      at: placed(`${name} position`, at, here('at')),
    });
  }
  const member = (line: { readonly member?: unknown }) => readMember(line.member, here('member'));
  if (kind === 'spaced') {
    const read = decodeAt(lines.spaced, input, path);
    if (isLeft(read)) return read;
    const of = member(read.right);
    if (isLeft(of)) return of;
    const { name, rule } = read.right;
    return right({
      name,
      rule,
      member: of.right,
      length: placed(`${name} length`, read.right.length, here('length')),
      spacing: placed(`${name} spacing`, read.right.spacing, here('spacing')),
      over: placed(`${name} run`, read.right.over, here('over')),
      from: placed(`${name} start`, read.right.from, here('from')),
    });
  }
  const figures = (line: { name: string; length: t.TypeOf<typeof length>; count: t.TypeOf<typeof count> }) => ({
    name: line.name,
    length: placed(`${line.name} length`, line.length, here('length')),
    count: placed(`number of ${line.name}`, line.count, here('count')),
  });
  if (kind === 'placed') {
    const read = decodeAt(lines.placed, input, path);
    if (isLeft(read)) return read;
    const of = member(read.right);
    return isLeft(of)
      ? of
      : right({
          ...figures(read.right),
          member: of.right,
          at: placed(`${read.right.name} position`, read.right.at, here('at')),
        });
  }
  const read = decodeAt(lines.lengthwise, input, path);
  if (isLeft(read)) return read;
  const of = member(read.right);
  return isLeft(of)
    ? of
    : right({
        ...figures(read.right),
        member: of.right,
        from: placed(`${read.right.name} front end`, read.right.from, here('from')),
      });
}

function readList<A>(
  input: unknown,
  path: string,
  needed: string,
  one: (each: unknown, path: string) => Either<MembersError, A>,
): Either<MembersError, readonly A[]> {
  if (!Array.isArray(input)) return left(undecodable(input, needed, path));
  const all: A[] = [];
  for (const [i, each] of input.entries()) {
    const read = one(each, under(path, i));
    if (isLeft(read)) return read;
    all.push(read.right);
  }
  return right(all);
}

/**
 * What cut list does this JSON say?
 *
 * An array of lines: `{name, member, length, count, from}` for lengthwise pieces, `{..., at}` in place of `from` for pieces at one
 * place, `{name, member, length, spacing, over, from, rule}` for pieces at a spacing, `{name, weight, at}` for known weights.
 * `member` is a designation, or one of `flatBar`, `roundBar`, `formedChannel`, `board`, `own`.
 *
 * A key that nobody reads is refused: a misspelt one would change the weight in silence.
 *
 * @param input parsed JSON; figures are text such as `20 ft`, or `{"value":"20","unit":"ft","basis":"label"}`
 * @param path where the list stands in its spec; `trailer.curb.frame` gives `trailer.curb.frame.0.length`
 * @returns the list for `frameWeight`; Left `UndecodableList` and every error of the members, with the place
 * @example readCutList([{ name: 'rails', member: 'C6x8.2', length: '20 ft', count: '2', from: '48 in' }], 'trailer.curb.frame')
 * @source none: a form of this library
 */
export const readCutList = (input: unknown, path: string): Either<MembersError, CutList> =>
  readList(input, path, 'an array of cut-list lines', readLine);

const areaShape = closed('an area of deck', {
  name: t.string,
  length,
  width: length,
  from: length,
  surface: t.unknown,
});

function readArea(input: unknown, path: string): Either<MembersError, DeckArea> {
  const read = decodeAt(areaShape, input, path);
  if (isLeft(read)) return read;
  const surface = readSurface(read.right.surface, under(path, 'surface'));
  if (isLeft(surface)) return surface;
  const { name } = read.right;
  return right({
    name,
    surface: surface.right,
    length: placed(`${name} length`, read.right.length, under(path, 'length')),
    width: placed(`${name} width`, read.right.width, under(path, 'width')),
    from: placed(`${name} front edge`, read.right.from, under(path, 'from')),
  });
}

/**
 * What deck does this JSON say?
 *
 * An array of areas `{name, length, width, from, surface}`; `surface` is one of `boards`, `plate`, `sheet` (with its gauge system),
 * `floorPlate`, `expandedMetal`, `weightPerSquareFoot`.
 *
 * @param input parsed JSON, figures as in `readCutList`; @param path where the deck stands in its spec
 * @returns the deck for `deckWeight`; Left `UndecodableList` and every error of the members, with the place
 * @example readDeck([{ name: 'deck', length: '18 ft', width: '83 in', from: '60 in', surface: { floorPlate: '1/8' } }], 'trailer.curb.deck')
 * @source none: a form of this library
 */
export const readDeck = (input: unknown, path: string): Either<MembersError, Deck> =>
  readList(input, path, 'an array of deck areas', readArea);
