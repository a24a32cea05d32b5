/** What has been chosen and typed: one value, written to the address and read from it. */
import {
  type MachineKey,
  machines,
  type TireKey,
  type TrailerKey,
  type TruckKey,
  tires,
  trailers,
  trucks,
} from './presets.js';

export interface State {
  readonly trailer: TrailerKey;
  readonly tires: TireKey;
  readonly truck: TruckKey;
  readonly machines: readonly MachineKey[];
  /** What was typed over a preset, by its path in the spec; an empty text takes the key out. */
  readonly edits: Readonly<Record<string, string>>;
  readonly units: 'us' | 'metric';
}

/** Complete: the first thing seen is an answer. */
export const opening: State = {
  trailer: 'td14',
  tires: 'own',
  truck: 'yard',
  machines: ['excavator'],
  edits: {},
  units: 'us',
};

const mostMachines = 6;
const mostEdits = 200;
const mostLetters = 1000;

/** The state as the fragment of an address. A typed value is kept under its path. */
export function toFragment({ edits, machines: pieces, ...rest }: State): string {
  const words = new URLSearchParams({ ...rest, machines: pieces.join(' ') });
  for (const [path, text] of Object.entries(edits)) words.set(path, text);
  return words.toString();
}

const oneOf = <K extends string>(table: Readonly<Record<K, unknown>>, word: string | null, otherwise: K): K =>
  word !== null && Object.hasOwn(table, word) ? (word as K) : otherwise;

const ownWords = ['trailer', 'tires', 'truck', 'machines', 'units'];
const spoken = /^(?:trailer|tow|cargo|tongueShare)(?:\.[A-Za-z0-9]+){0,6}$/;

/** Reads a fragment; what it does not know it leaves out, so that any address gives a page. */
export function fromFragment(fragment: string): State {
  const words = new URLSearchParams(fragment.replace(/^#/, ''));
  const pieces = words.get('machines');
  const edits = [...words]
    .filter(([path]) => !ownWords.includes(path) && spoken.test(path))
    .slice(0, mostEdits)
    .map(([path, text]) => [path, text.slice(0, mostLetters)] as const);
  return {
    trailer: oneOf(trailers, words.get('trailer'), opening.trailer),
    tires: oneOf(tires, words.get('tires'), opening.tires),
    truck: oneOf(trucks, words.get('truck'), opening.truck),
    machines:
      pieces === null
        ? opening.machines
        : pieces
            .split(' ')
            .filter((word): word is MachineKey => Object.hasOwn(machines, word))
            .slice(0, mostMachines),
    edits: Object.fromEntries(edits),
    units: words.get('units') === 'metric' ? 'metric' : 'us',
  };
}

/** The state with something typed at a path. */
export const typed = (state: State, path: string, text: string): State => ({
  ...state,
  edits: { ...state.edits, [path]: text },
});

/** The state with several places changed at once: what a remedy does. */
export const changed = (state: State, edits: Readonly<Record<string, string>>): State => ({
  ...state,
  edits: { ...state.edits, ...edits },
});

/** Without what was typed under some part of the spec: another trailer brings its own figures. */
export const without = (state: State, part: RegExp): State => ({
  ...state,
  edits: Object.fromEntries(Object.entries(state.edits).filter(([path]) => !part.test(path))),
});

/** One machine more, at the end. */
export const added = (state: State, machine: MachineKey): State =>
  state.machines.length >= mostMachines ? state : { ...state, machines: [...state.machines, machine] };

/** Without the machine at a place; what was typed for those behind it moves up. */
export function removed(state: State, at: number): State {
  const edits = Object.entries(state.edits).flatMap(([path, text]) => {
    const piece = /^cargo\.(\d+)\.(.*)$/.exec(path);
    if (piece === null) return [[path, text] as const];
    const index = Number(piece[1]);
    if (index === at) return [];
    return [[`cargo.${index > at ? index - 1 : index}.${piece[2]}`, text] as const];
  });
  return { ...state, machines: state.machines.filter((_, i) => i !== at), edits: Object.fromEntries(edits) };
}

/** The states before this one and after it. Changes of one field in a row count as one. */
export class History {
  readonly #past: State[] = [];
  #ahead: State[] = [];
  #last: string | undefined;
  now: State;

  constructor(first: State) {
    this.now = first;
  }

  /** Takes a new state; `of` names what changes, so that typing a word is one step. */
  take(next: State, of?: string): void {
    if (of === undefined || of !== this.#last) this.#past.push(this.now);
    this.#last = of;
    this.#ahead = [];
    this.now = next;
  }

  /** The next change is a step of its own. */
  rest(): void {
    this.#last = undefined;
  }

  undo(): boolean {
    const before = this.#past.pop();
    if (before === undefined) return false;
    this.#ahead.push(this.now);
    this.now = before;
    this.#last = undefined;
    return true;
  }

  redo(): boolean {
    const next = this.#ahead.pop();
    if (next === undefined) return false;
    this.#past.push(this.now);
    this.now = next;
    this.#last = undefined;
    return true;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  get canRedo(): boolean {
    return this.#ahead.length > 0;
  }
}
