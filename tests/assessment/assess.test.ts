/** The whole stack: the example at, below and above each of its own limits, and how the empty trailer and the cargo are read. */
import { describe, expect, it } from 'vitest';
import { type Assessment, assessJson, assessSpec, ruleFindings } from '../../src/assessment/index.js';
import { decodeSpec, readJson } from '../../src/spec/index.js';
import { lb, show } from '../../src/units/index.js';
import { rightOf } from '../helpers/either.js';
import { changed, tiltDeck, workingsIn } from '../helpers/specs.js';
import { expectReplays } from '../helpers/working.js';

const run = (spec: unknown): Assessment => {
  const answer = rightOf(assessJson(spec));
  expectReplays(...workingsIn(answer));
  return answer;
};
const printed = (figure: { value: Parameters<typeof show>[0] } | undefined): string =>
  figure === undefined ? 'none' : show(figure.value);

describe('the example', () => {
  const answer = run(tiltDeck());
  it('holds, is limited by the tongue rating of its ball mount (1,600 lb over 12 percent, less 3,650 lb), and leaves one question open', () => {
    const most = answer.payload?.anywhere?.weight.value.value.toDecimalPlaces(2).toNumber();
    expect([
      answer.verdict !== 'over',
      answer.notChecked.map(({ what }) => what),
      most,
      answer.payload?.anywhere?.governing.map(({ name }) => name),
    ]).toEqual([true, ['hanging up at the edge of the deck'], 9683.33, ['ball mount tongue']]);
    expect(printed(answer.payload?.anywhere?.limits.find(({ name }) => name === 'GVWR')?.limit)).toBe('10,350 lb');
    expect([...answer.checks, ...answer.partChecks].map(({ verdict }) => verdict)).not.toContain('over');
  });
  it('weighs and balances as statics has it: (3,650 - 520) x 204 + 9,000 x 182 over 204', () => {
    const { gross, balance } = answer.weights;
    expect([
      printed(gross),
      balance?.axleLoad.value.value.toDecimalPlaces(2).toNumber(),
      balance?.tongue.value.value.toDecimalPlaces(2).toNumber(),
    ]).toEqual(['12,650 lb', 11159.41, 1490.59]);
    expect(answer.axleLoads.map(({ load }) => load.value.value.toDecimalPlaces(2).toNumber())).toEqual([
      5579.71, 5579.71,
    ]);
  });
  it('names the checks closest to their limit', () => {
    const shares = answer.checks.map(({ used }) => used.value.value.toNumber());
    expect(answer.tightest.map(({ used }) => used.value.value.toNumber())).toEqual([Math.max(...shares)]);
  });
  it('says what every check rests on', () => {
    for (const { reserve, used } of [...answer.checks, ...answer.partChecks])
      expect([reserve.why.basis, used.why.basis]).toEqual([expect.any(String), reserve.why.basis]);
  });
  it('is the same by text, by JSON and by a spec that was read already', () => {
    const again = rightOf(assessJson(rightOf(readJson(JSON.stringify(tiltDeck())))));
    const read = rightOf(assessSpec(rightOf(decodeSpec(tiltDeck()))));
    for (const other of [again, read])
      expect(other.checks.map(({ what, used }) => [what, show(used.value)])).toEqual(
        answer.checks.map(({ what, used }) => [what, show(used.value)]),
      );
  });
});

/** The machine where the axles carry 11,380 lb and the coupler 1,270 lb: whole figures, so a limit can be set exactly there. */
const deck = changed(tiltDeck(), 'cargo.0.front', '127 in');

/** Each check, the place of its limit in the spec, and what must go so that a lower label does not contradict its parts. */
const limits: readonly (readonly [what: string, path: string, without: string | undefined])[] = [
  ['gross against GVWR', 'trailer.gvwr', undefined],
  ['axle load against axle 1 GAWR', 'trailer.axles.0.gawr', undefined],
  ['axle load against axle 2 GAWR', 'trailer.axles.1.gawr', undefined],
  ['axle load against axle 1 weakest part', 'trailer.axles.0.beam', 'trailer.axles.0.gawr'],
  ['tire load against axle 1 tire', 'trailer.axles.0.tires.molded.single', 'trailer.axles.0.gawr'],
  ['gross against coupler gross', 'trailer.coupler.gross', undefined],
  ['tongue against coupler tongue', 'trailer.coupler.tongue', undefined],
  ['gross against receiver gross', 'tow.receiver.gross', undefined],
  ['tongue against receiver tongue', 'tow.receiver.tongue', undefined],
  ['combination against GCWR', 'tow.gcwr', undefined],
  ['gross against trailer tow rating', 'tow.trailerRating', undefined],
];

describe('at, above and below each limit', () => {
  it.each(limits)('%s', (what, path, without) => {
    const base = without === undefined ? deck : changed(deck, without, undefined);
    const find = (spec: unknown) => run(spec).checks.find((check) => check.what === what);
    const load = find(base)?.load.value ?? lb(0);
    expect(load.value.gt(0)).toBe(true);
    const at = find(changed(base, path, show(load)));
    const roomy = find(changed(base, path, show(lb(load.value.plus('0.001')))));
    const short = find(changed(base, path, show(lb(load.value.minus('0.001')))));
    expect([at?.verdict, roomy?.verdict, short?.verdict]).toEqual(['within', 'within', 'over']);
    expect([at, roomy, short].map((check) => check?.reserve.value.value.toDecimalPlaces(20).toNumber())).toEqual([
      0, 0.001, -0.001,
    ]);
    expect(run(changed(base, path, show(lb(load.value.minus('0.001'))))).verdict).toBe('over');
  });
});

it('an overload is an answer, though the spec says that all is within its ratings', () => {
  const over = run(changed(tiltDeck(), 'cargo.0.weight', '11,000 lb'));
  expect(over.checks.filter(({ kind }) => kind === 'GVWR').map(({ verdict }) => verdict)).toEqual(['over']);
  expect(over.notes.map(({ tag }) => tag)).toContain('NotWithinRatings');
  expect(ruleFindings(over.rules)).toHaveLength(ruleFindings(rightOf(assessJson(tiltDeck())).rules).length);
});

it('rules are asked once an answer, and the answer holds no function', () => {
  const { rules } = rightOf(assessJson(tiltDeck()));
  expect(ruleFindings(rules)).toBe(ruleFindings(rules));
  expect(new Set(ruleFindings(rules).flatMap(({ rows }) => rows.map(({ rule }) => rule)))).toEqual(
    new Set(rules.asked),
  );
  expect(JSON.stringify(rules)).not.toContain('function');
});

describe('the empty trailer', () => {
  const items = [
    { name: 'frame', weight: '1,500 lb', at: '150 in' },
    { name: 'axle', weight: '500 lb', at: '204 in', count: 2 },
    { name: 'deck', weight: '1,100 lb', at: '180 in' },
  ];
  const empty = (curb: unknown) => run(changed(changed(tiltDeck(), 'trailer.curb', curb), 'cargo', []));
  const ofWeight = ({ notes }: Assessment) => notes.filter(({ tag }) => /BuiltUp/.test(tag));
  it('built up from items acts where they put it', () => {
    const answer = empty({ items });
    const { weights: weighed } = answer;
    expect([
      printed(weighed.curb),
      weighed.balance?.tongue.value.value.toDecimalPlaces(2).toNumber(),
      ofWeight(answer).map(({ tag }) => tag),
    ]).toEqual(['3,600 lb', 526.47, []]);
  });
  it('weighed and built up is as weighed, and the difference is told', () => {
    const answer = empty({ weight: '3,650 lb', tongue: '520 lb', items });
    const { weights: weighed } = answer;
    expect([
      printed(weighed.curb),
      printed(weighed.balance?.tongue),
      ofWeight(answer).map(({ tag, figures }) => [tag, figures?.map(printed)]),
    ]).toEqual(['3,650 lb', '520 lb', [['WeighedAgainstBuiltUp', ['50 lb']]]]);
  });
  it('built up with a tongue load keeps that tongue load, and says so', () => {
    const answer = empty({ tongue: '500 lb', items });
    const { weights: weighed } = answer;
    expect([
      printed(weighed.curb),
      weighed.balance?.tongue.value.value.toDecimalPlaces(20).toNumber(),
      ofWeight(answer).map(({ tag }) => tag),
    ]).toEqual(['3,600 lb', 500, ['TongueAgainstBuiltUp']]);
  });
});

describe('the cargo', () => {
  it('stands where its balance point is said to be, or its front face and the balance point behind it', () => {
    const at = changed(changed(tiltDeck(), 'cargo.0.front', undefined), 'cargo.0.at', '182 in');
    expect(printed(run(at).weights.balance?.tongue)).toBe(printed(run(tiltDeck()).weights.balance?.tongue));
  });
  it('behind the axles lifts the ball: no check is over, and still it does not hold', () => {
    const answer = run(
      changed(changed(changed(tiltDeck(), 'cargo.0.front', '170 in'), 'tow', undefined), 'trailer.jack', undefined),
    );
    expect(answer.weights.balance?.tongue.value.value.isNegative()).toBe(true);
    expect([
      answer.verdict !== 'over',
      answer.checks.filter(({ verdict }) => verdict === 'over'),
      answer.notes.map(({ tag }) => tag).includes('NegativeTongue'),
    ]).toEqual([false, [], true]);
  });
});

describe('a tongue of exactly nothing', () => {
  it('is not lifted, though the axles stand at a place that no decimal writes', () => {
    const spec = {
      trailer: {
        hitch: 'ball',
        sharing: 'equalised',
        axles: ['187 in', '221 in', '250 in'].map((at) => ({ at, gawr: '7,000 lb' })),
        curb: { items: [{ name: 'all', weight: '1 lb', at: '218 in' }] },
      },
      cargo: [
        { name: 'one', weight: '1 lb', at: '219 in' },
        { name: 'two', weight: '1 lb', at: '221 in' },
      ],
    };
    const answer = run(spec);
    expect(answer.weights.balance?.tongue.value.value.abs().lt('1e-28')).toBe(true);
    expect([answer.verdict !== 'over', answer.notes.map(({ tag }) => tag).includes('NegativeTongue')]).toEqual([
      true,
      false,
    ]);
  });
});
