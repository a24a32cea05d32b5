/** The first page as text: at most twenty lines, the verdict first. */
import type { Assessment } from '../assessment/index.js';
import type { ReaderUnits } from '../units/index.js';
import { collected } from '../units/internal.js';
import type { Brief, BriefExtras } from './brief-data.js';
import { briefOf } from './brief-of.js';
import { attentionText, openText, payloadItems, placeText, ruleName, ruleText, verdictItems } from './brief-words.js';
import type { FiguresInPrint } from './figures-in-print.js';
import { type Block, fitted, labelWidth, linesOf, roomFor } from './page-room.js';
import { figuresIn } from './reader-units.js';
import { folded, width } from './text-layout.js';

/** What a page may be asked for. */
export interface BriefOptions extends BriefExtras {
  /** Feet, inches and pounds (`us`, the default), or metres, millimetres and kilograms. */
  readonly units?: ReaderUnits;
}

/** The most lines a first page has. */
const mostLines = 20;

/** The most lines that warnings take from what follows them. */
const mostWarningLines = 9;

/** The first ones as they are, the others in one item. */
const runTogether =
  (items: readonly string[], short: readonly string[], before: string) =>
  (whole: number): readonly string[] => [
    ...items.slice(0, whole),
    `${whole === 0 ? '' : before}${short.slice(whole).join('; ')}`,
  ];

function blocksOf(brief: Brief, print: FiguresInPrint): readonly Block[] {
  const { lifts, attention, places, remedies, sureness, rules, open } = brief;
  const verdict = verdictItems(brief, print);
  const warnings = attention.map((note) => attentionText(note, print));
  const warningsInShort = runTogether(
    warnings,
    attention.map(({ says }) => says),
    'also ',
  );
  const ruleItems = rules.map(ruleText);
  const ruleNames = rules.map(ruleName);
  const inShort = runTogether(ruleItems, ruleNames, 'also ');
  return [
    { label: 'Verdict', items: verdict, usual: 3, floor: 2, packed: runTogether(verdict, verdict, '') },
    { label: 'Lifts', items: lifts.map(({ what, load }) => `${what}: ${print.load(load.value)}`), usual: 1, floor: 1 },
    {
      label: 'Attention',
      items: warnings,
      usual: Math.min(linesOf(warnings).length, linesOf(warningsInShort(0)).length, mostWarningLines),
      floor: 4,
      packed: warningsInShort,
    },
    { label: 'Carries', items: payloadItems(brief, print), usual: 4, floor: 2 },
    { label: 'Place', items: places.map((place) => placeText(place, print)), usual: 2, floor: 1 },
    { label: 'To put right', items: remedies.map(({ says }) => says), usual: 2, floor: 1 },
    { label: 'How sure', items: sureness ? [sureness.says] : [], usual: 1, floor: 1 },
    {
      label: 'Rules',
      items: ruleItems,
      usual: Math.min(linesOf(ruleItems).length, linesOf(inShort(0)).length),
      floor: 3,
      packed: inShort,
    },
    {
      label: 'Not told',
      items: open.slice(0, 3).map(openText),
      usual: 3,
      floor: 1,
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
    ...collected(blocks, (block, i) =>
      fitted(block, rooms[i] as number).map((line, j) =>
        `${(j === 0 ? block.label : '').padEnd(labelWidth)}${line}`.trimEnd(),
      ),
    ),
  ];
}

/**
 * What is the result, on the first page?
 *
 * In this order: the verdict with what is over and by how much; what lifts; warnings; payload; where each
 * piece is placed best, by its front, which a tape finds; what would put it right; how sure that is; limits crossed and
 * duties that apply; the three open questions that would decide most. What does not fit is counted, and is in the report.
 *
 * Not a certificate: the cautions are printed at the end of the report and on the leaflet.
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
