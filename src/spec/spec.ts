/** The spec of one trailer, its cargo and what tows it. What is left out is reported as not checked. */
import { cargoCodec } from './cargo.js';
import { shareOf } from './codec/figures.js';
import type { Coded } from './codec/kind.js';
import { list, shortText } from './codec/plain.js';
import { record } from './codec/record.js';
import { rulesCodec } from './rules.js';
import { ticketsCodec } from './tickets.js';
import { towCodec } from './tow.js';
import { trailerCodec } from './trailer.js';
import type { DecodedSpec, SpecInput } from './types/spec.js';

/** The codec of a whole spec. @example specCodec.is(orThrow(decodeSpec(spec))) // true */
export const specCodec: Coded<DecodedSpec, SpecInput> = record(
  'Spec',
  'a spec',
  { trailer: trailerCodec },
  {
    name: shortText,
    cargo: list('pieces of cargo', cargoCodec),
    tongueShare: shareOf('tongue share it is loaded to'),
    tow: towCodec,
    rules: rulesCodec,
    tickets: ticketsCodec,
  },
);
