/** The reserve and the share of a check must be the steps on its own load and rating, not any node of the working. */
import { expect, it } from 'vitest';
import { crc32, textOf } from '../../../src/assessment/answer/checksum.js';
import { type Answer, answerOf, assessJson, verifyAnswer } from '../../../src/assessment/index.js';
import { orThrow } from '../../../src/errors.js';
import { changed, tiltDeck } from '../../helpers/specs.js';

const answer = JSON.parse(JSON.stringify(answerOf(orThrow(assessJson(tiltDeck()))))) as Answer;
const nodes = answer.working?.nodes ?? [];
const of = (i: number): readonly number[] => {
  const node = nodes[i];
  return node !== undefined && 'of' in node ? (node.of as readonly number[]) : [];
};

/** What the answer comes to when one check names other nodes, with a new checksum over it. */
function naming(i: number, places: (nodes: readonly number[]) => readonly number[], more: readonly object[] = []) {
  const checks = answer.checks.map((check, k) => (k === i ? { ...check, nodes: places(check.nodes ?? []) } : check));
  const working = { ...answer.working, nodes: [...nodes, ...more] };
  const { checksum: _, ...others } = { ...answer, checks, working } as unknown as Answer;
  return orThrow(verifyAnswer({ ...others, checksum: crc32(textOf(others)) }));
}
const with2 = (place: number) => (old: readonly number[]) => [old[0], old[1], place, old[3]] as number[];
const with3 = (place: number) => (old: readonly number[]) => [old[0], old[1], old[2], place] as number[];

const [load, rating, reserve, used] = (answer.checks[0]?.nodes ?? []) as readonly [number, number, number, number];
const name = answer.checks[0]?.name;
const given = nodes.findIndex(({ is }) => is === 'given');
/** Another check on the same load, and one on the same rating. */
const onLoad = answer.checks.findIndex(({ nodes: its }, i) => i > 0 && its?.[0] === load);
const [first, second] = answer.checks.flatMap(({ nodes: a }, i) => {
  const other = answer.checks.findIndex(({ nodes: b }, k) => k > i && b?.[1] === a?.[1] && b?.[0] !== a?.[0]);
  return other === -1 ? [] : [[i, other] as const];
})[0] as readonly [number, number];

it('follows as it was written', () => {
  expect(of(reserve)).toEqual([rating, load]);
  expect(of(used)).toEqual([load, rating]);
  expect(naming(0, (old) => old)).toMatchObject({ follows: true });
});

it('follows where the tongue lifts: its load is printed away from zero', () => {
  const lifting = answerOf(orThrow(assessJson(changed(tiltDeck(), 'cargo.0.front', '160.3 in'))));
  const tongue = lifting.checks.find(({ name: each }) => each === 'tongue against coupler tongue');
  const node = lifting.working?.nodes[tongue?.nodes?.[0] ?? -1]?.figure ?? '';
  const [printed, exact] = [tongue?.load ?? '', node].map((text) => Number(text.split(' ', 1)[0])) as [number, number];
  expect(exact).toBeLessThan(0);
  expect(printed).toBe(Math.floor(exact));
  expect(orThrow(verifyAnswer(JSON.parse(JSON.stringify(lifting))))).toMatchObject({ follows: true });
  const towardZero = JSON.parse(JSON.stringify(lifting).replaceAll(`"${printed} lb"`, `"${Math.ceil(exact)} lb"`));
  const { checksum: _, ...others } = towardZero;
  expect(orThrow(verifyAnswer({ ...others, checksum: crc32(textOf(others)) }))).toMatchObject({
    follows: false,
    found: `${Math.ceil(exact)} lb`,
    needed: `${printed} lb`,
  });
});

it('does not follow where what is said to lift presses', () => {
  const lifting = answerOf(orThrow(assessJson(changed(tiltDeck(), 'cargo.0.front', '160.3 in'))));
  const [lifted] = lifting.uplift;
  expect(lifted?.figure).toMatch(/^-/);
  const places = lifting.working?.nodes ?? [];
  const node = places.findIndex(({ figure }) => figure === '9000 lb');
  const told = { ...JSON.parse(JSON.stringify(lifting)), uplift: [{ ...lifted, node, figure: '9000 lb' }] };
  const { checksum: _, ...others } = told;
  expect(orThrow(verifyAnswer({ ...others, checksum: crc32(textOf(others)) }))).toMatchObject({
    follows: false,
    at: 'uplift.0',
    needed: 'a load below zero',
  });
});

it('does not follow by another node for the reserve', () => {
  const wrong = { follows: false, at: 'checks.0.nodes', what: `reserve of ${name}`, needed: 'rating minus load' };
  expect(naming(0, with2(nodes.length + 9))).toMatchObject(wrong);
  expect(naming(0, with2(given))).toMatchObject(wrong);
  expect(naming(0, with2(used))).toMatchObject(wrong);
  expect(onLoad).toBeGreaterThan(0);
  expect(naming(0, with2(answer.checks[onLoad]?.nodes?.[2] ?? -1))).toMatchObject(wrong);
  // A step of one part, and one of another kind on the same two.
  const figure = nodes[reserve]?.figure;
  const basis = (nodes[reserve] as { readonly basis?: string }).basis;
  expect(naming(0, with2(nodes.length), [{ is: 'sum', figure, of: [reserve], basis }])).toMatchObject(wrong);
  expect(naming(first, with2(answer.checks[second]?.nodes?.[2] ?? -1))).toMatchObject({
    follows: false,
    at: `checks.${first}.nodes`,
    needed: 'rating minus load',
  });
});

it('does not follow by another node for the share used', () => {
  const wrong = { follows: false, at: 'checks.0.nodes', what: `share used of ${name}`, needed: 'load over rating' };
  expect(naming(0, with3(nodes.length + 9))).toMatchObject(wrong);
  expect(naming(0, with3(given))).toMatchObject(wrong);
  expect(naming(0, with3(reserve))).toMatchObject(wrong);
  expect(naming(0, with3(answer.checks[onLoad]?.nodes?.[3] ?? -1))).toMatchObject(wrong);
  expect(naming(first, with3(answer.checks[second]?.nodes?.[3] ?? -1))).toMatchObject({
    follows: false,
    at: `checks.${first}.nodes`,
    needed: 'load over rating',
  });
});
