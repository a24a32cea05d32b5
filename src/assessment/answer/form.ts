/** The form of a plain answer as a value: its keys and the type of each. */
import { ruleKinds } from '../../rules/index.js';
import { bases } from '../../trace/index.js';

/** What a value must be. The text is its words for an error. */
export type Shape =
  | 'a text'
  | 'a whole number from 0'
  | 'a JSON value'
  | { readonly oneOf: readonly (string | boolean)[] }
  | { readonly listOf: Shape; readonly count?: number }
  | { readonly record: Readonly<Record<string, Shape>>; readonly maybe?: Readonly<Record<string, Shape>> };

const [text, place] = ['a text', 'a whole number from 0'] as const;
const basis: Shape = { oneOf: bases };
const figure: Shape = { record: { figure: text }, maybe: { node: place } };
const notes: Shape = {
  listOf: { record: { says: text, tag: text }, maybe: { figures: { listOf: figure }, paths: { listOf: text } } },
};
const checks: Shape = {
  listOf: {
    record: {
      id: text,
      load: text,
      name: text,
      rating: text,
      reserve: text,
      used: text,
      verdict: { oneOf: ['within', 'over'] },
    },
    maybe: { basis, nodes: { listOf: place, count: 4 } },
  },
};
const payloadFigure: Shape = {
  record: { figure: text, governing: { listOf: text } },
  maybe: { node: place, shares: { record: { from: figure, to: figure } } },
};
const payload: Shape = { record: {}, maybe: { best: payloadFigure, anywhere: payloadFigure } };
const outcomes = ['applies', 'kept', 'crossed', 'does not apply', 'cannot be told'];
const rules: Shape = {
  listOf: {
    record: {
      clause: text,
      id: text,
      kind: { oneOf: ruleKinds },
      outcome: { oneOf: outcomes },
      topic: text,
      verify: { oneOf: [true, false] },
    },
    maybe: { effect: text, missing: { listOf: text } },
  },
};
const source: Shape = {
  record: { grade: text, id: text, title: text },
  maybe: { address: text, clause: text, edition: text, note: text },
};

const leaf = { figure: text, name: text, basis };
/** Which keys a node has, by what it is. */
export const nodeShapes: Readonly<Record<string, Shape>> = {
  given: { record: { ...leaf, is: text }, maybe: { path: text } },
  'looked up': { record: { ...leaf, is: text, key: text, source: place, table: text } },
  constant: { record: { figure: text, is: text }, maybe: { name: text, source: place } },
};
/** Any other node: a step. */
export const step: Shape = {
  record: { basis, figure: text, is: text, of: { listOf: place } },
  maybe: {
    name: text,
    rounding: { record: { mode: text, step: text } },
    source: place,
  },
};

/** The whole answer but its nodes. */
export const answerShape: Shape = {
  record: {
    attention: notes,
    checks,
    checksum: text,
    format: text,
    library: text,
    notes,
    open: { listOf: { record: { id: text, missing: text, paths: { listOf: text }, what: text } } },
    partChecks: checks,
    partsChecked: place,
    tables: text,
    uplift: { listOf: { record: { figure: text, what: text }, maybe: { node: place } } },
    verdict: { oneOf: ['over', 'attention', 'within', 'unchecked'] },
    version: place,
  },
  maybe: {
    inEffect: { listOf: text },
    payload,
    rules,
    spec: 'a JSON value',
    working: { record: { nodes: { listOf: 'a JSON value' }, sources: { listOf: source } } },
  },
};
