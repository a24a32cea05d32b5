/** The types of a spec, written and read, from the table of keys. */
import type { AnyCoded, FormsKind, RecordKind } from '../src/spec/codec/kind.js';
import { axlesKeys } from '../src/spec/data/axles.js';
import { cargoKeys } from '../src/spec/data/cargo.js';
import { curbKeys } from '../src/spec/data/curb.js';
import { deckKeys } from '../src/spec/data/deck.js';
import { frameKeys } from '../src/spec/data/frame.js';
import { memberKeys } from '../src/spec/data/member.js';
import { rulesKeys } from '../src/spec/data/rules.js';
import { rootKeys } from '../src/spec/data/spec.js';
import { ticketsKeys } from '../src/spec/data/tickets.js';
import { towKeys } from '../src/spec/data/tow.js';
import { trailerKeys } from '../src/spec/data/trailer.js';
import type { KeyRows } from '../src/spec/key-row.js';
import { type SpecKey, specKeys } from '../src/spec/keys.js';
import { specCodec } from '../src/spec/spec.js';

/** One file a part of the spec, with what it is about. */
const groups: Readonly<Record<string, readonly [about: string, rows: readonly KeyRows[]]>> = {
  spec: ['a whole spec', rootKeys],
  trailer: ['the trailer', trailerKeys],
  axles: ['an axle and its parts', axlesKeys],
  curb: ['the empty trailer', curbKeys],
  frame: ['a cut list', frameKeys],
  member: ['what a cut list is cut from', memberKeys],
  deck: ['a deck', deckKeys],
  cargo: ['what lies on the trailer', cargoKeys],
  tow: ['the tow vehicle', towKeys],
  rules: ['facts for rules, and the rules of a State', rulesKeys],
  tickets: ['scale tickets', ticketsKeys],
};

type Named = RecordKind | FormsKind;

/** Every record and every choice of forms below a codec, once, the outer ones first. */
function namedBelow({ says }: AnyCoded, found = new Map<string, Named>()): ReadonlyMap<string, Named> {
  if (says.kind === 'list') return namedBelow(says.each, found);
  if (says.kind !== 'record' && says.kind !== 'forms') return found;
  if (found.has(says.type)) return found;
  found.set(says.type, says);
  const inside = says.kind === 'forms' ? says.forms : Object.values({ ...says.required, ...says.optional });
  for (const codec of inside) namedBelow(codec, found);
  return found;
}

const named = namedBelow(specCodec);

/** The file of a type: that of its rows; a choice of forms is in the file of its first record. */
function homeOf(type: string): string {
  const says = named.get(type);
  const first = says?.kind === 'forms' ? says.forms.find((form) => form.says.kind === 'record')?.says : says;
  const name = first?.kind === 'record' ? first.type : type;
  const home = Object.entries(groups).find(([, [, rows]]) => rows.some((row) => row.type === name));
  if (home === undefined) throw new Error(`no words for the record ${name}`);
  return home[0];
}

const inputs: Readonly<Record<string, string>> = {
  mass: 'WeightInput',
  force: 'ForceInput',
  length: 'LengthInput',
  pressure: 'PressureInput',
  ratio: 'ShareInput',
  angle: 'AngleInput',
  'weight per length': 'WeightPerLengthInput',
  'weight per area': 'WeightPerAreaInput',
  density: 'DensityInput',
};

const literal = (word: string): string => (word.includes("'") ? JSON.stringify(word) : `'${word}'`);
const union = (words: readonly string[]): string => words.map(literal).join(' | ');

type Side = 'written' | 'read';

/** The type of what a codec reads, or of what comes out. */
function typeOf({ says }: AnyCoded, side: Side): string {
  switch (says.kind) {
    case 'figure': {
      const unit = says.unit === undefined ? `UnitOf<${literal(says.dimension)}>` : literal(says.unit);
      const figure = side === 'written' ? (inputs[says.dimension] as string) : `Derived<${unit}>`;
      return says.orWords === undefined ? figure : `${union(says.orWords)} | ${figure}`;
    }
    case 'pieces':
      return side === 'written' ? 'PiecesInput' : "Derived<'ratio'>";
    case 'choice':
      return union(says.words);
    case 'count':
      return 'number';
    case 'text':
      return 'string';
    case 'yes or no':
      return 'boolean';
    case 'list': {
      const each = typeOf(says.each, side);
      return `readonly ${each.includes('|') ? `(${each})` : each}[]`;
    }
    case 'record':
    case 'forms':
      return side === 'written' ? `${says.type}Input` : `Decoded${says.type}`;
  }
}

const sentence = (text: string): string => {
  const whole = text.trim();
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
};
const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a key is, where one reads it, an example, what stays unasked without it. */
export function wordsOfKey({ what, where, example, without, must, kind }: SpecKey): string {
  const shown = example === undefined ? [] : [`Example: \`${JSON.stringify(example)}\`.`];
  const read = where === '' ? [] : [`Where: ${sentence(where)}`];
  const left = must ? [] : [`Without it: ${sentence(without)}`];
  const list = kind === 'list' && example === undefined ? ['A list.'] : [];
  return [sentence(upper(what)), ...list, ...read, ...shown, ...left].join(' ');
}

/** A comment of at most 120 columns. */
function comment(text: string, indent: string): string {
  const line = `${indent}/** ${text} */`;
  if (line.length <= 120) return line;
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    if (current !== '' && `${indent} * ${current} ${word}`.length > 120) {
      lines.push(current);
      current = word;
    } else current = current === '' ? word : `${current} ${word}`;
  }
  return [`${indent}/**`, ...[...lines, current].map((each) => `${indent} * ${each}`), `${indent} */`].join('\n');
}

function interfaceOf(says: RecordKind, side: Side, about: string | undefined): string {
  const decoded = says.made === true ? `${says.type}Form` : `Decoded${says.type}`;
  const name = side === 'written' ? `${says.type}Input` : decoded;
  const head = [upper(says.title), ...(side === 'read' ? ['as it was read'] : [])].join(', ');
  const keys = [says.required, says.optional].flatMap((shape, i) =>
    Object.entries(shape).map(([key, codec]) => {
      const words = specKeys.find(
        (each) => each.key === key && recordTypes.get(each.record + (each.form ?? '')) === says.type,
      );
      const type = typeOf(codec, side);
      const property = i === 0 ? `${key}: ${type}` : `${key}?: ${type} | undefined`;
      return `${words === undefined ? '' : `${comment(side === 'written' ? wordsOfKey(words) : sentence(upper(words.what)), '  ')}\n`}  readonly ${property};`;
    }),
  );
  const text = sentence(head) + (about === undefined ? '' : ` ${about}`);
  return `${comment(text, '')}\nexport interface ${name} {\n${keys.join('\n')}\n}`;
}

/** The type of the record at each path and form. */
const recordTypes = new Map<string, string>();
function noteRecords({ says }: AnyCoded, path: string, form = ''): void {
  if (says.kind === 'list') noteRecords(says.each, `${path}[]`);
  else if (says.kind === 'forms')
    for (const each of says.forms) noteRecords(each, path, each.says.kind === 'record' ? each.says.title : '');
  else if (says.kind === 'record') {
    recordTypes.set(path + form, says.type);
    for (const [key, codec] of Object.entries({ ...says.required, ...says.optional }))
      noteRecords(codec, path === '' ? key : `${path}.${key}`);
  }
}
noteRecords(specCodec, '');

function formsType({ type, title, forms, made }: FormsKind, side: Side): string {
  const read = made === true ? `${type}Form` : `Decoded${type}`;
  const name = side === 'written' ? `${type}Input` : read;
  const text = `${upper(title)}${side === 'read' ? ', as it was read' : ''}.`;
  return `${comment(text, '')}\nexport type ${name} = ${forms.map((form) => typeOf(form, side)).join(' | ')};`;
}

/** Where the names come from that a file uses and does not declare. */
function importsOf(body: string, group: string): readonly string[] {
  const declared = new Set([...body.matchAll(/export (?:interface|type) (\w+)/g)].map(([, name]) => name));
  const from = new Map<string, string[]>();
  const add = (file: string, name: string): void => {
    from.set(file, [...(from.get(file) ?? []), name]);
  };
  const code = body.replace(/\/\*\*[\s\S]*?\*\/|'[^'\n]*'|"[^"\n]*"/g, '');
  for (const name of [...new Set(code.match(/\b[A-Z]\w+\b/g))].filter((each) => !declared.has(each)).sort()) {
    if (name === 'Derived') add('../../trace/index.js', name);
    else if (name === 'UnitOf') add('../../units/index.js', name);
    else if (Object.values(inputs).includes(name) || name === 'PiecesInput') add('./figures.js', name);
    else {
      const type = name.replace(/^Decoded|Input$|Form$/g, '');
      const isMade = name.startsWith('Decoded') && named.get(type)?.made === true;
      const home = isMade ? 'made' : homeOf(type);
      if (home !== group) add(`./${home}.js`, name);
    }
  }
  return [...from]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([file, names]) => `import type { ${names.join(', ')} } from '${file}';`);
}

/** The files of types, by their path. */
export function typeFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const [group, [about, rows]] of Object.entries(groups)) {
    const here = [...named.values()].filter(({ type }) => homeOf(type) === group);
    const body = here
      .flatMap((says) =>
        (['written', 'read'] as const).map((side) =>
          says.kind === 'forms'
            ? formsType(says, side)
            : interfaceOf(
                says,
                side,
                side === 'written' ? rows.find(({ type }) => type === says.type)?.about : undefined,
              ),
        ),
      )
      .join('\n\n');
    const head = `/** The types of ${about}, as written and as read. Made by \`npm run keys\` from the table of keys. */`;
    files.set(`src/spec/types/${group}.ts`, [head, ...importsOf(body, group), '', body, ''].join('\n'));
  }
  return files;
}
