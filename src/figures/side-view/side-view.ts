/** The trailer from the side with its loads and reactions. */
import type { Assessment } from '../../assessment/index.js';
import { element, label, line } from '../drawing/element.js';
import { ink } from '../drawing/look.js';
import { axisText, lengthText, loadText, plain, roundStep, weightUnit } from '../drawing/numbers.js';
import { type FigureOptions, framed, type Setting, settingOf } from '../drawing/options.js';
import { labelled, plumb, reactionsUp, rowHeight, weightsDown } from './arrows.js';
import { dimensionHeight, dimensionLines, windowBand, windowWords } from './dimensions.js';
import { type Scene, sceneOf } from './scene.js';
import { type Paper, standing, tilting } from './shape.js';

/** How much a tilt is exaggerated. */
const exaggerated = 5;

/** The part of the trailer's length that is drawn, in inches behind the coupler. */
function extent({ deck, wheels, pieces }: Scene): { readonly from: number; readonly to: number } {
  const all = [
    0,
    deck?.front ?? 0,
    deck?.rear ?? 0,
    ...wheels.map(({ at, radius }) => at + radius),
    ...pieces.flatMap(({ at, front, length }) => [at ?? 0, front ?? 0, (front ?? 0) + (length ?? 0)]),
  ];
  const [from, to] = [Math.min(...all), Math.max(...all)];
  return { from: from - 10, to: Math.max(to + 10, from + 60) };
}

function paperFor(scene: Scene, { width, narrow }: Setting, above: number): Paper {
  const { from, to } = extent(scene);
  const left = 26;
  const scale = (width - left - 8) / (to - from);
  const longest = narrow ? 56 : 74;
  const boxes = above + 8;
  const deck = boxes + longest + 18;
  const tallest = Math.max(scene.height, ...scene.wheels.map(({ radius }) => radius * 2 - scene.height));
  return {
    scale,
    x: (place) => left + (place - from) * scale,
    boxes,
    deck,
    ground: deck + Math.max(scene.height * scale, tallest * scale * 0.5, 18),
  };
}

const describe = (scene: Scene, { units }: Setting): string =>
  [
    ...scene.down.map(({ name, load }) => `${name} weighs ${loadText(load.value, units)}`),
    ...scene.up.map(
      ({ name, load, word }) => `${name} bears ${loadText(load.value, units)}${word === undefined ? '' : `, ${word}`}`,
    ),
    ...scene.measures.map(({ name, at }) => `${lengthText(at.value, units)} from the coupler ${name}`),
  ].join('. ');

/** The scale of the arrows: a round weight and the length that shows it. */
function arrowScale(y: number, pixels: (pounds: number) => number, most: number, { units }: Setting): string {
  const unit = weightUnit(units);
  const round = roundStep(most / unit.pounds, 4);
  const length = pixels(round * unit.pounds);
  return (
    line(4, y, 4, y - length, { stroke: ink, 'stroke-width': 2 }) +
    label(10, y, `${axisText(round)} ${unit.name}, scale of the arrows`, { size: 11 })
  );
}

/**
 * Where is each item, what does it weigh, and what do tongue and axles carry?
 *
 * The trailer from the side, lengths to one scale, arrows of load to another that is stated: weights down, tongue and axles up. The
 * window is a band on the deck. Off level the frame is drawn tilted, five times as much as it is. Heights of cargo are not known
 * and not to scale: boxes are open at the top.
 *
 * What the spec does not say is left out of the picture. A load that lifts points down and is labelled so.
 *
 * @param assessment from `assess`; @param options units, prefix of ids, width
 * @returns the text of an SVG
 * @example sideView(orThrow(assess(spec))).includes('tongue') // true
 * @source the figures are those of the assessment
 */
export function sideView(assessment: Assessment, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'side');
  const { width, narrow } = setting;
  const scene = sceneOf(assessment);
  const most = Math.max(1, ...[...scene.down, ...scene.up].map(({ load }) => Math.abs(plain(load))));
  const longest = narrow ? 56 : 74;
  const pixels = (pounds: number): number => (pounds / most) * longest;
  const { x } = paperFor(scene, setting, 0);
  const down = labelled(scene.down, x, setting);
  const paper = paperFor(scene, setting, down.rows * rowHeight);
  const up = labelled(scene.up, x, setting);
  const upRoom = Math.max(0, ...scene.up.map(({ load }) => pixels(Math.abs(plain(load)))));
  const belowArrows = paper.ground + upRoom + 24 + up.rows * rowHeight;
  const dimensions = dimensionLines(scene.measures, paper, belowArrows, setting);
  const wordsTop = belowArrows + scene.measures.length * dimensionHeight(setting) + 18;
  const tilt =
    scene.ballAboveLevel === undefined || scene.group === undefined || scene.group === 0
      ? 0
      : (Math.atan((plain(scene.ballAboveLevel) * exaggerated) / scene.group) * 180) / Math.PI;
  const words = [
    ...scene.windows.flatMap((window) => windowWords(window, setting)),
    ...(tilt === 0 ? [] : [`Off level: the tilt is drawn ${exaggerated} times as large.`]),
  ];
  const scaleAt = wordsTop + words.length * 16 + 12;
  const bottom = scaleAt + Math.min(longest, pixels(roundStep(most, 4))) * 0.6;
  return framed(setting, {
    title: `${scene.name} from the side`,
    description: `${describe(scene, setting)}. ${words.join(' ')}`.trim(),
    height: bottom + 10,
    parts: [
      element(
        'g',
        tilt === 0 || scene.group === undefined
          ? {}
          : { transform: `rotate(${tilt.toFixed(2)} ${x(scene.group).toFixed(1)} ${paper.deck.toFixed(1)})` },
        tilting(scene, paper),
      ),
      standing(scene, paper, width),
      plumb(x(0), paper.deck + 10, paper.ground),
      ...weightsDown(down, paper.deck, pixels),
      ...scene.windows.map((window) => windowBand(window, paper)),
      ...reactionsUp(up, paper.ground, upRoom, pixels),
      ...dimensions,
      ...words.map((text, i) => label(4, wordsTop + i * 16, text)),
      ...(scene.down.length + scene.up.length === 0 ? [] : [arrowScale(bottom, pixels, most, setting)]),
    ],
  });
}
