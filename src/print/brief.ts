/** The first page as text: at most twenty lines, the verdict first. */
import type { Assessment } from '../assessment/index.js';
import type { Check, Note } from '../ratings/index.js';
import type { Finding } from '../rules/index.js';
import { compare } from '../units/index.js';
import { type Brief, type BriefExtras, type BriefPayload, type BriefPlace, briefOf } from './brief-of.js';
import { type FiguresInPrint, figuresIn, type ReaderUnits } from './reader-units.js';
import { folded, width } from './text-layout.js';

/** What a page may be asked for. */
export interface BriefOptions extends BriefExtras {
  /** Feet, inches and pounds (`us`, the default), or metres, millimetres and kilograms. */
  readonly units?: ReaderUnits;
}

/** The most lines a first page has. */
const mostLines = 20;
const labelWidth = 13;

/** A part of the page: its label, its lines one by one, and how many of them stand there whatever else does. */
interface Block {
  readonly label: string;
  readonly items: readonly string[];
  /** The lines it has when the page is full. */
  readonly least: number;
  /** The same items in fewer lines: those beyond the first `whole` by their names alone. */
  readonly packed?: (whole: number) => readonly string[];
}

const foldedItem = (item: string): readonly string[] => folded(item, width - labelWidth, '  ').split('\n');
const linesOf = (items: readonly string[]): readonly string[] => items.flatMap(foldedItem);

/** As many whole items as go into the lines, and how many more there are. */
function cut(items: readonly string[], room: number): readonly string[] {
  const kept: string[] = [];
  for (const [i, item] of items.entries()) {
    const lines = foldedItem(item);
    const last = i === items.length - 1;
    if (kept.length + lines.length > room - (last ? 0 : 1)) {
      if (kept.length > 0) return [...kept, `and ${items.length - i} more: see the report`];
      const first = lines.slice(0, room);
      return lines.length > room ? [...first.slice(0, -1), `${first.at(-1)} ...`] : first;
    }
    kept.push(...lines);
  }
  return kept;
}

function fitted({ items, packed }: Block, room: number): readonly string[] {
  const all = linesOf(items);
  if (all.length <= room || room === 0) return all.slice(0, room);
  for (let whole = items.length - 1; packed !== undefined && whole >= 0; whole -= 1) {
    const lines = linesOf(packed(whole));
    if (lines.length <= room) return lines;
  }
  return cut(items, room);
}

/** Each block has its least; what is left of the page goes to the blocks from the top. */
function roomFor(blocks: readonly Block[], lines: number): readonly number[] {
  const wanted = blocks.map(({ items }) => linesOf(items).length);
  const rooms = blocks.map(({ least }, i) => Math.min(least, wanted[i] as number));
  let left = lines - rooms.reduce((sum, room) => sum + room, 0);
  for (const [i, room] of rooms.entries()) {
    const more = Math.min(Math.max(left, 0), (wanted[i] as number) - room);
    rooms[i] = room + more;
    left -= more;
  }
  return rooms;
}

const and = (names: readonly string[]): string => names.join(' and ');
const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** `gross over GVWR by 650 lb` */
const overText = ({ what, reserve }: Check, { capacity }: FiguresInPrint): string =>
  `${what.replace(' against ', ' over ')} by ${capacity(reserve.value).replace('-', '')}`;

function verdictItems({ verdict, asked, over, lifts }: Brief, print: FiguresInPrint): readonly string[] {
  switch (verdict) {
    case 'over':
      return over.length === 0
        ? [`OVER: no rating is exceeded, but ${and(lifts.map(({ what }) => what))} lifts.`]
        : over.map((check, i) => (i === 0 ? `OVER: ${overText(check, print)}` : overText(check, print)));
    case 'attention':
      return [
        asked === 0
          ? 'ATTENTION: nothing could be checked, and something is not right:'
          : `ATTENTION: none of ${counted(asked, 'check')} is over, but something is not right:`,
      ];
    case 'within':
      return [`WITHIN: ${counted(asked, 'check')} made, each within its limit.`];
    case 'unchecked':
      return ['NOT CHECKED: nothing could be checked.'];
  }
}

/** A remark and the figures it speaks of, each by its name. */
export const noteText = ({ says, figures = [] }: Note, print: FiguresInPrint): string =>
  figures.length === 0
    ? says
    : `${says} (${figures.map(({ value, why }) => `${why.symbol === undefined ? '' : `${why.symbol} `}${print.any(value)}`).join('; ')})`;

function payloadText({ weight, shares: { from, to }, setBy }: BriefPayload, print: FiguresInPrint): string {
  const band =
    compare(from.value, to.value) === 0
      ? print.share(from.value)
      : `${print.share(from.value)} to ${print.share(to.value)}`;
  return `${print.capacity(weight.value)} with ${band} of the gross weight on the tongue; set by ${and(setBy)}`;
}

const payloadItems = ({ best, anywhere }: Brief, print: FiguresInPrint): readonly string[] => [
  ...(best ? [`${anywhere ? 'best ' : ''}${payloadText(best, print)}`] : []),
  ...(anywhere ? [`${best ? 'anywhere in the band ' : ''}${payloadText(anywhere, print)}`] : []),
];

function placeText({ name, none, from, to, best, setBy, now }: BriefPlace, { place }: FiguresInPrint): string {
  if (none) return `${name}: NO place meets every limit; ${and(setBy[0])} and ${and(setBy[1])} leave none`;
  const broken = now && (now.breaks.length === 0 ? 'inside' : `outside, breaks ${and(now.breaks)}`);
  return `${name}: front best at ${place(best.value, 'rear')} behind the coupler, from ${place(from.value, 'rear')} to ${place(to.value, 'front')}${now ? `; now ${place(now.front.value, 'rear')}, ${broken}` : ''}`;
}

/** What a rule is called; one that is not federal with where it is from. */
const ruleName = ({ topic, jurisdiction }: Finding['rule']): string =>
  jurisdiction === 'federal' ? topic : `${topic}, ${jurisdiction}`;

/** A rule in one line: what follows where that fits, else where it stands. */
function ruleText({ rule, verify }: Finding): string {
  const full = `${ruleName(rule)}: ${rule.effect}`;
  const mark = verify ? ' [verify]' : '';
  const where = rule.clause.split(/[,;(]/)[0]?.trim() ?? '';
  return full.length + mark.length <= width - labelWidth ? `${full}${mark}` : `${ruleName(rule)} (${where})${mark}`;
}

function blocksOf(brief: Brief, print: FiguresInPrint): readonly Block[] {
  const { lifts, attention, places, remedies, sureness, rules, open } = brief;
  return [
    { label: 'Verdict', items: verdictItems(brief, print), least: 3 },
    { label: 'Lifts', items: lifts.map(({ what, load }) => `${what}: ${print.load(load.value)}`), least: 1 },
    { label: 'Attention', items: attention.map((note) => noteText(note, print)), least: 2 },
    { label: 'Carries', items: payloadItems(brief, print), least: 2 },
    { label: 'Place', items: places.map((place) => placeText(place, print)), least: 2 },
    { label: 'To put right', items: remedies.map(({ says }) => says), least: 2 },
    { label: 'How sure', items: sureness ? [sureness.says] : [], least: 1 },
    {
      label: 'Rules',
      items: rules.map(ruleText),
      least: 3,
      packed: (whole) => [
        ...rules.slice(0, whole).map(ruleText),
        `${whole === 0 ? '' : 'also '}${rules
          .slice(whole)
          .map(({ rule }) => ruleName(rule))
          .join('; ')}`,
      ],
    },
    {
      label: 'Open',
      items: open.slice(0, 3).map(({ what, missing }) => `${what}: ${missing} not given`),
      least: 3,
    },
  ];
}

/** The lines of a page that is data already. */
export function briefLines(brief: Brief, print: FiguresInPrint): readonly string[] {
  const blocks = blocksOf(brief, print).filter(({ items }) => items.length > 0);
  const title = folded(brief.title, width, '  ').split('\n').slice(0, 1);
  const rooms = roomFor(blocks, mostLines - title.length);
  return [
    ...title,
    ...blocks.flatMap((block, i) =>
      fitted(block, rooms[i] as number).map((line, j) =>
        `${(j === 0 ? block.label : '').padEnd(labelWidth)}${line}`.trimEnd(),
      ),
    ),
  ];
}

/**
 * What does the assessment say, in the twenty lines that get read?
 *
 * In this order: the verdict with what is over and by how much; what lifts; what asks attention; what it carries; where each
 * piece stands best, by its front, which a tape finds; what would put it right; how sure that is; the rules that apply; the
 * three open questions that would decide most. What does not fit is counted, and stands in the report.
 *
 * Not a certificate: the cautions stand at the end of the report and on the leaflet.
 *
 * @param assessment from `assess`
 * @param options the reader's units; remedies and sureness where they were asked for
 * @returns at most 20 lines of at most 80 columns
 * @example brief(orThrow(assess(spec))).split('\n').length <= 20 // true
 * @source each figure and rule carries its own
 */
export function brief(assessment: Assessment, { units, ...extras }: BriefOptions = {}): string {
  return briefLines(briefOf(assessment, extras), figuresIn(units)).join('\n');
}
