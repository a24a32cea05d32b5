/** Every parser of text, as a function of the text alone. */
import type { Either } from 'fp-ts/lib/Either.js';
import { tiedownWll } from '../../src/load/index.js';
import { publishedSection, readSectionName } from '../../src/members/index.js';
import { decodeMember, decodeSurface, readJson } from '../../src/spec/index.js';
import { dateCode, readTireDesignation } from '../../src/tires/index.js';
import { parseAny, parseLength, parseMeasure, parseQuantity } from '../../src/units/index.js';

export type Parser = (text: string) => Either<unknown, unknown>;

export const parsers: Readonly<Record<string, Parser>> = {
  parseAny,
  'parseQuantity in lb': (text) => parseQuantity(text, 'lb'),
  'parseMeasure of pressure': (text) => parseMeasure(text, 'pressure'),
  'parseLength in in': (text) => parseLength(text, 'in'),
  readTireDesignation,
  dateCode,
  readSectionName,
  publishedSection,
  'decodeMember, a designation': (text) => decodeMember(text, 'member'),
  'decodeSurface, a floor plate': (text) => decodeSurface({ floorPlate: text }, 'surface'),
  'tiedownWll, a chain by its size': (text) => tiedownWll([{ part: 'chain', size: text, grade: '70' }]),
  'tiedownWll, webbing by its width': (text) => tiedownWll([{ part: 'webbing', width: text }]),
  readJson,
};
