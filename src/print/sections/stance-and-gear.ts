/** The report's sections on side-to-side share, level and yaw, and on jack, ramps and tiedowns. */
import type { Assessment } from '../../assessment/index.js';
import { show, showBrief } from '../../units/index.js';
import { collected } from '../../units/internal.js';
import type { FiguresInPrint } from '../figures-in-print.js';
import { entry, remark } from '../text-layout.js';

/** Side-to-side share, level and yaw of the laden trailer. */
export function stanceLines(
  { stance: { sides, offLevel, yaw }, tow: { offLevel: hitch } }: Assessment,
  p: FiguresInPrint,
): readonly string[] {
  return [
    ...(sides
      ? [
          entry('wheels on the left', p.load(sides.left.value)),
          entry(
            'wheels on the right',
            p.load(sides.right.value),
            `${p.share(sides.rightShare.value)} of the axle load`,
          ),
        ]
      : []),
    ...(offLevel
      ? [
          ...offLevel.loads.map((load, i) => entry(`axle ${i + 1}, ball off level`, p.load(load.value))),
          ...(offLevel.tongueChange ? [entry('tongue load added off level', p.load(offLevel.tongueChange.value))] : []),
        ]
      : []),
    ...(hitch ? [entry('tongue load, ball off level', p.load(hitch.tongue.value))] : []),
    ...(yaw
      ? [entry('yaw radius of gyration', p.length(yaw.radius.value), 'for comparing layouts; no safe speed')]
      : []),
  ];
}

/** Getting on: edges and the tongue while the machine climbs. */
const loadingLines = ({ loading: { edges, tailLift, setting } }: Assessment, p: FiguresInPrint): readonly string[] => [
  ...(edges
    ? edges.checks.map(({ crest, lowPoint, clearance, verdict }) =>
        entry(`${lowPoint} over ${crest}`, p.length(clearance.value), verdict),
      )
    : []),
  ...(tailLift
    ? [
        entry('load at the ball, machine on the edge', p.load(tailLift.ball.value), tailLift.verdict),
        entry('rear legs must take', p.load(tailLift.legs.value)),
      ]
    : []),
  ...(setting
    ? [
        entry(
          'ramps may be set from',
          p.place(setting.lower.at.value, 'rear'),
          setting.empty ? 'NO setting serves' : `to ${p.place(setting.upper.at.value, 'front')}, middle to middle`,
        ),
        ...(setting.empty
          ? []
          : [
              entry(
                'clear gap between the ramps then',
                p.length(setting.gap.least.value),
                `to ${p.length(setting.gap.most.value)}`,
              ),
            ]),
      ]
    : []),
];

/** Jack, ramps, tiedowns. */
export function gearLines(assessment: Assessment, p: FiguresInPrint): readonly string[] {
  const {
    jack: { foot },
    loading: { ramps },
    tiedowns: { pieces },
  } = assessment;
  return [
    ...(foot ? [entry('load at the jack foot', p.load(foot.value))] : []),
    ...(ramps
      ? [
          entry(
            'ramp angle',
            showBrief(ramps.angle.value, 1),
            ramps.grip ? `needs a grip of ${showBrief(ramps.grip.value, 2)}` : '',
          ),
        ]
      : []),
    ...loadingLines(assessment, p),
    ...collected(pieces, ({ name, answer }) => [
      entry(
        `tiedowns of ${name}, counted`,
        p.capacity(answer.counted.value),
        `${p.load(answer.needed.value)} needed: ${answer.strength}`,
      ),
      ...answer.counts.map(({ reading, minimum, fitted, verdict, governs }) =>
        remark(
          `Number by ${reading}: ${fitted} fitted, ${show(minimum.value)} asked for: ${verdict}${governs && answer.counts.length > 1 ? '; this reading governs' : ''}.`,
        ),
      ),
    ]),
  ];
}
