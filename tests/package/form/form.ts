/** A form as somebody writes it in an afternoon: fields by their keys, every fault at its field, the first page, an answer that is sent. */
import { type Answer, answerOf, assessJson, verifyAnswer } from 'trailer-ratings/assessment';
import { wordsFor } from 'trailer-ratings/errors';
import { brief } from 'trailer-ratings/print';
import { wordsForProblem } from 'trailer-ratings/spec';

type Fields = Record<string, unknown>;

const inputs = [...document.querySelectorAll('input')];
const byId = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no element ${id}`);
  return found;
};

/** Fields that were left empty are left out. */
function specFrom(): Fields {
  const spec: Fields = { trailer: { hitch: 'ball', curb: {}, axles: [{ brakes: {} }] }, cargo: [{}] };
  for (const { name, value } of inputs) {
    if (value.trim() === '') continue;
    const keys = name.split('.');
    const last = keys.pop() ?? name;
    let at = spec;
    for (const key of keys) at = at[key] as Fields;
    at[last] = value;
  }
  return spec;
}

function outputOf(path: string): Element | null {
  const field = inputs.find(({ name }) => name === path);
  return field?.parentElement?.nextElementSibling ?? null;
}

let answer: Answer | undefined;

function show(): void {
  for (const output of document.querySelectorAll('output')) output.textContent = '';
  answer = undefined;
  const assessed = assessJson(specFrom());
  if (assessed._tag === 'Left') {
    const error = assessed.left;
    byId('verdict').textContent = 'not yet';
    byId('brief').textContent = '';
    const problems = error.tag === 'UndecodableSpec' ? error.problems : [];
    for (const problem of problems) {
      const output = outputOf(problem.path);
      if (output !== null) output.textContent = wordsForProblem(problem);
    }
    if (problems.length === 0) byId('brief').textContent = `${error.path ?? ''} ${wordsFor(error)}`;
    return;
  }
  answer = answerOf(assessed.right);
  byId('verdict').textContent = assessed.right.verdict;
  byId('brief').textContent = brief(assessed.right);
}

function send(): void {
  const sent: unknown = JSON.parse(JSON.stringify(structuredClone(answer ?? null)));
  const found = verifyAnswer(sent);
  if (found._tag === 'Left') byId('verified').textContent = wordsFor(found.left);
  else byId('verified').textContent = found.right.follows ? 'follows' : `${found.right.at} does not follow`;
}

for (const input of inputs) input.addEventListener('input', show);
byId('send').addEventListener('click', send);
show();
