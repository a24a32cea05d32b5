/** The report's sections on the tow vehicle and on the place of the machine. */
import type { Assessment, PiecePlacement } from '../../assessment/index.js';
import type { FiguresInPrint } from '../figures-in-print.js';
import { entry, namesOf, remark } from '../text-layout.js';

/** What the brakes of both must do; a spec does not contain what they can do. */
const brakingLines = ({ brakes: { asked } }: Assessment, p: FiguresInPrint): readonly string[] =>
  asked === undefined
    ? []
    : [
        entry('braking force asked of both', p.any(asked.force.value), `${asked.row.forcePercent} % of weight`),
        remark(
          `Both stop in ${p.longLength(asked.distance.value)} from 20 mph by 49 CFR 393.52(d), row ${asked.row.clause}, from memory (verify). It binds commercial vehicles; a brake tester tells the force there is.`,
        ),
      ];

/** The loads on the truck, and the largest trailer its limits allow. */
export function towLines(assessment: Assessment, p: FiguresInPrint): readonly string[] {
  const { hitched, combination, bars, largest } = assessment.tow;
  return [
    ...(hitched
      ? [
          entry('front axle, hitched', p.load(hitched.front.value), `${p.load(hitched.offFront.value)} came off`),
          entry('rear axle, hitched', p.load(hitched.rear.value), `${p.load(hitched.ontoRear.value)} came on`),
        ]
      : []),
    ...(combination ? [entry('combination, tongue counted once', p.load(combination.value))] : []),
    ...(bars
      ? [
          entry(
            'bars move to the front axle',
            p.load(bars.ontoFront.value),
            bars.restored ? `${p.share(bars.restored.value)} restored` : '',
          ),
          entry('bars move to the trailer axles', p.load(bars.ontoTrailer.value)),
        ]
      : []),
    ...(largest
      ? [
          entry(
            'largest trailer these limits allow',
            p.capacity(largest.trailer.value),
            `set by ${namesOf(largest.governing)}`,
          ),
        ]
      : []),
    ...brakingLines(assessment, p),
  ];
}

/** The heaviest piece that has a place; where it balances the rest, the lightest too. */
function weightsWithPlace(
  name: string,
  { heaviest, lightest, byWeight }: NonNullable<PiecePlacement['heaviest']>,
  p: FiguresInPrint,
): readonly string[] {
  const setBy = byWeight.length === 0 ? '' : `set by ${namesOf(byWeight)}`;
  const entryOf = (which: string, figure: string, why: string): string =>
    entry(`${which} ${name} that has a place`, figure, why);
  if (lightest === undefined) return [entryOf('heaviest', p.capacity(heaviest.value), setBy)];
  const [least, most] = p.range(lightest.value, heaviest.value);
  return [
    entryOf('heaviest', most, setBy),
    entryOf('lightest', least, 'it balances the rest: a lighter one has no place either'),
  ];
}

/** Where the machine may be placed. Places are rounded into the window, so that the printed place keeps the limit. */
export function placeLines({ name, window, heaviest, now }: PiecePlacement, p: FiguresInPrint): readonly string[] {
  const { lower, upper, width, sure, poundsPerInch, tongueUncertainty } = window;
  const end = (
    label: string,
    { at, machineFront, tongue, setBy }: typeof lower,
    toward: 'front' | 'rear',
  ): readonly string[] => [
    entry(`${label}, balance point at`, p.place(at.value, toward), `set by ${namesOf(setBy)}`),
    entry('  machine front at', p.place(machineFront.value, toward), `tongue ${p.load(tongue.value)}`),
  ];
  return [
    ...(window.empty ? [] : [...end('furthest forward', lower, 'rear'), ...end('furthest back', upper, 'front')]),
    ...(now
      ? [
          entry(
            'now at, balance point',
            p.placeNow(now.at.value),
            now.breaks.length === 0 ? 'inside' : `outside: ${namesOf(now.breaks)}`,
          ),
        ]
      : []),
    entry('width of the window', p.length(width.value), window.empty ? 'EMPTY: no place meets every limit' : ''),
    entry('window allowing for balance-point uncertainty', p.length(sure.width.value), sure.empty ? 'none' : ''),
    entry(
      `tongue load for ${p.placeStep}`,
      p.tongueByPlace(poundsPerInch.value),
      `uncertain by ${p.load(tongueUncertainty.value)} either way`,
    ),
    ...(heaviest?.exists === true ? weightsWithPlace(name, heaviest, p) : []),
    remark('Places are measured from the coupler rearward.'),
  ];
}
