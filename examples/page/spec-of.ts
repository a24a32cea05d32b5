/** The spec of a state: presets put together, with the typed values over them. */
import { common, type Json, machines, tires, trailers, trucks } from './presets.js';
import type { State } from './state.js';

const isRecord = (value: unknown): value is Json => typeof value === 'object' && value !== null;

/** The text at a path: as it was written, or the text of a figure with its basis; undefined where the spec has none. */
export function textAt(spec: unknown, path: string): string | undefined {
  let at: unknown = spec;
  for (const key of path.split('.')) at = isRecord(at) && Object.hasOwn(at, key) ? at[key] : undefined;
  if (isRecord(at)) return typeof at['text'] === 'string' ? at['text'] : undefined;
  return typeof at === 'string' || typeof at === 'number' ? String(at) : undefined;
}

/** The spec value of a text: the text itself, but for a record or a list from a remedy, which is JSON. */
function readAs(text: string): unknown {
  if (!/^[{[]/.test(text)) return text;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}

/** The text of a remedy's value: the figure where it is one, else JSON. */
export function textFor(value: unknown): string {
  if (typeof value === 'string') return value;
  if (isRecord(value) && typeof value['text'] === 'string') return value['text'];
  return JSON.stringify(value);
}

/** Puts a text at a path, making the records on the way; an empty text takes the key out. Lists are not made longer. */
function put(spec: Json, path: string, text: string): void {
  const keys = path.split('.');
  const last = keys.pop();
  let at: Json = spec;
  for (const key of keys) {
    if (Array.isArray(at) && !Object.hasOwn(at, key)) return;
    if (!isRecord(at[key])) at[key] = {};
    at = at[key] as Json;
  }
  if (last === undefined || (Array.isArray(at) && !Object.hasOwn(at, last))) return;
  if (text.trim() === '') delete at[last];
  else at[last] = readAs(text);
}

/** Machine names that occur more than once are numbered, because people find a machine by its name. */
function named(pieces: readonly Json[]): readonly Json[] {
  return pieces.map((piece, i) => {
    const before = pieces.slice(0, i).filter(({ name }) => name === piece['name']).length;
    return before === 0 ? piece : { ...piece, name: `${String(piece['name'])} ${before + 1}` };
  });
}

/** The spec, as JSON. */
export function specOf(state: State): Json {
  const trailer = structuredClone(trailers[state.trailer].spec) as Json;
  const onAxles = structuredClone(tires[state.tires].spec) as Json;
  const axles = (trailer['axles'] as Json[]).map((axle) => ({
    ...axle,
    tires: { ...(axle['tires'] as Json), ...onAxles },
  }));
  const tow = structuredClone(trucks[state.truck].spec) as Json;
  const cargo = named(state.machines.map((key) => structuredClone(machines[key].spec) as Json));
  const spec: Json = {
    ...structuredClone(common),
    name: trailer['name'],
    trailer: { ...trailer, axles },
    cargo: [...cargo],
    ...(Object.keys(tow).length > 0 && { tow }),
  };
  for (const [path, text] of Object.entries(state.edits)) put(spec, path, text);
  return spec;
}
