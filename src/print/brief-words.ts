/** The sentences of the first page. */
import type { Check, Note } from '../ratings/index.js';
import type { Finding } from '../rules/index.js';
import { compare } from '../units/index.js';
import type { Brief, BriefOpen, BriefPayload, BriefPlace } from './brief-data.js';
import type { FiguresInPrint } from './figures-in-print.js';
import { labelWidth } from './page-room.js';
import { and, counted, width } from './text-layout.js';

/** `gross over GVWR by 650 lb` */
export const overText = ({ what, reserve }: Check, { capacity }: FiguresInPrint): string =>
  `${what.replace(' against ', ' over ')} by ${capacity(reserve.value).replace('-', '')}`;

/** The verdict, and what is over, the worst first. */
export function verdictItems({ verdict, asked, over, lifts, open }: Brief, print: FiguresInPrint): readonly string[] {
  const stillOpen = open.length === 0 ? '' : `; ${counted(open.length, 'question')} open`;
  switch (verdict) {
    case 'over':
      return over.length === 0
        ? [`OVER: no rating is exceeded, but ${and(lifts.map(({ what }) => what))} lifts.`]
        : over.map((check, i) => (i === 0 ? `OVER: ${overText(check, print)}` : overText(check, print)));
    case 'attention':
      return [
        asked === 0
          ? 'ATTENTION: nothing could be checked, and something is not right:'
          : `ATTENTION: ${asked === 1 ? 'the one check made is not' : `none of ${counted(asked, 'check')} is`} over, but something is not right:`,
      ];
    case 'within':
      return [`WITHIN: ${counted(asked, 'check')} made, each within its limit${stillOpen}.`];
    case 'unchecked':
      return [`NOT CHECKED: nothing could be checked${stillOpen}.`];
  }
}

/** The block `Place` gives the front of each piece, which a tape finds; balance points are left out so that the two are not confused. */
const saidByPlace: ReadonlySet<string> = new Set(['OutsideWindow', 'NoPlace']);

/** The same on a page that has the places too. */
export const attentionText = (note: Note, print: FiguresInPrint): string =>
  saidByPlace.has(note.tag) ? note.says : noteText(note, print);

/** A fact that is missing, and what for; a rating that is asked by its own name is named once. */
export const openText = ({ missing, what }: BriefOpen): string =>
  what.endsWith(` against ${missing}`) ? `${what}: no rating told` : `${what}: ${missing}`;

/** A remark and the figures it is about, each by its name. */
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

/** Where every share of the band allows as much as the best of them, one line says it. */
const isSame = (best: BriefPayload, anywhere: BriefPayload): boolean =>
  compare(best.weight.value, anywhere.weight.value) === 0 &&
  compare(best.shares.from.value, anywhere.shares.from.value) === 0 &&
  compare(best.shares.to.value, anywhere.shares.to.value) === 0;

/** What it carries. */
export const payloadItems = ({ best, anywhere }: Brief, print: FiguresInPrint): readonly string[] =>
  best && anywhere && isSame(best, anywhere)
    ? [`${payloadText({ ...best, setBy: [...new Set([...best.setBy, ...anywhere.setBy])] }, print)}`]
    : [
        ...(best ? [`${anywhere ? 'best ' : ''}${payloadText(best, print)}`] : []),
        ...(anywhere ? [`${best ? 'anywhere in the band ' : ''}${payloadText(anywhere, print)}`] : []),
      ];

/** The best place of a piece, and its place now. */
export function placeText({ name, none, from, to, best, setBy, now }: BriefPlace, { place }: FiguresInPrint): string {
  if (none) return `${name}: NO place meets every limit; ${and(setBy[0])} and ${and(setBy[1])} leave none`;
  const broken = now && (now.breaks.length === 0 ? 'inside' : `outside, breaks ${and(now.breaks)}`);
  return `${name}: front best at ${place(best.value, 'rear')} behind the coupler, from ${place(from.value, 'rear')} to ${place(to.value, 'front')}${now ? `; now ${place(now.front.value, 'rear')}, ${broken}` : ''}`;
}

/** What a finding is called: one that is not federal with where it is from, a limit that is crossed with that word. */
export function ruleName({ topic, outcome, rule: { jurisdiction } }: Finding): string {
  const name = jurisdiction === 'federal' ? topic : `${topic}, ${jurisdiction}`;
  return outcome === 'crossed' ? `${name}, crossed` : name;
}

/** A finding in one line: its consequence where that fits, else its clause. */
export function ruleText(finding: Finding): string {
  const { rule, verify } = finding;
  const full = `${ruleName(finding)}: ${rule.effect}`;
  const mark = verify ? ' [verify]' : '';
  const where = rule.clause.split(/[,;(]/)[0]?.trim() ?? '';
  return full.length + mark.length <= width - labelWidth ? `${full}${mark}` : `${ruleName(finding)} (${where})${mark}`;
}
