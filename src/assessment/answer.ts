/** The plain answer: an assessment as JSON that can be sent, kept, and verified by somebody who has no library. */
import type { BestPayload, PayloadBy } from '../load/index.js';
import type { Note } from '../ratings/index.js';
import { type Finding, hasEffect } from '../rules/index.js';
import { writtenSpec } from '../spec/index.js';
import { type Derived, pathsBehind } from '../trace/index.js';
import type { Unit } from '../units/index.js';
import { checksOf } from './answer/checks-written.js';
import { crc32, ordered } from './answer/checksum.js';
import { capacityText, nearestText, shareText } from './answer/edge.js';
import { type NodeList, nodeList } from './answer/node-list.js';
import {
  type Answer,
  type AnswerFigure,
  type AnswerNote,
  type AnswerPayload,
  type AnswerPayloadFigure,
  type AnswerRule,
  answerFormat,
  answerVersion,
} from './answer/shape.js';
import { libraryVersion, tablesVersion } from './answer/version.js';
import type { Assessment } from './assessment.js';
import { ruleFindings } from './parts/published-rules.js';

/** How much of an answer is written out. */
export interface AnswerOptions {
  /** Whether every figure behind the answer is written out too; without them nobody can verify it. */
  readonly working?: boolean;
}

const figureOf = (
  nodes: NodeList | undefined,
  figure: Derived<Unit>,
  print: (figure: Derived<Unit>) => string = nearestText,
): AnswerFigure =>
  nodes === undefined ? { figure: print(figure) } : { figure: print(figure), node: nodes.placeOf(figure.why) };

const noteOf = (nodes: NodeList | undefined, { figures, paths, says, tag }: Note): AnswerNote => ({
  ...(figures !== undefined && nodes !== undefined && { figures: figures.map((figure) => figureOf(nodes, figure)) }),
  ...(paths !== undefined && { paths: [...paths] }),
  says,
  tag,
});

/** What asks attention, with the keys behind its figures where it names none itself. */
const withPaths = (each: Note): Note => {
  const { figures = [], paths } = each;
  return paths !== undefined || figures.length === 0 ? each : { ...each, paths: pathsBehind(figures) };
};

function payloadOf(nodes: NodeList | undefined, { payload }: Assessment): AnswerPayload | undefined {
  if (payload === undefined) return undefined;
  const share = (end: Derived<'ratio'>) => figureOf(nodes, end, shareText as typeof nearestText);
  const figure = ({ weight, governing }: PayloadBy, shares: BestPayload['shares']): AnswerPayloadFigure => {
    const { figure: printed, ...node } = figureOf(nodes, weight, capacityText);
    return {
      figure: printed,
      governing: governing.map(({ name }) => name),
      ...node,
      ...(shares && { shares: { from: share(shares.from), to: share(shares.to) } }),
    };
  };
  const { best, anywhere, share: band } = payload;
  return {
    ...(anywhere && { anywhere: figure(anywhere, { from: band.low, to: band.high }) }),
    ...(best && { best: figure(best, best.shares) }),
  };
}

/** A finding as data. Of its comparisons only the missing facts are kept. */
function ruleOf(finding: Finding): AnswerRule {
  const { rule, id, kind, outcome, missing, topic, verify } = finding;
  return {
    clause: rule.clause,
    ...(hasEffect(finding) && { effect: rule.effect }),
    id,
    kind,
    ...(missing.length > 0 && { missing: [...missing] }),
    outcome,
    topic,
    verify,
  };
}

/**
 * What did this assessment say, as plain JSON that can be sent, kept and verified?
 *
 * The spec as it was written, the verdict, every check with its figures rounded at the edge, the payload, what asks attention, notes,
 * published rules, open questions; and, unless it is left out, the working: every figure behind them once, with all its digits.
 *
 * Not signed: whoever changes a spec and all that follows from it has made another answer.
 *
 * @param assessment from `assess`
 * @param options `{ working: false }` leaves the working out: a tenth of the size, and nobody can verify it
 * @returns plain data: `JSON.stringify` and `structuredClone` give the same answer back
 * @example answerOf(assessment).version // 1
 * @source common practice, no source: the form is this library's own
 */
export function answerOf(assessment: Assessment, { working = true }: AnswerOptions = {}): Answer {
  const nodes = working ? nodeList() : undefined;
  const { checks, partChecks, attention, notes, notChecked, spec, verdict } = assessment;
  const payload = payloadOf(nodes, assessment);
  const written = writtenSpec(spec);
  const findings = ruleFindings(assessment.rules);
  const uplift = assessment.uplift.lifted.map(({ what, load }) => ({ ...figureOf(nodes, load), what }));
  const summary = {
    attention: attention.map((each) => noteOf(nodes, withPaths(each))),
    checks: checksOf(nodes, checks),
    format: answerFormat,
    ...(!working && { inEffect: findings.filter(hasEffect).map(({ id }) => id) }),
    library: libraryVersion,
    notes: notes.map((each) => noteOf(nodes, each)),
    open: notChecked.map(({ id, missing, paths, what }) => ({ id, missing, paths: [...paths], what })),
    partChecks: checksOf(nodes, working ? partChecks : partChecks.filter(({ verdict }) => verdict === 'over')),
    partsChecked: partChecks.length,
    ...(payload !== undefined && { payload }),
    ...(working && { rules: findings.map(ruleOf) }),
    ...(written !== undefined && { spec: written }),
    tables: tablesVersion,
    uplift,
    verdict,
    version: answerVersion,
    ...(nodes !== undefined && { working: nodes.working }),
  } as const;
  // All but the spec is written in the order of its keys already.
  const text = JSON.stringify(written === undefined ? summary : { ...summary, spec: ordered(written) });
  return { ...summary, checksum: crc32(text) };
}
