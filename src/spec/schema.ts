/** The spec for other programs: JSON Schema 2020-12, and the face of Standard Schema. */
import { bases } from '../trace/index.js';
import { allUnits, type Dimension, dimensionOf, show } from '../units/index.js';
import type { AnyCoded, FigureKind, RecordKind, Shape } from './codec/kind.js';
import { keyRows } from './keys.js';
import { specCodec } from './spec.js';

type Json = Readonly<Record<string, unknown>>;

const ref = (name: string): Json => ({ $ref: `#/$defs/${name}` });
const nameOfFigure = (dimension: Dimension): string => `a figure of ${dimension}`.replaceAll(' ', '-');
const basis = { type: 'string', enum: bases };
const text = { type: 'string', minLength: 1 };

/** A figure of one kind: text, a wire record, or text with its basis. */
const figureSchema = (dimension: Dimension): Json => ({
  description: `A figure of ${dimension} with its unit: as text, as a record of digits and unit, or text with what it rests on.`,
  anyOf: [
    text,
    { type: 'object', properties: { text, basis }, required: ['text'], additionalProperties: false },
    {
      type: 'object',
      properties: {
        value: { type: 'string', minLength: 1 },
        unit: { type: 'string', enum: allUnits.filter((unit) => dimensionOf(unit) === dimension) },
        basis,
      },
      required: ['value', 'unit'],
      additionalProperties: false,
    },
  ],
});

const piecesSchema = (least: number, most: number): Json => ({
  anyOf: [
    { type: 'integer', minimum: least, maximum: most },
    { type: 'string', pattern: '\\d' },
    { type: 'object', properties: { text, basis }, required: ['text'], additionalProperties: false },
  ],
});

function figure({ dimension, least, most, orWords }: FigureKind): Json {
  const range = `From ${show(least)} to ${show(most)}.`;
  return orWords === undefined
    ? { ...ref(nameOfFigure(dimension)), $comment: range }
    : { anyOf: [{ type: 'string', enum: orWords }, ref(nameOfFigure(dimension))], $comment: range };
}

/** What a codec reads, as a schema that refers to the records by their names. */
function schemaOf({ says }: AnyCoded): Json {
  switch (says.kind) {
    case 'figure':
      return figure(says);
    case 'pieces':
      return piecesSchema(says.least, says.most);
    case 'choice':
      return { type: 'string', enum: says.words };
    case 'count':
      return { type: 'integer', minimum: says.least, maximum: says.most };
    case 'text':
      return { type: 'string', minLength: 1, maxLength: says.most };
    case 'yes or no':
      return { type: 'boolean' };
    case 'list':
      return { type: 'array', items: schemaOf(says.each), minItems: says.least, maxItems: says.most };
    case 'record':
    case 'forms':
      return ref(says.type);
  }
}

const capital = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);

function recordSchema({ type, title, required, optional }: RecordKind): Json {
  const known = keyRows.find((rows) => rows.type === type);
  const property = ([key, codec]: readonly [string, AnyCoded]): readonly [string, Json] => {
    const row = known?.rows.find(([name]) => name === key);
    const [, what = '', , example] = row ?? [];
    const examples = row === undefined || row.length === 3 ? {} : { examples: [example] };
    return [key, { ...schemaOf(codec), description: capital(what), ...examples }];
  };
  return {
    title: capital(title),
    ...(known?.about !== undefined && { description: known.about }),
    type: 'object',
    properties: Object.fromEntries(Object.entries({ ...required, ...optional } as Shape).map(property)),
    ...(Object.keys(required).length > 0 && { required: Object.keys(required) }),
    additionalProperties: false,
  };
}

/** Adds the records below a codec, each once. */
function define({ says }: AnyCoded, defs: Record<string, unknown>): void {
  if (says.kind === 'list') define(says.each, defs);
  if (says.kind === 'figure') defs[nameOfFigure(says.dimension)] ??= figureSchema(says.dimension);
  if ((says.kind !== 'record' && says.kind !== 'forms') || Object.hasOwn(defs, says.type)) return;
  if (says.kind === 'forms') {
    defs[says.type] = { title: capital(says.title), anyOf: says.forms.map(schemaOf) };
    says.forms.forEach((form) => {
      define(form, defs);
    });
    return;
  }
  defs[says.type] = recordSchema(says);
  for (const codec of Object.values({ ...says.required, ...says.optional })) define(codec, defs);
}

/**
 * What must a spec look like, for editors and validators of other languages?
 *
 * A spec that this library reads is valid by it; a valid one may still be refused, because ranges and contradictions are the
 * reader's. `docs/spec.schema.json` is its text, exported as `trailer-ratings/spec.schema.json`.
 *
 * @returns JSON Schema, draft 2020-12
 * @example specJsonSchema().title // 'A spec'
 * @source JSON Schema, draft 2020-12
 */
export function specJsonSchema(): Json {
  const defs: Record<string, unknown> = {};
  define(specCodec, defs);
  const { Spec, ...others } = defs;
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    ...(Spec as Json),
    $defs: others,
  };
}
