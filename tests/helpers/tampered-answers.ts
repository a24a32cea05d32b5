/** One seeded tampering of a plain answer: a figure, a verdict, a looked-up value, an edge of the working, a basis. */
import type { Answer } from '../../src/assessment/index.js';
import { bases } from '../../src/trace/index.js';
import { type Chance, chanceOf } from './random/chance.js';

type Json = Record<string, unknown>;

export const tamperings = ['figure', 'printed figure', 'verdict', 'looked-up value', 'edge', 'basis'] as const;
export type Tampering = (typeof tamperings)[number];

export interface Tampered {
  readonly kind: Tampering;
  /** Where, and from what to what. */
  readonly done: string;
  readonly answer: Answer;
}

/** One digit of a figure becomes another. */
function otherDigits(text: string, chance: Chance): string {
  const digits = [...text].flatMap((each, i) => (/\d/.test(each) ? [i] : []));
  const at = chance.pick(digits as [number, ...number[]]);
  const digit = (Number(text[at]) + chance.whole(1, 9)) % 10;
  return `${text.slice(0, at)}${digit}${text.slice(at + 1)}`;
}

interface Edit {
  readonly at: Json;
  readonly key: string;
  readonly to: unknown;
}

const otherOf = (words: readonly string[], word: unknown, chance: Chance): string =>
  chance.pick(words.filter((each) => each !== word) as unknown as [string, ...string[]]);

function editOf(kind: Tampering, answer: Json, chance: Chance): Edit | undefined {
  const nodes = (answer as unknown as { working: { nodes: Json[] } }).working.nodes;
  const checks = [...(answer['checks'] as Json[]), ...(answer['partChecks'] as Json[])];
  const pickOf = <A>(list: readonly A[]): A | undefined =>
    list.length === 0 ? undefined : chance.pick(list as unknown as [A, ...A[]]);
  const figure = (at: Json | undefined, key: string): Edit | undefined =>
    at && { at, key, to: otherDigits(at[key] as string, chance) };
  switch (kind) {
    case 'figure':
      return figure(pickOf(nodes), 'figure');
    case 'looked-up value':
      return figure(pickOf(nodes.filter(({ is }) => is === 'looked up')), 'figure');
    case 'printed figure':
      return figure(pickOf(checks), chance.pick(['load', 'rating', 'reserve', 'used']));
    case 'verdict': {
      const at = pickOf([answer, ...checks]) as Json;
      const words = at === answer ? ['over', 'attention', 'within', 'unchecked'] : ['over', 'within'];
      return { at, key: 'verdict', to: otherOf(words, at['verdict'], chance) };
    }
    case 'basis': {
      const at = pickOf([...nodes.filter(({ basis }) => basis !== undefined), ...checks]);
      return at && { at, key: 'basis', to: otherOf(bases, at['basis'], chance) };
    }
    case 'edge': {
      const at = pickOf(nodes.filter(({ of }) => of !== undefined)) as ({ of: number[] } & Json) | undefined;
      if (at === undefined) return undefined;
      const operand = chance.whole(0, at.of.length - 1);
      const others = nodes.slice(0, nodes.indexOf(at)).flatMap((_, place) => (place === at.of[operand] ? [] : [place]));
      const to = pickOf(others);
      return to === undefined
        ? undefined
        : { at, key: 'of', to: at.of.map((place, i) => (i === operand ? to : place)) };
    }
  }
}

/** The answer with one thing changed; undefined where it has nothing of that kind to change. */
export function tampered(original: Answer, seed: number): Tampered | undefined {
  const chance = chanceOf(seed);
  const kind = tamperings[seed % tamperings.length] as Tampering;
  const answer = structuredClone(original);
  const edit = editOf(kind, answer as unknown as Json, chance);
  if (edit === undefined) return undefined;
  const { at, key, to } = edit;
  const done = `${kind}: ${String(at['name'] ?? at['is'] ?? 'the answer')}, ${key} from ${JSON.stringify(at[key])} to ${JSON.stringify(to)}`;
  at[key] = to;
  return { kind, done, answer };
}
