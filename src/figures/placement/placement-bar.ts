/** Where on the deck a machine may be placed: the window of its balance point, each end named by the limit that sets it. */
import type { Assessment } from '../../assessment/index.js';
import { type AnyLength, inInches } from '../../trace/index.js';
import { inch, multiply } from '../../units/index.js';
import { box, element, label, line } from '../drawing/element.js';
import { ink, paint, pattern } from '../drawing/look.js';
import { lengthText, loadText, plain, shareText } from '../drawing/numbers.js';
import { type FigureOptions, framed, type Setting, settingOf } from '../drawing/options.js';
import { broken } from '../drawing/words.js';
import { type DeckWindow, setBy, windowsOf } from './windows.js';

const deckOf = (length: AnyLength): number => plain(inInches('deck end', length));

/** What both ends and the place now mean, in words. */
export function windowStory({ machine, window, now }: DeckWindow, { units }: Setting): readonly string[] {
  const end = (name: string, at: DeckWindow['window']['lower'], into: 'front' | 'rear'): string =>
    `${name}: balance point at ${lengthText(at.at.value, units, into)}, machine front at ${lengthText(at.machineFront.value, units, into)}, tongue ${loadText(at.tongue.value, units)} (${shareText(at.tongueShare.value)}). Set by ${setBy(at)}.`;
  const where =
    now === undefined
      ? []
      : [
          `Now at ${lengthText(now.at.value, units)}: ${now.breaks.length === 0 ? 'inside the window' : `outside, by ${now.breaks.join(', ')}`}.`,
        ];
  return window.empty
    ? [
        `No place for ${machine} meets every limit.`,
        `No further forward than ${lengthText(window.lower.at.value, units, 'rear')} (${setBy(window.lower)}); no further back than ${lengthText(window.upper.at.value, units, 'front')} (${setBy(window.upper)}).`,
        ...where,
      ]
    : [
        end('Furthest forward', window.lower, 'rear'),
        end('Furthest back', window.upper, 'front'),
        `An inch forward puts ${loadText(multiply(window.poundsPerInch.value, inch(1)), units)} on the tongue.`,
        ...where,
      ];
}

/** The next limits, each a tick at its place. */
function ticks({ window }: DeckWindow, x: (place: number) => number, y: number): string {
  return window.limits
    .map(({ at, end }) => {
      const place = x(plain(at));
      return line(place, y, place + (end === 'front' ? 5 : -5), y + 8, {
        stroke: paint('hairline'),
        'stroke-width': 1,
      });
    })
    .join('');
}

/** One window over the deck it lies on; the scale is that of the window's surroundings, not of the whole deck. */
function picture(
  each: DeckWindow,
  deck: { readonly front: number; readonly rear: number },
  top: number,
  setting: Setting,
): string {
  const { width, prefix } = setting;
  const { window, now } = each;
  const [lower, upper] = [plain(window.lower.at), plain(window.upper.at)];
  const x = (place: number): number =>
    8 +
    ((Math.max(deck.front, Math.min(deck.rear, place)) - deck.front) / Math.max(1, deck.rear - deck.front)) *
      (width - 16);
  const y = top + 30;
  const [from, to] = [Math.min(x(lower), x(upper)), Math.max(x(lower), x(upper))];
  const band = window.empty
    ? box(from, y, Math.max(3, to - from), 20, { fill: pattern(prefix, 'over'), stroke: paint('over') })
    : box(from, y, Math.max(3, to - from), 20, { fill: paint('load'), stroke: ink, 'stroke-width': '1.5' });
  const at = now === undefined ? undefined : x(plain(now.at));
  return element(
    'g',
    {},
    box(x(deck.front), y, x(deck.rear) - x(deck.front), 20, {
      fill: paint('room'),
      stroke: paint('timber'),
      'stroke-width': '1.5',
    }),
    band,
    ticks(each, x, y + 20),
    at === undefined
      ? ''
      : line(at, y - 8, at, y + 28, { stroke: ink, 'stroke-width': 2 }) +
          label(at, y - 12, 'now', { anchor: at > width - 30 ? 'end' : 'middle', bold: true }),
    label(x(deck.front), y + 42, `front of deck`, { size: 11 }),
    label(x(deck.rear), y + 42, `rear of deck`, { size: 11, anchor: 'end' }),
  );
}

/**
 * Where on the deck may each machine be placed?
 *
 * The deck from end to end; the band is where its balance point may be, solid; the line where it is now; ticks the other limits. An empty
 * window is the gap between the two ends that contradict each other, cross-hatched. Both ends below in words, each with its limit.
 *
 * @param assessment from `assess`: the placement of its cargo; @param options units, prefix of ids, width
 * @returns the text of an SVG
 * @example placementBar(orThrow(assess(spec))).includes('Furthest forward') // true
 * @source the figures are those of the assessment
 */
export function placementBar(assessment: Pick<Assessment, 'placement' | 'spec'>, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'placement');
  const { deck } = assessment.spec.trailer;
  const windows = deck === undefined ? [] : windowsOf(assessment);
  const parts: string[] = [];
  const told: string[] = [];
  let y = 0;
  for (const each of windows) {
    parts.push(label(2, y + 13, each.machine, { bold: true, size: 13 }));
    if (deck !== undefined)
      parts.push(picture(each, { front: deckOf(deck.front), rear: deckOf(deck.rear) }, y, setting));
    const story = windowStory(each, setting);
    const lines = story.flatMap((text) => broken(text, setting.width - 8));
    parts.push(...lines.map((text, i) => label(2, y + 96 + i * 16, text)));
    told.push(each.machine, ...story);
    y += 96 + lines.length * 16 + 10;
  }
  if (windows.length === 0) {
    parts.push(label(2, 14, 'No window is known: the deck, the balance or a machine is not told.'));
    y = 24;
  }
  return framed(setting, {
    title: 'Where the machine may stand',
    description: windows.length === 0 ? 'No window is known.' : told.join(' '),
    height: y,
    parts,
  });
}
