/** The empty trailer: weighed, or built up from items, frame and deck. */
import { lengthOf, shareOf, weightOf } from './codec/figures.js';
import type { Coded } from './codec/kind.js';
import { count, list, shortText } from './codec/plain.js';
import { record } from './codec/record.js';
import { cutListCodec, deckCodec } from './frame/cut-list.js';
import type { CurbInput, DecodedCurb } from './types/curb.js';

const item = record(
  'Item',
  'a part of the trailer',
  { name: shortText, weight: weightOf({ item: 'weight' }), at: lengthOf({ item: 'position' }, -120) },
  { count: count(1, 500) },
);

const added = record(
  'AddedPart',
  'a part added after the trailer was weighed',
  { name: shortText, weight: weightOf({ item: 'weight' }), at: lengthOf({ item: 'position' }, -120) },
  {},
);

/** A tongue weighed with a bathroom scale and a beam, the coupler resting on the beam. */
const lever = record(
  'TongueByLever',
  'tongue by beam and scale',
  {
    reading: weightOf('scale reading', 'scale'),
    beamTare: weightOf('beam alone', 'scale'),
    pipeToTongue: lengthOf('pipe to tongue', 1),
    tongueToScale: lengthOf('tongue to scale'),
  },
  {},
);

/** The empty trailer. */
export const curbCodec: Coded<DecodedCurb, CurbInput> = record(
  'Curb',
  'the empty trailer: weighed, or built up from items, frame and deck',
  {},
  {
    weight: weightOf('trailer weight', 'stated', 1),
    tongue: weightOf('trailer tongue load'),
    tongueByLever: lever,
    added: list('added parts', added),
    items: list('items', item),
    frame: cutListCodec,
    deck: deckCodec,
    grows: list('names of the lines that grow with the deck', shortText),
    tolerance: shareOf('tolerance of the built-up weight', '0'),
  },
);
