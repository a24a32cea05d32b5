/** Sections side by side at one scale: a rolled channel next to a plate bent to the same depth. */
import type { Member, Outline } from '../../members/index.js';
import type { Derived } from '../../trace/index.js';
import { convert, inch, showBrief } from '../../units/index.js';
import { element, label, line } from '../drawing/element.js';
import { ink, paint } from '../drawing/look.js';
import { type FigureOptions, type FigureUnits, framed, settingOf } from '../drawing/options.js';
import { broken, cut } from '../drawing/words.js';
import type { Contours } from './flanged.js';
import { contoursOf } from './outline-corners.js';
import { roundedPath } from './rounded-path.js';

/** A section to draw: what `sectionProperties` answers, or a published section with the outline of `outlineOf`. */
export interface DrawnSection extends Member {
  /** Its dimensions. */
  readonly outline: Outline;
  /** Section modulus about the horizontal axis. */
  readonly Sx: Derived<'in3'>;
}

const sizeText = (inches: number, units: FigureUnits): string =>
  units === 'metric' ? showBrief(convert(inch(inches.toFixed(6)), 'mm'), 1) : showBrief(inch(inches.toFixed(6)), 3);

/** Weight and modulus stay in the units of the tables; metric readers get kg/m as well. */
function lines(section: DrawnSection, { sizes }: Contours, units: FigureUnits): readonly string[] {
  const weight =
    units === 'metric'
      ? showBrief(convert(section.weightPerFoot.value, 'kg/m'), 2)
      : showBrief(section.weightPerFoot.value, 2);
  return [
    ...sizes.map(([name, inches]) => `${name} ${sizeText(inches, units)}`),
    `weight ${weight}`,
    `Sx ${showBrief(section.Sx.value, 2).replace('in3', 'in³')}`,
  ];
}

/**
 * How do these sections compare in shape?
 *
 * Outlines at one scale, which is drawn below; under each its dimensions, weight and section modulus.
 *
 * Outlines of rolled shapes are those of `outlineOf`, close to the mill's and not the mill's. Nothing is said of steel grade, buckling, welds.
 *
 * @param sections one to four, from `sectionProperties` or a published section with its outline; @param options units, prefix, width
 * @returns the text of an SVG
 * @example sectionOutline([{ ...c5, outline: orThrow(outlineOf(c5)) }]).includes('C5X6.7') // true
 * @source geometry
 */
export function sectionOutline(sections: readonly DrawnSection[], options: FigureOptions = {}): string {
  const setting = settingOf(options, 'sections');
  const { width, units, narrow } = setting;
  const drawn = sections.slice(0, 4).map((section) => ({ section, shape: contoursOf(section.outline) }));
  const room = width / Math.max(1, drawn.length);
  const tall = narrow ? 130 : 190;
  const scale = Math.min(
    ...drawn.map(({ shape }) => Math.min(tall / shape.height, (room - 24) / shape.width)),
    tall / 2,
  );
  const texts = drawn.map(({ section, shape }) => [
    ...broken(section.designation, room - 12, 13),
    ...lines(section, shape, units).flatMap((text) => broken(text, room - 12)),
  ]);
  const parts = drawn.flatMap(({ section, shape }, i) => {
    const left = room * i + 8;
    const path = shape.contours
      .map((contour) =>
        roundedPath(
          contour.map(({ x, y, radius = 0 }) => ({
            x: left + x * scale,
            y: 10 + tall - y * scale,
            radius: radius * scale,
          })),
        ),
      )
      .join('');
    const names = broken(section.designation, room - 12, 13).length;
    return [
      element('path', { d: path, fill: paint('steel'), stroke: ink, 'stroke-width': 1, 'fill-rule': 'evenodd' }),
      ...(texts[i] ?? []).map((text, k) =>
        label(
          left,
          tall + 32 + k * 16,
          cut(text, room - 10, k < names ? 13 : 12),
          k < names ? { bold: true, size: 13 } : {},
        ),
      ),
    ];
  });
  const below = tall + 32 + Math.max(0, ...texts.map((text) => text.length)) * 16 + 6;
  const unit = units === 'metric' ? { text: '50 mm', inches: 50 / 25.4 } : { text: '2 in', inches: 2 };
  return framed(setting, {
    title: `Sections at one scale: ${sections.map(({ designation }) => designation).join(', ')}`,
    description: drawn
      .map(({ section, shape }) => `${section.designation}: ${lines(section, shape, units).join(', ')}`)
      .join('. '),
    height: below + 14,
    parts: [
      ...parts,
      line(8, below, 8 + unit.inches * scale, below, { stroke: ink, 'stroke-width': 2 }),
      label(14 + unit.inches * scale, below + 4, unit.text, { size: 11 }),
    ],
  });
}
