/** The form: three folds of fields, choices above each; what was typed stays as it was typed. */
import { byId, fill, h } from './dom.js';
import { at, type Fault } from './faults.js';
import { type Field, type Fold, fieldsFor } from './fields.js';
import { type Json, machines, type Preset, tires, trailers, trucks } from './presets.js';
import { textAt } from './spec-of.js';
import type { State } from './state.js';

/** What the form asks of the page when something changes. */
export interface Asked {
  readonly choose: (what: 'trailer' | 'tires' | 'truck' | 'units', word: string) => void;
  readonly type: (path: string, text: string) => void;
  readonly leave: () => void;
  readonly add: (machine: string) => void;
  readonly remove: (at: number) => void;
}

const idOf = (path: string): string => `field-${path.replaceAll('.', '-')}`;

function select(
  id: string,
  name: string,
  table: Readonly<Record<string, Preset>>,
  now: string,
  change: (word: string) => void,
) {
  const options = Object.entries(table).map(([key, preset]) =>
    h('option', { value: key, selected: key === now }, preset.name),
  );
  const made = h('select', { id }, ...options);
  made.addEventListener('change', () => change(made.value));
  return h('p', { class: 'field' }, h('label', { for: id }, name), made);
}

function input({ path, name, hint }: Field, spec: Json, asked: Asked): HTMLElement {
  const id = idOf(path);
  const made = h('input', {
    id,
    'data-path': path,
    value: textAt(spec, path) ?? '',
    autocomplete: 'off',
    spellcheck: 'false',
    'aria-describedby': `${id}-hint ${id}-fault`,
  });
  made.addEventListener('input', () => asked.type(path, made.value));
  made.addEventListener('change', () => asked.leave());
  return h(
    'p',
    { class: 'field' },
    h('label', { for: id }, name),
    made,
    h('span', { class: 'hint', id: `${id}-hint` }, hint),
    h('span', { class: 'fault', id: `${id}-fault` }),
  );
}

function machineChoices(state: State, names: readonly string[], asked: Asked): readonly HTMLElement[] {
  const pick = h(
    'select',
    { id: 'add-machine' },
    ...Object.entries(machines).map(([key, { name }]) => h('option', { value: key }, name)),
  );
  const add = h('button', { type: 'button', id: 'add' }, 'add to the deck');
  add.addEventListener('click', () => asked.add(pick.value));
  const removes = names.map((name, i) => {
    const button = h('button', { type: 'button' }, `take ${name} off`);
    button.addEventListener('click', () => asked.remove(i));
    return button;
  });
  return [
    h('p', { class: 'field' }, h('label', { for: 'add-machine' }, 'another machine'), pick, add),
    ...(state.machines.length === 0 ? [] : [h('p', { class: 'buttons' }, ...removes)]),
  ];
}

/** Builds the form anew; folds that were open stay open. */
export function buildForm(state: State, spec: Json, asked: Asked): void {
  const axles = ((spec['trailer'] as Json)['axles'] as readonly unknown[]).length;
  const names = (spec['cargo'] as readonly Json[]).map(({ name }) => String(name));
  const fields = fieldsFor(state, axles, names);
  const inFold = (fold: Fold): readonly HTMLElement[] =>
    fields.filter((each) => each.fold === fold).map((each) => input(each, spec, asked));
  fill(
    byId('fold-trailer'),
    select('choose-trailer', 'trailer', trailers, state.trailer, (word) => asked.choose('trailer', word)),
    select('choose-tires', 'tires', tires, state.tires, (word) => asked.choose('tires', word)),
    ...inFold('trailer'),
  );
  fill(
    byId('fold-truck'),
    select('choose-truck', 'tow vehicle', trucks, state.truck, (word) => asked.choose('truck', word)),
    ...inFold('truck'),
  );
  fill(byId('fold-cargo'), ...machineChoices(state, names, asked), ...inFold('cargo'));
}

/** Brings the texts of the fields up to date, but for the one that is being typed in. */
export function refreshForm(state: State, spec: Json): void {
  for (const field of document.querySelectorAll<HTMLInputElement>('input[data-path]')) {
    const path = field.dataset['path'] ?? '';
    const text = state.edits[path] ?? textAt(spec, path) ?? '';
    if (field !== document.activeElement && field.value !== text) field.value = text;
  }
}

/** Puts each fault next to its field; faults without a field are returned. */
export function showFaults(faults: readonly Fault[]): readonly Fault[] {
  const placed = new Set<Fault>();
  for (const field of document.querySelectorAll<HTMLInputElement>('input[data-path]')) {
    const own = at(faults, field.dataset['path'] ?? '');
    for (const fault of own) placed.add(fault);
    field.toggleAttribute('aria-invalid', false);
    if (own.length > 0) {
      field.setAttribute('aria-invalid', 'true');
      field.closest('details')?.setAttribute('open', '');
    }
    const place = document.getElementById(`${field.id}-fault`);
    if (place !== null) place.textContent = own.map(({ says }) => says).join('; ');
  }
  return faults.filter((fault) => !placed.has(fault));
}
