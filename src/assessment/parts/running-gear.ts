/** The running gear of a spec: each axle rated by its weakest part, and the axles as a group. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AxleGroup, type AxleSystem, type AxlesError, axleGroup, axleSystem } from '../../axles/index.js';
import type { Note } from '../../ratings/index.js';
import type { DecodedAxle, DecodedTrailer } from '../../spec/index.js';
import type { TiresError } from '../../tires/index.js';
import { type Decision, type Derived, inPounds, over, plus, renamed, result } from '../../trace/index.js';
import type { MissingFact } from '../errors.js';
import { axlePlaces } from './axle-places.js';
import type { NotChecked } from './not-checked.js';
import { joined } from './part-of-answer.js';
import { type RatedTires, tiresOf } from './tires.js';

export interface Stack {
  readonly systems: readonly AxleSystem[];
  /** The tires of each axle; undefined where the spec has none. */
  readonly tires: readonly (RatedTires | undefined)[];
  /** Absent when the axles' places, ratings or their sharing are not given. */
  readonly group?: AxleGroup;
  /** Where the axles act together; known where their places and sharing are, rated or not. */
  readonly at?: Derived<'in'>;
  readonly notes: readonly Note[];
  readonly notChecked: readonly NotChecked[];
  readonly decisions: readonly Decision[];
}

type Problem = AxlesError | TiresError | MissingFact;

const pounds = (symbol: string, figure: Derived<'lb' | 'kg' | 't'> | undefined): Derived<'lb'> | undefined =>
  figure === undefined ? undefined : inPounds(symbol, renamed(symbol, figure));

function systemOf(axle: DecodedAxle, of: string, tires: RatedTires | undefined): Either<AxlesError, AxleSystem> {
  const { wheels } = axle;
  return axleSystem(
    {
      gawr: pounds(`${of} GAWR`, axle.gawr),
      beam: pounds(`${of} beam`, axle.beam),
      springs: pounds(`${of} springs`, axle.springs),
      hubs: pounds(`${of} hubs`, axle.hubs),
      wheels: wheels && {
        each: inPounds(`${of} wheel, each`, renamed(`${of} wheel, each`, wheels.each)),
        count: wheels.count,
      },
      tires: tires?.rating && { each: renamed(`${of} tire, each`, tires.rating.rating), count: tires.spec.count },
    },
    of,
  );
}

interface RatedAxles {
  /** One an axle; undefined where nothing rates it. */
  readonly systems: readonly (AxleSystem | undefined)[];
  readonly tires: readonly (RatedTires | undefined)[];
  readonly notChecked: readonly NotChecked[];
}

/** Rates each axle by its parts; one of which nothing is rated leaves its question open. */
function rated(axles: readonly DecodedAxle[]): Either<Problem, RatedAxles> {
  const systems: (AxleSystem | undefined)[] = [];
  const tires: (RatedTires | undefined)[] = [];
  const notChecked: NotChecked[] = [];
  for (const [index, axle] of axles.entries()) {
    const of = `axle ${index + 1}`;
    const found = axle.tires === undefined ? undefined : tiresOf(axle.tires, of);
    if (found !== undefined && isLeft(found)) return left({ ...found.left, path: `trailer.axles.${index}.tires` });
    tires.push(found?.right);
    notChecked.push(...(found?.right.notChecked ?? []));
    const system = systemOf(axle, of, found?.right);
    if (isLeft(system)) {
      if (system.left.tag !== 'AxleUnknown') return left({ ...system.left, path: `trailer.axles.${index}` });
      systems.push(undefined);
      notChecked.push({
        what: `${of}, and payload by axles and tires`,
        missing: `a rating of ${of}: its GAWR, or its parts`,
        paths: [`trailer.axles.${index}.gawr`],
      });
      continue;
    }
    systems.push(system.right);
    if (system.right.gawr === undefined)
      notChecked.push({
        what: `${of} parts against its GAWR`,
        missing: 'GAWR',
        paths: [`trailer.axles.${index}.gawr`],
      });
    if (system.right.notGiven.length > 0)
      notChecked.push({ what: `${of} parts`, missing: `ratings of ${system.right.notGiven.join(', ')}` });
  }
  return right({ systems, tires, notChecked });
}

/** Where the axles act together, where that is known though they cannot be rated: alike, in their middle. */
function middleOf(trailer: DecodedTrailer): Derived<'in'> | undefined {
  const { axles, sharing } = trailer;
  const [first, ...others] = axlePlaces(trailer).filter((place) => place !== undefined);
  if (first === undefined || others.length + 1 < axles.length || sharing === 'independent') return undefined;
  if (others.length === 0) return first;
  return sharing === undefined ? undefined : result('axle group position', over(plus(first, ...others), axles.length));
}

/** One rate of several says nothing of how they share: it is named, and the axles are taken as without rates. */
function unusedRates({ axles, sharing }: DecodedTrailer): readonly NotChecked[] {
  const missing = axles.flatMap(({ rate }, i) => (rate === undefined ? [i] : []));
  if (sharing !== 'independent' || missing.length === 0 || missing.length === axles.length) return [];
  return [
    {
      what: 'axle loads by the spring rates that are given',
      missing: `the spring rate of ${missing.map((i) => `axle ${i + 1}`).join(', ')}`,
      paths: missing.map((i) => `trailer.axles.${i}.rate`),
    },
  ];
}

/** Rates every axle and, where their places are known, joins them into a group. */
export function stackOf(trailer: DecodedTrailer): Either<Problem, Stack> {
  const { axles, sharing } = trailer;
  if (axles.length === 0) return left({ chapter: 'axles', tag: 'NoAxles', path: 'trailer.axles' });
  const found = rated(axles);
  if (isLeft(found)) return found;
  const { tires } = found.right;
  const systems = found.right.systems.filter((system) => system !== undefined);
  const base = {
    systems,
    tires,
    notes: tires.flatMap((tire) => tire?.notes ?? []),
    notChecked: [...found.right.notChecked, ...unusedRates(trailer)],
    decisions: joined([...systems, ...tires].map((part) => part?.decisions ?? [])),
  };
  const at = middleOf(trailer);
  const places = axlePlaces(trailer);
  const open = (what: string, missing: string, paths: readonly string[]): Either<Problem, Stack> =>
    right({ ...base, ...(at && { at }), notChecked: [...base.notChecked, { what, missing, paths }] });
  if (axles.length > 1 && sharing === undefined)
    return open('axle loads, and payload by axles and tires', 'how the axles share (equalised or independent)', [
      'trailer.sharing',
    ]);
  const unplaced = axles.flatMap((axle, i) => (axle.at === undefined ? [`trailer.axles.${i}.at`] : []));
  if (unplaced.length > 0)
    return open('axle loads, tongue, and payload by axles and tires', 'places of the axles', unplaced);
  if (systems.length < axles.length) return right({ ...base, ...(at && { at }) });
  const standing = systems.map((system, i) => {
    const { rate } = axles[i] as DecodedAxle;
    return {
      system,
      at: places[i] as Derived<'in'>,
      ...(rate && { rate: rate as Derived<'lb/in'> }),
    };
  });
  const group = axleGroup(standing, sharing ?? 'equalised');
  if (isLeft(group)) {
    if (group.left.tag !== 'SharingUnknown') return left({ ...group.left, path: 'trailer.axles' });
    return open(
      'axle loads, tongue, and payload by axles and tires',
      'spring rates: three or more independent axles do not share alike',
      axles.flatMap(({ rate }, i) => (rate === undefined ? [`trailer.axles.${i}.rate`] : [])),
    );
  }
  return right({
    ...base,
    group: group.right,
    at: group.right.at,
    notes: joined([base.notes, group.right.notes]),
    decisions: joined([base.decisions, group.right.decisions]),
  });
}
