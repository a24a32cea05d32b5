/** The page: a state, a spec, an answer; every change goes round once. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type Assessment, assessJson } from '../../src/assessment/index.js';
import { leaflet } from '../../src/print/index.js';
import { forgetWidths, showAnswer, showTable } from './answer.js';
import { buildSliders, type End, letDrag, type Move, piecesOf, refreshSliders } from './deck.js';
import { byId, fill, h } from './dom.js';
import { drawAll } from './drawn-later.js';
import { faultsOf } from './faults.js';
import { buildForm, refreshForm, showFaults } from './form.js';
import type { MachineKey } from './presets.js';
import { forgetRemedies, showRemedies } from './remedy-buttons.js';
import { specOf } from './spec-of.js';
import {
  added,
  changed,
  fromFragment,
  History,
  opening,
  removed,
  type State,
  toFragment,
  typed,
  without,
} from './state.js';
import { followWhy, showWhy } from './why.js';

const history = new History(fromFragment(location.hash));
let readable: Assessment | undefined;
let asked: string | undefined;
let formOf = '';
let spoken = '';

/** What a change of which asks for another form. */
const shapeOf = ({ trailer, tires, truck, machines }: State): string =>
  JSON.stringify([trailer, tires, truck, machines]);

function speak(text: string): void {
  if (text === spoken) return;
  spoken = text;
  byId('status').textContent = text;
}

function remember(state: State): void {
  const fragment = `#${toFragment(state)}`;
  if (location.hash !== fragment) window.history.replaceState(null, '', fragment);
}

const move: Move = (index, inches, end) => {
  history.take(typed(history.now, `cargo.${index}.front`, `${Math.round(inches * 10000) / 10000} in`), `move ${index}`);
  showEnd(end);
  render();
};

function showEnd(end: End | undefined): void {
  byId('snap').textContent = end === undefined ? '' : `at the end of its window, set by ${end.setBy}`;
}

/** Reads the state, assesses, draws. What cannot be read leaves the last answer standing, and says so. */
function render(): void {
  performance.mark('change');
  const state = history.now;
  const spec = specOf(state);
  if (formOf !== shapeOf(state)) {
    formOf = shapeOf(state);
    buildForm(state, spec, asks);
  }
  refreshForm(state, spec);
  if (location.hash !== `#${toFragment(state)}`) forgetRemedies();
  const answer = assessJson(spec);
  const stale = isLeft(answer);
  byId('answer').toggleAttribute('data-stale', stale);
  byId('stale').hidden = !stale;
  const loose = showFaults(stale ? faultsOf(answer.left) : []);
  fill(byId('loose'), ...loose.map(({ path, says }) => h('li', {}, path === '' ? says : `${path}: ${says}`)));
  if (!stale) show(answer.right, state);
  else speak('cannot be read; the last readable answer stays');
  (byId('undo') as HTMLButtonElement).disabled = !history.canUndo;
  (byId('redo') as HTMLButtonElement).disabled = !history.canRedo;
  remember(state);
  performance.measure('recompute and redraw', 'change');
}

function show(assessment: Assessment, { units }: State): void {
  const pieces = piecesOf(assessment);
  const before = readable === undefined ? [] : piecesOf(readable);
  readable = assessment;
  if (pieces.map(({ name }) => name).join() !== before.map(({ name }) => name).join()) buildSliders(pieces, move);
  const line = showAnswer(assessment, units);
  refreshSliders(pieces, units);
  followWhy(assessment.checks, asked, units);
  speak(line);
}

const asks = {
  choose: (what: 'trailer' | 'tires' | 'truck' | 'units', word: string): void => {
    const parts = { trailer: /^(?:trailer|tongueShare)\b/, tires: /\.tires\./, truck: /^tow\b/, units: /^$/ } as const;
    history.take({ ...without(history.now, parts[what]), [what]: word });
    render();
  },
  type: (path: string, text: string): void => {
    history.take(typed(history.now, path, text), path);
    render();
  },
  leave: (): void => history.rest(),
  add: (machine: string): void => {
    history.take(added(history.now, machine as MachineKey));
    render();
  },
  remove: (at: number): void => {
    history.take(removed(history.now, at));
    render();
  },
};

function why(id: string | undefined): void {
  const check = readable?.checks.find((each) => each.id === id);
  if (check === undefined) return;
  asked = check.id;
  showWhy(check, history.now.units);
  byId('why-heading').focus();
}

byId('undo').addEventListener('click', () => history.undo() && render());
byId('redo').addEventListener('click', () => history.redo() && render());
byId('again').addEventListener('click', () => {
  history.take(opening);
  render();
});
byId('print').addEventListener('click', () => window.print());
byId('units').addEventListener('change', (event) => asks.choose('units', (event.target as HTMLSelectElement).value));
byId('ask').addEventListener('click', () =>
  showRemedies(specOf(history.now), (edits) => {
    history.take(changed(history.now, edits));
    render();
    byId('verdict').focus();
  }),
);
byId('close').addEventListener('click', () => byId('why').setAttribute('hidden', ''));
byId('bars').addEventListener('click', (event) => {
  const row = event.target instanceof Element ? event.target.closest<SVGGElement>('[data-check]') : null;
  why(row?.dataset['check']);
});
byId('checks').addEventListener('toggle', () => readable !== undefined && showTable(readable, history.now.units));
byId('table').addEventListener('click', (event) => {
  if (event.target instanceof HTMLElement) why(event.target.dataset['why']);
});
letDrag(
  byId('side'),
  () => (readable === undefined ? [] : piecesOf(readable)),
  move,
  () => {
    history.rest();
    showEnd(undefined);
  },
);
document.addEventListener('keydown', (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
  if (event.target instanceof HTMLInputElement && event.target.type !== 'range') return;
  event.preventDefault();
  if (event.shiftKey ? history.redo() : history.undo()) render();
});
window.addEventListener('hashchange', () => {
  if (location.hash === `#${toFragment(history.now)}`) return;
  history.take(fromFragment(location.hash));
  render();
});
window.addEventListener('resize', () => {
  forgetWidths();
  render();
});
window.addEventListener('beforeprint', () => {
  drawAll();
  if (readable === undefined) return;
  const date = new Date().toLocaleDateString();
  byId('leaflet').textContent = leaflet(readable, { units: history.now.units, date });
});
(byId('units') as HTMLSelectElement).value = history.now.units;
render();
