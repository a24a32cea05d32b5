/**
 * What `assess` answers for the plain example, written by hand on decimals for this one make of trailer: the same figures, the same
 * comparisons, the same refusals, no working, no units, no names of steps. Two axles, equalised; all weights in lb, places in in.
 */
import { Decimal } from 'decimal.js';

export const Digits = Decimal.clone({ defaults: true, precision: 34 });
type Figure = Decimal;

export interface HandAxle {
  readonly at: Figure;
  readonly gawr: Figure;
  readonly beam: Figure;
  readonly springs: Figure;
  readonly hubs: Figure;
  readonly wheel: Figure;
  readonly wheels: Figure;
  readonly tire: Figure;
  readonly tires: Figure;
  readonly designation: string;
  readonly moldedPressure: Figure;
  readonly pressure: Figure;
}

export interface HandSpec {
  readonly gvwr: Figure;
  readonly curb: Figure;
  readonly curbTongue: Figure;
  readonly couplerGross: Figure;
  readonly couplerTongue: Figure;
  readonly axles: readonly [HandAxle, HandAxle];
  readonly cargo: Figure;
  readonly front: Figure;
  readonly balancePoint: Figure;
  readonly share: Figure;
}

export interface HandCheck {
  readonly what: string;
  readonly limit: Figure;
  readonly load: Figure;
  readonly reserve: Figure;
  readonly used: Figure;
  readonly holds: boolean;
}

export interface HandAnswer {
  readonly gross: Figure;
  readonly axleLoad: Figure;
  readonly tongue: Figure;
  readonly tongueShare: Figure;
  readonly axlesAt: Figure;
  readonly capacity: Figure;
  readonly sumOfRatings: Figure;
  readonly axleLoads: readonly Figure[];
  readonly checks: readonly HandCheck[];
  readonly parts: readonly HandCheck[];
  readonly tightest: readonly HandCheck[];
  readonly holds: boolean;
  readonly bounds: readonly Figure[];
  readonly payload: Figure;
  readonly governs: readonly number[];
  readonly least: Figure;
  readonly most: Figure;
  readonly aboveLeast: Figure;
  readonly belowMost: Figure;
  readonly stands: string;
  readonly pressures: readonly { readonly pressure: Figure; readonly carries: Figure }[];
  readonly moldedAgreesWithTable: readonly boolean[];
  readonly yaw: { readonly centre: Figure; readonly index: Figure; readonly radius: Figure };
}

const zero = new Digits(0);
const one = new Digits(1);
const two = new Digits(2);
const [guideLow, guideHigh] = [new Digits('0.10'), new Digits('0.15')];
/** Pressure and least printed load, by the designation: the search of a reader who knows which tires there are. */
const rows = new Map([
  [
    'ST235/80R16 LRE',
    [
      { psi: new Digits(65), load: new Digits(3000) },
      { psi: new Digits(90), load: new Digits(3500) },
    ],
  ],
]);

function must(holds: boolean, what: string): void {
  if (!holds) throw new RangeError(what);
}

function check(what: string, limit: Figure, load: Figure): HandCheck {
  const reserve = limit.minus(load);
  return { what, limit, load, reserve, used: load.div(limit), holds: !reserve.isNegative() };
}

const sideOf = (tongue: Figure, least: Figure, most: Figure): 'light' | 'heavy' | 'inside' => {
  if (tongue.lt(least)) return 'light';
  return tongue.gt(most) ? 'heavy' : 'inside';
};

function leastOf(figures: readonly Figure[]): Figure {
  let least = figures[0]!;
  for (const figure of figures) if (figure.lt(least)) least = figure;
  return least;
}

function tightestOf(checks: readonly HandCheck[]): readonly HandCheck[] {
  let worst = checks[0]!;
  for (const each of checks) if (each.load.times(worst.limit).gt(worst.load.times(each.limit))) worst = each;
  return checks.filter((each) => each.load.times(worst.limit).eq(worst.load.times(each.limit)));
}

/** Beam, springs, hubs, wheels and tires of one axle, each above zero. */
function partsOf(axle: HandAxle): readonly Figure[] {
  const parts = [axle.beam, axle.springs, axle.hubs, axle.wheel.times(axle.wheels), axle.tire.times(axle.tires)];
  for (const part of parts) must(part.gt(zero), 'a part is rated above zero');
  must(axle.gawr.gt(zero), 'a GAWR is above zero');
  return parts;
}

/** How widely the weight is spread along the trailer: empty trailer and machine as points about their common centre. */
function yawOf(curb: Figure, trailerMoment: Figure, cargo: Figure, at: Figure, gross: Figure): HandAnswer['yaw'] {
  const centre = trailerMoment.plus(cargo.times(at)).div(gross);
  const [trailerOff, cargoOff] = [trailerMoment.div(curb).minus(centre), at.minus(centre)];
  const index = curb.times(trailerOff.times(trailerOff)).plus(cargo.times(cargoOff.times(cargoOff)));
  return { centre, index, radius: index.div(gross).sqrt() };
}

const partNames = ['beam', 'springs', 'hubs', 'wheels', 'tires'];

export function assessByHand(spec: HandSpec): HandAnswer {
  const {
    gvwr,
    curb,
    curbTongue,
    couplerGross,
    couplerTongue,
    axles: [first, second],
    cargo,
    front,
    balancePoint,
    share,
  } = spec;
  const [firstParts, secondParts] = [partsOf(first), partsOf(second)];
  const parts = [
    ...firstParts.map((part, i) => check(partNames[i]!, part, first.gawr)),
    ...secondParts.map((part, i) => check(partNames[i]!, part, second.gawr)),
  ];
  must(
    parts.every(({ holds }) => holds),
    'a GAWR is not above a part of its axle',
  );
  const ratings = [leastOf([first.gawr, ...firstParts]), leastOf([second.gawr, ...secondParts])] as const;
  const axlesAt = first.at.plus(second.at).div(two);
  const limits = [
    first.gawr.lt(second.gawr) ? first.gawr : second.gawr,
    ...firstParts.map((part, i) => (part.lt(secondParts[i]!) ? part : secondParts[i]!)),
  ].map((least) => least.times(two));
  const capacity = leastOf(ratings).times(two);
  const sumOfRatings = ratings[0].plus(ratings[1]);

  must(
    axlesAt.gt(zero) && curbTongue.lte(curb),
    'axles stand behind the coupler, and the tongue load is part of the weight',
  );
  const gross = curb.plus(cargo);
  must(gross.gt(zero), 'something is weighed');
  const [trailerMoment, cargoAt] = [curb.minus(curbTongue).times(axlesAt), front.plus(balancePoint)];
  const moment = trailerMoment.plus(cargo.times(cargoAt));
  const axleLoad = moment.div(axlesAt);
  const tongue = gross.minus(axleLoad);
  must(tongue.lte(gross), 'the tongue load is part of the gross weight');
  const tongueShare = tongue.div(gross);
  const axleLoads = [axleLoad.div(two), axleLoad.div(two)] as const;
  const tireLoads = [axleLoads[0].div(first.tires), axleLoads[1].div(second.tires)] as const;

  const moldedAgreesWithTable: boolean[] = [];
  const asRun: Figure[] = [];
  for (const axle of spec.axles) {
    const table = rows.get(axle.designation)!;
    moldedAgreesWithTable.push(axle.tire.eq(table.at(-1)!.load));
    must(axle.pressure.gte(axle.moldedPressure), 'run below the molded pressure: another answer');
    asRun.push(axle.tire);
  }
  const checks = [
    check('gross against GVWR', gvwr, gross),
    check('axle 1', first.gawr, axleLoads[0]),
    check('axle 2', second.gawr, axleLoads[1]),
    check('axle 1 tire', asRun[0]!, tireLoads[0]),
    check('axle 2 tire', asRun[1]!, tireLoads[1]),
    check('coupler gross', couplerGross, gross),
    check('coupler tongue', couplerTongue, tongue),
  ];
  const pressures = spec.axles.map(({ designation }, i) => {
    const row = rows.get(designation)!.find(({ load }) => tireLoads[i]!.lte(load))!;
    return { pressure: row.psi, carries: row.load };
  });

  must(share.gt(zero) && share.lt(one), 'a share between none and all');
  const onAxles = one.minus(share);
  const tiresAsRun = leastOf([asRun[0]!.times(first.tires), asRun[1]!.times(second.tires)]).times(two);
  const bounds = [
    gvwr,
    ...limits.slice(0, 5).map((limit) => limit.div(onAxles)),
    tiresAsRun.div(onAxles),
    couplerGross,
    couplerTongue.div(share),
  ].map((allowed) => allowed.minus(curb));
  const payload = leastOf(bounds);
  const governs = bounds.flatMap((bound, i) => (bound.eq(payload) ? [i] : []));
  const [least, most] = [gross.times(guideLow), gross.times(guideHigh)];
  return {
    gross,
    axleLoad,
    tongue,
    tongueShare,
    axlesAt,
    capacity,
    sumOfRatings,
    axleLoads,
    checks,
    parts,
    tightest: tightestOf(checks),
    holds: !tongue.isNegative() && checks.every(({ holds }) => holds),
    bounds,
    payload,
    governs,
    least,
    most,
    stands: sideOf(tongue, least, most),
    aboveLeast: tongue.minus(least),
    belowMost: most.minus(tongue),
    pressures,
    moldedAgreesWithTable,
    yaw: yawOf(curb, trailerMoment, cargo, cargoAt, gross),
  };
}

/** What the whole answer says beyond the loads, checks and bounds of `HandAnswer`. */
export interface HandWhole extends HandAnswer {
  /** The tongue shares at which the best payload holds, and the places of its balance point. */
  readonly shares: { readonly from: Figure; readonly to: Figure };
  readonly places: { readonly from: Figure; readonly to: Figure };
  /** What is not right and exceeds no rating. */
  readonly attention: readonly string[];
  /** What each check is called by programs. */
  readonly ids: readonly string[];
  /** The questions that the spec leaves open. */
  readonly open: readonly string[];
}

const [leastGvwr, leastMachine, braked] = [new Digits(500), new Digits(50), new Digits(3000)];

/** The tongue share at which a limit is just kept: axles `(W - L) / W`, tongue `L / W`. */
const shareFor = (gross: Figure, limit: Figure): Figure => gross.minus(limit).div(gross);

/** The whole answer to the plain example: the same, and where the best payload stands, what asks attention, what is open. */
export function assessWholeByHand(spec: HandSpec): HandWhole {
  const answer = assessByHand(spec);
  const { curb, curbTongue, gvwr, couplerGross, couplerTongue, axles, share, cargo } = spec;
  const gross = curb.plus(answer.payload);
  const pairs = [axles[0].gawr, ...partsOf(axles[0])].map((part, i) => [
    part,
    [axles[1].gawr, ...partsOf(axles[1])][i]!,
  ]);
  const onAxles = [
    ...pairs.map(([one, other]) => leastOf([one!, other!]).times(two)),
    leastOf([axles[0].tire.times(axles[0].tires), axles[1].tire.times(axles[1].tires)]).times(two),
  ];
  let from = share;
  for (const limit of onAxles) {
    const at = shareFor(gross, limit);
    if (at.gt(from)) from = at;
  }
  const full = couplerTongue.div(gross);
  const to = full.lt(share) ? full : share;
  const place = (at: Figure): Figure =>
    answer.axlesAt.minus(gross.times(at).minus(curbTongue).times(answer.axlesAt).div(answer.payload));
  const attention: string[] = [];
  if (couplerGross.lt(gvwr)) attention.push('CouplerBelowLabel');
  if (answer.capacity.lt(gvwr.times(one.minus(share)))) attention.push('AxlesBelowLabel');
  if (answer.stands !== 'inside') attention.push('TongueOutsideBand');
  if (gvwr.lt(leastGvwr)) attention.push('GvwrHardToBelieve');
  if (cargo.lt(leastMachine)) attention.push('MachineHardToBelieve');
  if (gvwr.gt(braked)) attention.push('NoBrakesTold');
  return {
    ...answer,
    shares: { from, to },
    places: { from: place(to), to: place(from) },
    attention,
    ids: [...answer.checks, ...answer.parts].map(({ what }) => what.replaceAll(' ', '-')),
    open: [
      'brake-capacity',
      'chains',
      'tow',
      'placement',
      'jack',
      'ramps',
      'loading/uplift',
      'tiedowns',
      'side-to-side',
    ],
  };
}

interface Json {
  readonly [key: string]: Json | string | number | readonly Json[];
}

const pounds = new Digits('0.45359237');

/** `9,000 lb`, `500 kg`, `187 in`, `12 %`: as little as a program for one file needs, and no more. */
function figure(text: unknown): Figure {
  const written = String(typeof text === 'object' && text !== null ? (text as Json)['text'] : text);
  const space = written.lastIndexOf(' ');
  const unit = written.slice(space + 1);
  const value = new Digits(written.slice(0, space).replaceAll(',', ''));
  if (unit === 'kg') return value.div(pounds);
  if (unit === '%') return value.div(100);
  must(unit === 'lb' || unit === 'in' || unit === 'psi', `a unit this reader knows, not ${unit}`);
  return value;
}

function axleFrom({ at, gawr, beam, springs, hubs, wheels, tires }: Json): HandAxle {
  const { each, count } = wheels as Json;
  const { designation, molded, count: tireCount, pressure } = tires as Json;
  return {
    at: figure(at),
    gawr: figure(gawr),
    beam: figure(beam),
    springs: figure(springs),
    hubs: figure(hubs),
    wheel: figure(each),
    wheels: new Digits(count as number),
    tire: figure((molded as Json)['single']),
    tires: new Digits(tireCount as number),
    designation: designation as string,
    moldedPressure: figure((molded as Json)['pressure']),
    pressure: figure(pressure),
  };
}

/** The spec as JSON has it, into decimals. */
export function readByHand(input: unknown): HandSpec {
  const { trailer, cargo, tongueShare } = input as Json;
  const { gvwr, curb, axles, coupler } = trailer as Json;
  const [first, second] = axles as readonly Json[];
  const [machine] = cargo as readonly Json[];
  return {
    gvwr: figure(gvwr),
    curb: figure((curb as Json)['weight']),
    curbTongue: figure((curb as Json)['tongue']),
    couplerGross: figure((coupler as Json)['gross']),
    couplerTongue: figure((coupler as Json)['tongue']),
    axles: [axleFrom(first!), axleFrom(second!)],
    cargo: figure(machine!['weight']),
    front: figure(machine!['front']),
    balancePoint: figure(machine!['balancePoint']),
    share: figure(tongueShare),
  };
}
