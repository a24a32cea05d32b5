/**
 * What an answer says, line by line and without the names of its fields, so that two states of the code can be compared
 * while fields are renamed and moved: checks, weights, placement, tow side, rules, errors.
 */
import { isLeft } from 'fp-ts/lib/Either.js';
import { assess, ruleFindings } from '../../src/assessment/index.js';
import type { TrailerError } from '../../src/errors.js';
import type { Check } from '../../src/ratings/index.js';
import type { Finding } from '../../src/rules/index.js';
import type { Derived } from '../../src/trace/index.js';
import type { Unit } from '../../src/units/index.js';

export const aspects = ['checks', 'weights', 'placement', 'tow', 'rules', 'errors'] as const;
export type Aspect = (typeof aspects)[number];
export type Outline = Readonly<Record<Aspect, readonly string[]>>;

/** Which figures are told, by their symbols. */
const told: Readonly<Partial<Record<Aspect, RegExp>>> = {
  weights:
    /^(gross weight|trailer weight|curb weight|tongue load|tongue share|trailer tongue load|axle group (load|position|capacity)|sum of axle ratings|axle \d+ (load|rating|cold pressure|tire load))(,|$)/,
  placement: /^((front|rear) end of the|width of the|place by|(tongue load|machine front|axle load) at the)\b/,
  tow: /^(front axle|rear axle|trailer axles|put on|taken off|combination|moment of the bars)\b/,
};

type Json = Readonly<Record<string, unknown>>;
const isRecord = (value: unknown): value is Json => typeof value === 'object' && value !== null;
const isFigure = (value: Json): boolean => 'why' in value && 'value' in value;
const isCheck = (value: Json): boolean => 'reserve' in value && 'verdict' in value && 'limit' in value;
const isFinding = (value: Json): boolean => 'rows' in value && 'outcome' in value;

/** To 24 digits of 34: what comparisons are snapped to. */
const written = ({ value }: Derived<Unit>): string => `${value.value.toSignificantDigits(24).toFixed()} ${value.unit}`;

const checkLine = ({ kind, part = '', limit, load, verdict }: Check): string =>
  [kind, part, written(limit), written(load), verdict].join(' | ');

const findingLine = ({ id, outcome, missing }: Finding): string => [id, outcome, ...[...missing].sort()].join(' | ');

/** Of an error: its tag and its places; words may change. */
function errorLines(error: TrailerError): readonly string[] {
  const problems = 'problems' in error ? error.problems.map(({ path }) => path).sort() : [];
  return [`${error.tag} at ${error.path ?? 'no path'}`, ...problems];
}

type Found = Readonly<Record<Aspect, Set<string>>>;

function addFigure(figure: Derived<Unit>, into: Found): void {
  const symbol = figure.why.symbol ?? '';
  for (const aspect of aspects) if (told[aspect]?.test(symbol)) into[aspect].add(`${symbol} = ${written(figure)}`);
}

function addRecord(value: Json, into: Found): void {
  if (isFinding(value)) into.rules.add(findingLine(value as unknown as Finding));
  if (isCheck(value)) into.checks.add(checkLine(value as unknown as Check));
}

/** Everything in reach but the spec and the decisions, each thing once. */
function collect(value: unknown, into: Found, seen: Set<unknown>): void {
  if (!isRecord(value) || seen.has(value)) return;
  seen.add(value);
  if (isFigure(value)) {
    addFigure(value as unknown as Derived<Unit>, into);
    return;
  }
  addRecord(value, into);
  for (const [key, inside] of Object.entries(value))
    if (key !== 'spec' && key !== 'decisions') collect(inside, into, seen);
}

/** The outline of the answer to a spec, each list in order of its letters. */
export function outlineOf(spec: unknown): Outline {
  const found = Object.fromEntries(aspects.map((aspect) => [aspect, new Set<string>()])) as Record<Aspect, Set<string>>;
  const answer = assess(spec as never);
  if (isLeft(answer)) for (const line of errorLines(answer.left)) found.errors.add(line);
  else collect([answer.right, ruleFindings(answer.right.rules)], found, new Set());
  return Object.fromEntries(aspects.map((aspect) => [aspect, [...found[aspect]].sort()])) as unknown as Outline;
}
