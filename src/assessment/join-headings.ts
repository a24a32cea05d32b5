/** The headings joined into one answer: every check, what lifts, what asks attention, the verdict, and what is left open. */
import { note, tightest } from '../ratings/index.js';
import type { Decision } from '../trace/index.js';
import { collected } from '../units/internal.js';
import type { Assessment } from './assessment.js';
import type { Headings, LimitHeadings } from './headings.js';
import type { Known } from './known.js';
import { attentionTo } from './parts/attention.js';
import { checksOf, heavierSideChecks, heaviestOnTires } from './parts/axle-and-tire-checks.js';
import { belowLabel } from './parts/below-the-label.js';
import { cargoOnDeck } from './parts/cargo-on-deck.js';
import { practicePart } from './parts/european-coupling.js';
import { grossChecks, pressuresFor } from './parts/gross-and-pressures.js';
import { openQuestions } from './parts/open-questions.js';
import { joined, together } from './parts/part-of-answer.js';
import { doubtsIn } from './parts/plausible.js';
import { tonguePart } from './parts/tongue.js';
import { upliftPart } from './parts/uplift.js';
import { verdictOf } from './parts/verdict.js';
import { standingsOf } from './parts/ways-of-standing.js';

export function joinHeadings(
  { spec, stack, weighed, band }: Known,
  headings: Headings,
  { gvwr, axleLoads, payload, placement, rules, deckGrowth }: LimitHeadings,
  read: readonly Decision[],
): Assessment {
  const { brakes, coupling, tow, hitch, jack, loading, tiedowns, stance, scale, offLevel } = headings;
  const { balance } = weighed;
  const standings = standingsOf(stack, weighed, axleLoads, stance, hitch);
  const [level, ...others] = standings;
  const inflation = pressuresFor(stack, heaviestOnTires(stack, standings));
  const whole = grossChecks(gvwr, weighed);
  const practice = practicePart(spec.trailer);
  const parts = together([
    brakes,
    coupling,
    practice,
    tow,
    placement,
    jack,
    loading,
    tiedowns,
    stance,
    scale,
    offLevel,
  ]);
  const checks = joined([
    whole.checks,
    checksOf(stack, level),
    parts.checks,
    heavierSideChecks(stack, level),
    ...collected(others, (other) => [checksOf(stack, other), heavierSideChecks(stack, other)]),
  ]);
  const partChecks = joined([
    ...stack.systems.map((system) => system.checks),
    brakes.againstLabel,
    coupling.againstLabel,
  ]);
  const { uplift, decisions: presses } = upliftPart(weighed, hitch, stance);
  const lift =
    balance !== undefined && uplift.lifted.some(({ load }) => load === balance.tongue)
      ? [note('NegativeTongue', 'The trailer lifts the ball: move the load forward.', [balance.tongue])]
      : [];
  const tongue = tonguePart(weighed, band, hitch, checks, uplift);
  const doubts = doubtsIn(spec);
  const label = belowLabel(spec, stack, band);
  const onDeck = cargoOnDeck(spec, weighed);
  const attention = attentionTo({
    tongue,
    place: placement,
    tiedowns,
    loading,
    lines: rules,
    label,
    onDeck,
    told: [...weighed.attention, ...parts.attention],
    doubts,
  });
  return {
    spec,
    runningGear: stack,
    weights: weighed,
    axleLoads,
    pressures: inflation.pressures,
    checks,
    partChecks,
    tightest: tightest(checks),
    uplift,
    verdict: verdictOf({ checks, partChecks, uplift: uplift.lifted, attention }),
    attention,
    brakes,
    tow: hitch,
    placement,
    loading,
    jack,
    tiedowns,
    stance,
    scale,
    rules,
    notes: joined([stack.notes, weighed.notes, lift, parts.notes, label.notes, rules.notes]),
    notChecked: openQuestions(
      joined([
        stack.notChecked,
        weighed.notChecked,
        whole.notChecked,
        inflation.notChecked,
        parts.notChecked,
        onDeck.notChecked,
        rules.notChecked,
      ]),
    ),
    decisions: joined([
      read,
      stack.decisions,
      weighed.decisions,
      presses,
      deckGrowth?.decisions ?? [],
      band.decisions,
      payload?.decisions ?? [],
      parts.decisions,
      label.decisions,
      onDeck.decisions,
      doubts.decisions,
    ]),
    tongue,
    payload,
    deckGrowth,
  };
}
