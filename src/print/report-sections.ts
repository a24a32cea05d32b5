/** The report's sections on the tow vehicle, the machine's place, ramps, tiedowns and published lines. */
import { type Assessment, ruleFindings } from '../assessment/index.js';
import { tightest } from '../ratings/index.js';
import { type Finding, findingText } from '../rules/index.js';
import {
  inch,
  type Quantity,
  roundCapacityDown,
  roundLoadUp,
  show,
  showBrief,
  showFeetInches,
} from '../units/index.js';
import { capacityInPrint, entry, loadInPrint, remark, shareInPrint } from './text-layout.js';

const names = (setBy: readonly { readonly name: string }[]): string => setBy.map(({ name }) => name).join(' and ');

/** What the truck feels, and the largest trailer its limits allow. */
export function towLines({ tow: { hitched, combination, bars, largest } }: Assessment): readonly string[] {
  return [
    ...(hitched
      ? [
          entry(
            'front axle, hitched',
            loadInPrint(hitched.front.value),
            `${loadInPrint(hitched.offFront.value)} came off`,
          ),
          entry(
            'rear axle, hitched',
            loadInPrint(hitched.rear.value),
            `${loadInPrint(hitched.ontoRear.value)} came on`,
          ),
        ]
      : []),
    ...(combination ? [entry('combination, tongue counted once', loadInPrint(combination.value))] : []),
    ...(bars
      ? [
          entry(
            'bars move to the front axle',
            loadInPrint(bars.ontoFront.value),
            bars.restored ? `${shareInPrint(bars.restored.value)} restored` : '',
          ),
          entry('bars move to the trailer axles', loadInPrint(bars.ontoTrailer.value)),
        ]
      : []),
    ...(largest
      ? [
          entry(
            'largest trailer these limits allow',
            capacityInPrint(largest.trailer.value),
            `set by ${names(largest.governing)}`,
          ),
        ]
      : []),
  ];
}

const sixteenth = inch('0.0625');
/** A place to the sixteenth, rounded into the window: what the tape shows then keeps the limit. */
const placeInPrint = (place: Quantity<'in'>, inward: typeof roundLoadUp): string =>
  showFeetInches(inward(place, sixteenth));

/** Where the machine may stand. */
export function placeLines({ placement: { machine, window, heaviest, now } }: Assessment): readonly string[] {
  if (window === undefined) return [];
  const { lower, upper, width, sure, poundsPerInch, tongueUncertainty } = window;
  const end = (
    label: string,
    { at, machineFront, tongue, setBy }: typeof lower,
    inward: typeof roundLoadUp,
  ): readonly string[] => [
    entry(`${label}, balance point at`, placeInPrint(at.value, inward), `set by ${names(setBy)}`),
    entry('  machine front at', placeInPrint(machineFront.value, inward), `tongue ${loadInPrint(tongue.value)}`),
  ];
  return [
    ...(window.empty
      ? []
      : [...end('furthest forward', lower, roundLoadUp), ...end('furthest back', upper, roundCapacityDown)]),
    ...(now
      ? [
          entry(
            'stands now, balance point at',
            showFeetInches(now.at.value),
            now.breaks.length === 0 ? 'inside' : `outside: ${names(now.breaks)}`,
          ),
        ]
      : []),
    entry('width of the window', showBrief(width.value, 1), window.empty ? 'EMPTY: no place meets every limit' : ''),
    entry(
      'with the balance point as unsure as said',
      showBrief(sure.width.value, 1),
      sure.empty ? 'no sure place' : '',
    ),
    entry(
      'tongue load an inch',
      showBrief(poundsPerInch.value, 1),
      `unsure by ${loadInPrint(tongueUncertainty.value)} either way`,
    ),
    ...(heaviest?.exists === true
      ? [
          entry(
            `heaviest ${machine ?? 'machine'} that has a place`,
            capacityInPrint(heaviest.heaviest.value),
            'by its place alone; the payload limits besides',
          ),
        ]
      : []),
    remark('Places are measured from the coupler rearward.'),
  ];
}

/** The trailer as its parts add up, and what more deck costs. */
export function buildLines({ weights: { built }, deckGrowth: longer }: Assessment): readonly string[] {
  return [
    ...(built
      ? [
          ...built.lines.map(({ name, weight, at }) =>
            entry(name, loadInPrint(weight.value), `at ${showFeetInches(at.value)}`),
          ),
          entry('built up', loadInPrint(built.weight.value), `acts at ${showFeetInches(built.at.value)}`),
        ]
      : []),
    ...(longer
      ? [
          entry('one more foot of deck weighs', showBrief(longer.growth.perFoot.value, 1)),
          ...longer.byLength.rows.map(({ length, emptyWeight, payload }) =>
            entry(
              `deck of ${showBrief(length.value, 2)}`,
              capacityInPrint(payload.value),
              `empty ${loadInPrint(emptyWeight.value)}`,
            ),
          ),
          remark(
            'Payload on the GVWR, and the weight of the empty trailer. The same design at other lengths: axles, tongue and placement are asked again for each.',
          ),
        ]
      : []),
  ];
}

/** What the tickets say beside the reckoning. */
export function scaleLines({ scale: { reading, gaps } }: Assessment): readonly string[] {
  if (reading === undefined) return [];
  const { tongue, gross, restored, closures } = reading;
  return [
    ...(gross ? [entry('trailer gross, weighed', loadInPrint(gross.value))] : []),
    ...(tongue ? [entry('tongue load, weighed', loadInPrint(tongue.value))] : []),
    ...(restored ? [entry('front axle load restored by the bars', shareInPrint(restored.value))] : []),
    ...gaps.map(({ what, gap }) => entry(`${what}, weighed minus reckoned`, loadInPrint(gap.value))),
    ...closures.map(({ what, gap, allowed }) =>
      remark(`${what}: the sums agree within ${loadInPrint(gap.value)}; ${loadInPrint(allowed.value)} allowed.`),
    ),
  ];
}

/** How the laden trailer stands. */
export function attitudeLines({
  stance: { sides, offLevel, yaw },
  tow: { offLevel: hitch },
}: Assessment): readonly string[] {
  return [
    ...(sides
      ? [
          entry('wheels on the left', loadInPrint(sides.left.value)),
          entry(
            'wheels on the right',
            loadInPrint(sides.right.value),
            `${shareInPrint(sides.rightShare.value)} of the axle load`,
          ),
        ]
      : []),
    ...(offLevel
      ? [
          ...offLevel.loads.map((load, i) => entry(`axle ${i + 1}, ball off level`, loadInPrint(load.value))),
          ...(offLevel.tongueChange
            ? [entry('tongue load added by the attitude', loadInPrint(offLevel.tongueChange.value))]
            : []),
        ]
      : []),
    ...(hitch ? [entry('tongue load, ball off level', loadInPrint(hitch.tongue.value))] : []),
    ...(yaw
      ? [
          entry(
            'radius of gyration about the upright',
            showBrief(yaw.radius.value, 1),
            'for comparing layouts; no safe speed',
          ),
        ]
      : []),
  ];
}

/** Getting on: edges and the tongue while the machine climbs. */
const climbLines = ({ climb: { crests, tail, setting } }: Assessment): readonly string[] => [
  ...(crests
    ? crests.checks.map(({ crest, lowPoint, clearance, verdict }) =>
        entry(`${lowPoint} over ${crest}`, showBrief(clearance.value, 1), verdict),
      )
    : []),
  ...(tail
    ? [
        entry('load at the ball, machine on the edge', loadInPrint(tail.ball.value), tail.verdict),
        entry('rear legs must take', loadInPrint(tail.legs.value)),
      ]
    : []),
  ...(setting
    ? [
        entry(
          'ramps may be set from',
          showFeetInches(setting.lower.at.value),
          setting.empty ? 'NO setting serves' : `to ${showFeetInches(setting.upper.at.value)}, middle to middle`,
        ),
      ]
    : []),
];

/** Jack, ramps, tiedowns. */
export function gearLines(assessment: Assessment): readonly string[] {
  const {
    gear: { jackFoot, ramp, tied },
  } = assessment;
  return [
    ...(jackFoot ? [entry('load at the jack foot', loadInPrint(jackFoot.value))] : []),
    ...(ramp
      ? [
          entry(
            'ramp angle',
            showBrief(ramp.angle.value, 1),
            ramp.grip ? `needs a grip of ${showBrief(ramp.grip.value, 2)}` : '',
          ),
        ]
      : []),
    ...climbLines(assessment),
    ...tied.flatMap(({ name, answer }) => [
      entry(
        `tiedowns of ${name}, counted`,
        capacityInPrint(answer.counted.value),
        `${loadInPrint(answer.needed.value)} needed: ${answer.strength}`,
      ),
      ...answer.counts.map(({ reading, minimum, fitted, verdict }) =>
        remark(`Number by ${reading}: ${fitted} fitted, ${show(minimum.value)} asked for: ${verdict}.`),
      ),
    ]),
  ];
}

const order: Readonly<Record<Finding['outcome'], number>> = { applies: 0, 'cannot tell': 1, 'does not apply': 2 };

/** Every published line, those that apply first, with the comparison, the distance, the clause and the date read. */
export function ruleLines({ rules }: Assessment): readonly string[] {
  const { groups, steps } = rules;
  const findings = ruleFindings(rules);
  const [tight] = tightest(groups.flatMap(({ check }) => (check ? [check] : [])));
  const closest = groups.find(({ check }) => check !== undefined && check === tight);
  const sorted = [...findings].sort((a, b) => order[a.outcome] - order[b.outcome]);
  return [
    ...(closest?.check
      ? [
          remark(
            `Axle groups: ${groups.length} asked; closest to its limit are axles ${closest.first} to ${closest.last}, ${loadInPrint(closest.check.load.value)} of ${capacityInPrint(closest.limit.value)}: ${closest.check.verdict}.`,
          ),
        ]
      : []),
    ...steps.map(({ topic, finding }) => remark(`${topic}: ${finding.text}${finding.verify ? ' [verify]' : ''}`)),
    ...sorted.map((finding) => remark(findingText(finding))),
    ...(findings.length === 0
      ? []
      : [
          remark(
            'These are published lines as read on the date shown, beside the facts given: not legal advice. The rule in force and State law govern; "verify" marks what was read in a copy.',
          ),
        ]),
  ];
}
