/** From text or JSON to a spec whose figures are leaves of the working. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import type * as t from 'io-ts';
import type { AnyAreaWeight } from '../trace/index.js';
import { inShort, orNone } from '../units/internal.js';
import { readableOf } from './codec/fault.js';
import type { Coded } from './codec/kind.js';
import { contradictionsIn, type Partly } from './contradictions.js';
import { type MalformedJson, type UndecodableSpec, undecodable } from './errors.js';
import { cutListCodec, deckCodec } from './frame/cut-list.js';
import { memberCodec } from './frame/member.js';
import { surfaceCodec, surfaceOf } from './frame/surface.js';
import { localRulesCodec } from './local/local-rules.js';
import { problemsOf } from './problems.js';
import { specCodec } from './spec.js';
import type { CutLineInput, DecodedCutLine } from './types/frame.js';
import type { DecodedDeckArea, DecodedLocalRules, DecodedMember } from './types/made.js';
import type { DecodedSpec } from './types/spec.js';
import { keepWritten } from './written.js';

/** The most text that is read as a spec. */
const longest = 1_000_000;

/**
 * What does this JSON say about a trailer?
 *
 * No default is filled in. Each figure has its path, its basis and its text as written; it is converted to the unit the
 * library calculates in. All faults are reported at once, contradictions among the readable figures included, each at the key that must change.
 *
 * Not for text: `readJson` makes a JSON value of it first.
 *
 * @param input a parsed JSON value, or a `SpecInput`; never changed
 * @returns Left `UndecodableSpec` with every fault: path, kind of fault, got, needed; an unknown key names the nearest known one, or
 * the record it belongs to
 * @example isLeft(decodeSpec({ trailer: {} })) // true
 * @source common practice, no source: the keys are this library's own
 */
export function decodeSpec(input: unknown): Either<UndecodableSpec, DecodedSpec> {
  const decoded = specCodec.decode(input);
  const faults = isLeft(decoded) ? problemsOf(decoded.left) : [];
  const readable = isLeft(decoded) ? readableOf(decoded.left) : decoded.right;
  const problems = [...faults, ...contradictionsIn((readable ?? orNone(undefined)) as Partly<DecodedSpec>).problems];
  if (isLeft(decoded) || problems.length > 0) return left(undecodable(problems));
  return right(keepWritten(decoded.right, input));
}

/** Reads a part of a spec on its own. */
function decodePart<A>(codec: Coded<A>, input: unknown, path: string): Either<UndecodableSpec, A> {
  const context: t.Context = path.split('.').map((key) => ({ key, type: codec, actual: input }));
  const decoded = codec.validate(input, context);
  return isLeft(decoded) ? left(undecodable(problemsOf(decoded.left))) : decoded;
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
 * @param input parsed JSON, or a list of `CutLineInput`
 * @param path the key of the list in its spec; `trailer.curb.frame` gives `trailer.curb.frame.0.length`
 * @returns the list for `frameWeight`; Left `UndecodableSpec` with every fault
 * @example decodeCutList([{ name: 'rails', member: 'C6x8.2', length: '20 ft', count: '2', from: '48 in' }], 'trailer.curb.frame')
 * @source none: a form of this library
 */
export const decodeCutList = (input: unknown, path: string): Either<UndecodableSpec, readonly DecodedCutLine[]> =>
  decodePart<readonly DecodedCutLine[]>(
    cutListCodec as Coded<readonly DecodedCutLine[], readonly CutLineInput[]>,
    input,
    path,
  );

/**
 * What deck does this JSON say?
 *
 * An array of areas `{name, length, width, from, surface}`; `surface` is one of `boards`, `plate`, `sheet` (with its gauge system),
 * `floorPlate`, `expandedMetal`, `weightPerSquareFoot`.
 *
 * @param input parsed JSON, or a list of `DeckAreaInput`; @param path the key of the deck in its spec
 * @returns the deck for `deckWeight`; Left `UndecodableSpec` with every fault
 * @example decodeDeck([{ name: 'deck', length: '18 ft', width: '83 in', from: '60 in', surface: { floorPlate: '1/8' } }], 'trailer.curb.deck')
 * @source none: a form of this library
 */
export const decodeDeck = (input: unknown, path: string): Either<UndecodableSpec, readonly DecodedDeckArea[]> =>
  decodePart(deckCodec, input, path);

/** A member: a designation as text, or a record with one of `flatBar`, `roundBar`, `formedChannel`, `board`, `own`. @example decodeMember('C5X6.7', 'frame.0.member') // Right 6.7 lb/ft */
export const decodeMember = (input: unknown, path: string): Either<UndecodableSpec, DecodedMember> =>
  decodePart(memberCodec, input, path);

/** What a deck surface weighs per area: a record with one of `boards`, `plate`, `sheet`, `floorPlate`, `expandedMetal`, `weightPerSquareFoot`. @example decodeSurface({ weightPerSquareFoot: '4.75 lb/ft2' }, 'deck.0.surface') // Right 4.75 lb/ft2 */
export function decodeSurface(input: unknown, path: string): Either<UndecodableSpec, AnyAreaWeight> {
  const form = decodePart(surfaceCodec, input, path);
  if (isLeft(form)) return form;
  const weight = surfaceOf(form.right, path);
  if (!isLeft(weight)) return weight;
  const { says, path: at = path } = weight.left;
  return left(undecodable([{ path: at, fault: 'refused', got: inShort(input), needed: says }]));
}

/**
 * What does this rule file say?
 *
 * The file is JSON: `jurisdictions` (the places its rules may name), `rules` (the fields of `Rule`, a condition having
 * `value`, or `times` and `of`) and `stepTables`. Figures are text, so that no digit is lost.
 *
 * No local rule is shipped: brake lines run from 1,500 to 5,000 lb with different operators and change. Bring the text of
 * your State, its date and its source.
 *
 * @param input what `JSON.parse` made of the file
 * @param path the key of the rules in their spec; empty for a file of its own
 * @returns the rules and tables; Left `UndecodableSpec` with every fault: the shape, a stray field, a name that is not on its list, a
 * unit of another kind, steps that do not rise, an id used twice
 * @example decodeLocalRules(JSON.parse(text)) // Right { jurisdictions, rules, stepTables }
 * @source the file of the user
 */
export const decodeLocalRules = (input: unknown, path = ''): Either<UndecodableSpec, DecodedLocalRules> =>
  decodePart(localRulesCodec, input, path);

/**
 * What JSON value does this text say?
 *
 * Nothing is evaluated, a byte order mark in front is passed over, and more than a million characters are refused unread.
 *
 * Not for JSON with comments or single quotes.
 *
 * @param text the text of a file or a form
 * @returns the value, not yet looked at; Left `MalformedJson`
 * @example isLeft(readJson('{ "trailer": ')) // true
 * @source RFC 8259, as the language reads it
 */
export function readJson(text: string): Either<MalformedJson, unknown> {
  const malformed = (says: string): Either<MalformedJson, never> =>
    left({ chapter: 'spec', tag: 'MalformedJson', says });
  if (text.length > longest) return malformed(`a text of ${text.length} characters, more than ${longest}`);
  try {
    return right(JSON.parse(text.replace(/^\uFEFF/, '')) as unknown);
  } catch (reason) {
    return malformed(reason instanceof Error ? reason.message.slice(0, 120) : 'a text that is not JSON');
  }
}
