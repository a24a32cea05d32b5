/** The table of keys: every key of the spec, what it means, where one reads it, what stays unasked without it. */
import { show } from '../units/index.js';
import { collected } from '../units/internal.js';
import type { AnyCoded, Kind } from './codec/kind.js';
import { axlesKeys } from './data/axles.js';
import { cargoKeys } from './data/cargo.js';
import { curbKeys } from './data/curb.js';
import { deckKeys } from './data/deck.js';
import { frameKeys } from './data/frame.js';
import { memberKeys } from './data/member.js';
import { rulesKeys } from './data/rules.js';
import { rootKeys } from './data/spec.js';
import { ticketsKeys } from './data/tickets.js';
import { towKeys } from './data/tow.js';
import { trailerKeys } from './data/trailer.js';
import type { BranchRow, KeyRows, LeafRow } from './key-row.js';
import { type PlacedRecord, specRecords } from './records.js';

/** The words of all records, in the order of the guide. */
export const keyRows: readonly KeyRows[] = [
  ...rootKeys,
  ...trailerKeys,
  ...axlesKeys,
  ...curbKeys,
  ...frameKeys,
  ...memberKeys,
  ...deckKeys,
  ...cargoKeys,
  ...towKeys,
  ...rulesKeys,
  ...ticketsKeys,
];

/** One key of the spec, as plain data: for forms, tables and documents. */
export interface SpecKey {
  /** Its path, `[]` for the entries of a list: `trailer.axles[].gawr`. */
  readonly path: string;
  /** The record it belongs to: `trailer.axles[]`; empty for the spec itself. */
  readonly record: string;
  /** The key in that record: `gawr`. */
  readonly key: string;
  /** Which form of the record has it, where a record may have one of several: `pieces at a spacing`. */
  readonly form?: string;
  /** Whether it must be there when its record is. */
  readonly must: boolean;
  /** What is to be written: a figure, a number of pieces, one of some words, a whole number, a text, yes or no, a record, a list. */
  readonly kind: Kind['kind'];
  /** For a figure: what it measures. */
  readonly dimension?: string;
  /** For a figure: the unit the library calculates in; any unit of the dimension is read. */
  readonly unit?: string;
  /** For a figure: its basis by default. */
  readonly basis?: string;
  /** The least it may be. */
  readonly least?: string;
  /** The most it may be; for a list, the most places it may have. */
  readonly most?: string;
  /** The words it may be, or that may replace the figure. */
  readonly words?: readonly string[];
  /** What it is. */
  readonly what: string;
  /** Where one reads it; empty for a record. */
  readonly where: string;
  /** An example; absent for a record. */
  readonly example?: unknown;
  /** What stays unasked without it; empty for a key that must be there. */
  readonly without: string;
}

type Facts = Pick<SpecKey, 'kind' | 'dimension' | 'unit' | 'basis' | 'least' | 'most' | 'words'>;

/** What a codec says of itself, as plain data. */
function factsOf({ says }: AnyCoded): Facts {
  const { kind } = says;
  switch (says.kind) {
    case 'figure': {
      const { dimension, unit, basis, least, most, orWords } = says;
      const ends = { least: show(least), most: show(most) };
      return { kind, dimension, ...(unit && { unit }), basis, ...ends, ...(orWords && { words: orWords }) };
    }
    case 'pieces':
    case 'count':
    case 'list':
      return { kind, least: String(says.least), most: String(says.most) };
    case 'choice':
      return { kind, words: says.words };
    case 'text':
      return { kind, most: String(says.most) };
    default:
      return { kind };
  }
}

/** The words of a row: a record has none for where it is read. */
function wordsOf(row: LeafRow | BranchRow | undefined): Pick<SpecKey, 'what' | 'where' | 'example' | 'without'> {
  if (row === undefined) return { what: '', where: '', without: '' };
  if (row.length === 3) return { what: row[1], where: '', without: row[2] };
  return { what: row[1], where: row[2], example: row[3], without: row[4] };
}

function keysOf({ path: record, form, says }: PlacedRecord): readonly SpecKey[] {
  const rows = keyRows.find(({ type }) => type === says.type)?.rows ?? [];
  const codecs = collected([says.required, says.optional], (shape, i) =>
    Object.entries(shape).map(([key, codec]) => ({ key, codec, must: i === 0 })),
  );
  return codecs.map(({ key, codec, must }) => ({
    path: record === '' ? key : `${record}.${key}`,
    record,
    key,
    ...(form !== undefined && { form }),
    must,
    ...factsOf(codec),
    ...wordsOf(rows.find(([name]) => name === key)),
  }));
}

/**
 * Every key of the spec as plain data, the outer records first.
 *
 * @example specKeys.find(({ path }) => path === 'trailer.axles[].gawr').where // certification label
 */
export const specKeys: readonly SpecKey[] = /* @__PURE__ */ specRecords().flatMap(keysOf);
