/** Members in a cut list: a designation of the tables, or a record with the one key that says what it is. */
import { type Either, isLeft, right } from 'fp-ts/lib/Either.js';
import {
  flatBar,
  type Member,
  publishedSection,
  roundBar,
  sectionProperties,
  statedMember,
} from '../../members/index.js';
import { has, isRecord, own, pathOf } from '../codec/fault.js';
import { cutLength, cutSize, weightPerFootOf } from '../codec/figures.js';
import { forms, made, type Refusal } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { shortText } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DecodedMember } from '../types/made.js';
import type { MemberForm, MemberInput } from '../types/member.js';
import { boardCodec, boardOf, densityOfMaterial, materialCodec, orRefused } from './wood.js';

const material = materialCodec;
const kinds = {
  flatBar: record(
    'FlatBar',
    'a flat bar',
    { thickness: cutSize('bar thickness'), width: cutSize('bar width'), material },
    {},
  ),
  roundBar: record('RoundBar', 'a round bar', { diameter: cutSize('bar diameter'), material }, {}),
  formedChannel: record(
    'FormedChannel',
    'a channel bent from plate',
    {
      depth: cutSize('depth'),
      flangeWidth: cutSize('flange width'),
      thickness: cutSize('thickness'),
      insideRadius: cutLength('inside bend radius'),
      material,
    },
    {},
  ),
  board: boardCodec,
  own: record(
    'OwnMember',
    'a member of known weight',
    { name: shortText, weightPerFoot: weightPerFootOf({ item: 'weight per foot' }) },
    {},
  ),
} as const;

const keyed = [
  record('FlatBarMember', 'a flat bar', { flatBar: kinds.flatBar }, {}),
  record('RoundBarMember', 'a round bar', { roundBar: kinds.roundBar }, {}),
  record('FormedChannelMember', 'a channel bent from plate', { formedChannel: kinds.formedChannel }, {}),
  record('BoardMember', 'a board', { board: kinds.board }, {}),
  record('StatedMember', 'a member of known weight', { own: kinds.own }, {}),
] as const;
const keys = Object.keys(kinds);

/** The one key of a record that says which of these forms it is. */
export function byOnlyKey<F>(input: unknown, names: readonly string[], all: readonly F[]): F | string {
  const [first, ...others] = isRecord(input) ? Object.keys(input) : [];
  const form = first === undefined || others.length > 0 ? undefined : all[names.indexOf(first)];
  return form ?? `a record with exactly one of ${names.join(', ')}`;
}

const formCodec: Coded<MemberForm, MemberInput> = forms('Member', 'a member', [shortText, ...keyed], (input) =>
  typeof input === 'string' ? shortText : byOnlyKey(input, keys, keyed),
);

function memberOf(form: MemberForm, path: string): Either<Refusal, Member> {
  if (typeof form === 'string') return orRefused(publishedSection(form), path);
  if (has(form, 'flatBar')) {
    const { thickness, width, material: of } = form.flatBar;
    return orRefused(flatBar(thickness, width, densityOfMaterial(of)), `${path}.flatBar`);
  }
  if (has(form, 'roundBar')) {
    const { diameter, material: of } = form.roundBar;
    return orRefused(roundBar(diameter, densityOfMaterial(of)), `${path}.roundBar`);
  }
  if (has(form, 'formedChannel')) {
    const { material: of, ...sizes } = form.formedChannel;
    const properties = sectionProperties({ kind: 'formed channel', ...sizes }, densityOfMaterial(of));
    return orRefused(properties, `${path}.formedChannel`);
  }
  if (has(form, 'board')) return boardOf(form.board, `${path}.board`);
  return orRefused(statedMember(form.own.name, form.own.weightPerFoot), `${path}.own`);
}

const isMember = (input: unknown): input is DecodedMember =>
  isRecord(input) && typeof own(input, 'designation') === 'string' && isRecord(own(input, 'weightPerFoot'));

/** A member, and the form in which it was written. */
export const memberCodec: Coded<DecodedMember, MemberInput> = made(
  formCodec,
  (form, context) => {
    const found = memberOf(form, pathOf(context));
    if (isLeft(found)) return found;
    const { designation, weightPerFoot } = found.right;
    return right({ designation, weightPerFoot, form });
  },
  ({ form }) => form,
  isMember,
);
