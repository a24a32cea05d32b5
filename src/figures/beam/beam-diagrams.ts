/** Loads, shear and moment of a beam under one another on one axis. */
import type { BeamAnswer, BeamStation, Load, Spans } from '../../members/index.js';
import { type Derived, inInches } from '../../trace/index.js';
import { convert, showBrief } from '../../units/index.js';
import { element, label, line } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { lengthText, plain } from '../drawing/numbers.js';
import { type FigureOptions, type FigureUnits, framed, settingOf } from '../drawing/options.js';
import { textWidth } from '../drawing/words.js';
import { momentPath, shearPath } from './curves.js';
import { loadedBeam, shown } from './loaded-beam.js';

/** What was asked of `beam` and what it answered. */
export interface BeamToDraw {
  /** Overhangs and span, as given to `beam`. */
  readonly spans: Spans;
  /** The loads, as given to `beam`. */
  readonly loads: readonly Load[];
  /** The answer of `beam`. */
  readonly answer: BeamAnswer;
}

const metric = (units: FigureUnits): boolean => units === 'metric';

const forceText = (force: Derived<'lbf'>, units: FigureUnits): string =>
  metric(units) ? showBrief(convert(force.value, 'kN'), 2) : showBrief(force.value, 0);

const momentText = (moment: Derived<'lbf*in'>, units: FigureUnits): string =>
  metric(units) ? showBrief(convert(moment.value, 'N*m'), 0) : showBrief(moment.value, 0);

/** A diagram about its axis: names the axis, keeps room above and below for what it draws. */
function panel(
  name: string,
  values: readonly number[],
  top: number,
  tall: number,
): { readonly y: (value: number) => number; readonly heading: string; readonly bottom: number } {
  const [low, high] = [Math.min(0, ...values), Math.max(0, ...values)];
  const range = high - low || 1;
  return {
    y: (value) => top + 34 + ((high - value) / range) * tall,
    heading: label(0, top + 10, name, { fill: paint('steel') }),
    bottom: top + 34 + tall,
  };
}

/** The station with the greatest figure, sign apart. */
const greatest = (stations: readonly BeamStation[], size: (station: BeamStation) => number): BeamStation | undefined =>
  stations.reduce<BeamStation | undefined>(
    (best, next) => (best === undefined || size(next) > size(best) ? next : best),
    undefined,
  );

/** A label next to its point, kept inside the picture. */
function named(text: string, at: number, y: number, width: number, bold: boolean): string {
  const half = textWidth(text) / 2 + 2;
  return label(Math.max(half, Math.min(width - half, at)), y, text, { anchor: 'middle', bold });
}

/**
 * Where along this member is the shear, and where the greatest moment?
 *
 * Loads and reactions, shear and moment under one another on one axis; sagging moments up; the greatest moment marked. Shear is straight
 * and moment a parabola between stations.
 *
 * A static check of one member: no road loads, buckling, welds or fatigue.
 *
 * @param data what was asked of `beam` and what it answered; @param options units (lbf and lbf·in, or kN and N·m), prefix, width
 * @returns the text of an SVG
 * @example beamDiagrams(beamToDraw).includes('moment') // true
 * @source statics
 */
export function beamDiagrams({ spans, loads, answer }: BeamToDraw, options: FigureOptions = {}): string {
  const setting = settingOf(options, 'beam');
  const { width, units } = setting;
  const { stations, reactions } = answer;
  const left = plain(inInches('left overhang', spans.leftOverhang));
  const right = left + plain(inInches('span', spans.span));
  const end = right + plain(inInches('right overhang', spans.rightOverhang));
  const margin = 30;
  const x = (place: number): number => margin + (place / end) * (width - 2 * margin);
  const top = loadedBeam(
    loads.map((load) => shown(load, (force) => forceText(force, units))),
    [
      { at: left, force: plain(reactions.left), text: forceText(reactions.left, units) },
      { at: right, force: plain(reactions.right), text: forceText(reactions.right, units) },
    ],
    { x, width, end },
  );
  const shear = panel(
    'shear',
    stations.flatMap(({ shearLeft, shearRight }) => [plain(shearLeft), plain(shearRight)]),
    top.height,
    70,
  );
  const moment = panel(
    'moment',
    stations.map((station) => plain(station.moment)),
    shear.bottom + 20,
    90,
  );
  const size = ({ shearLeft, shearRight }: BeamStation): number =>
    Math.max(Math.abs(plain(shearLeft)), Math.abs(plain(shearRight)));
  const steepest = greatest(stations, size);
  const worst = greatest(stations, (station) => Math.abs(plain(station.moment)));
  const path = { fill: paint('room'), stroke: paint('load'), 'stroke-width': '1.5' };
  const axis = (y: number): string => line(x(0), y, x(end), y, { stroke: ink, 'stroke-width': 1 });
  const steepestShear =
    steepest &&
    (Math.abs(plain(steepest.shearLeft)) > Math.abs(plain(steepest.shearRight))
      ? steepest.shearLeft
      : steepest.shearRight);
  const worstText = worst && `${momentText(worst.moment, units)} at ${lengthText(worst.at.value, units)}`;
  return framed(setting, {
    title: 'Loads, shear and moment of a beam',
    description: `Reactions: left ${forceText(reactions.left, units)}, right ${forceText(reactions.right, units)}. ${worstText === undefined ? '' : `Greatest moment ${worstText} from the left end.`} Bending stress ${answer.bending.verdict} the allowable one.`,
    height: moment.bottom + 30,
    parts: [
      ...top.parts,
      shear.heading,
      element('path', { d: shearPath(stations, x, shear.y), ...path }),
      axis(shear.y(0)),
      steepest && steepestShear
        ? named(
            forceText(steepestShear, units),
            x(plain(steepest.at)),
            shear.y(plain(steepestShear)) + (plain(steepestShear) >= 0 ? -5 : 14),
            width,
            false,
          )
        : '',
      moment.heading,
      element('path', { d: momentPath(stations, x, moment.y), ...path }),
      axis(moment.y(0)),
      worst && worstText
        ? line(x(plain(worst.at)), moment.y(0), x(plain(worst.at)), moment.y(plain(worst.moment)), {
            stroke: ink,
            'stroke-width': 2,
          }) +
          named(
            worstText,
            x(plain(worst.at)),
            plain(worst.moment) >= 0 ? moment.y(plain(worst.moment)) - 6 : moment.y(plain(worst.moment)) + 15,
            width,
            true,
          )
        : '',
    ],
  });
}
