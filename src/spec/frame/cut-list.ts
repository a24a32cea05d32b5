/** Cut list and deck in a spec: pieces, their places, how many; areas of deck. */
import { isLeft, right } from 'fp-ts/lib/Either.js';
import { isRecord, own, pathOf } from '../codec/fault.js';
import { cutLength, cutSize, cutWeight } from '../codec/figures.js';
import { forms, made } from '../codec/forms.js';
import type { Coded } from '../codec/kind.js';
import { pieceCount } from '../codec/pieces.js';
import { choice, list, shortText } from '../codec/plain.js';
import { record } from '../codec/record.js';
import type { DeckAreaForm, DeckAreaInput } from '../types/deck.js';
import type { CutLineInput, DecodedCutLine } from '../types/frame.js';
import type { DecodedDeckArea } from '../types/made.js';
import { memberCodec } from './member.js';
import { surfaceCodec, surfaceOf } from './surface.js';

const pieces = { name: shortText, member: memberCodec, length: cutSize({ item: 'length' }) };

const lines = {
  weighed: record(
    'WeighedLine',
    'a line of known weight',
    { name: shortText, weight: cutWeight({ item: 'weight' }), at: cutLength({ item: 'position' }) },
    {},
  ),
  spaced: record(
    'SpacedLine',
    'pieces at a spacing',
    {
      ...pieces,
      spacing: cutSize({ item: 'spacing' }),
      over: cutSize({ item: 'run' }),
      from: cutLength({ item: 'start' }),
      rule: choice('first at the start', 'first at the start, last at the end', 'none at either end'),
    },
    {},
  ),
  placed: record(
    'PlacedLine',
    'pieces at one place',
    { ...pieces, count: pieceCount({ of: 'number of' }), at: cutLength({ item: 'position' }) },
    {},
  ),
  lengthwise: record(
    'LengthwiseLine',
    'lengthwise pieces',
    { ...pieces, count: pieceCount({ of: 'number of' }), from: cutLength({ item: 'front end' }) },
    {},
  ),
} as const;

/** The key that only this kind of line has says which it is. */
function lineFor(input: unknown) {
  const has = (key: string): boolean => isRecord(input) && own(input, key) !== undefined;
  if (has('weight')) return lines.weighed;
  if (['spacing', 'over', 'rule'].some(has)) return lines.spaced;
  return has('at') ? lines.placed : lines.lengthwise;
}

const lineCodec: Coded<DecodedCutLine, CutLineInput> = forms(
  'CutLine',
  'a line of a cut list',
  [lines.lengthwise, lines.placed, lines.spaced, lines.weighed],
  lineFor,
);

/** A cut list: what the frame is made of, how long, how many, and where. */
export const cutListCodec: Coded<readonly DecodedCutLine[], readonly CutLineInput[]> = list(
  'lines of a cut list',
  lineCodec,
);

const areaForm: Coded<DeckAreaForm, DeckAreaInput> = record(
  'DeckArea',
  'an area of deck',
  {
    name: shortText,
    length: cutSize({ item: 'length' }),
    width: cutSize({ item: 'width' }),
    from: cutLength({ item: 'front edge' }),
    surface: surfaceCodec,
  },
  {},
);

const areaCodec: Coded<DecodedDeckArea, DeckAreaInput> = made(
  areaForm,
  ({ surface: form, ...area }, context) => {
    const surface = surfaceOf(form, `${pathOf(context)}.surface`);
    return isLeft(surface) ? surface : right({ ...area, surface: surface.right, form });
  },
  ({ surface: _, form, ...area }) => ({ ...area, surface: form }),
  (input): input is DecodedDeckArea =>
    isRecord(input) && isRecord(own(input, 'surface')) && isRecord(own(input, 'form')),
);

/** A deck, area by area. */
export const deckCodec: Coded<readonly DecodedDeckArea[], readonly DeckAreaInput[]> = list('areas of deck', areaCodec);
