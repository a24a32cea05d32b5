/** The running gear of a spec: each axle rated by its weakest part, and the axles as a group. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AxleGroup, type AxleSystem, type AxlesError, axleGroup } from '../../axles/index.js';
import type { Note } from '../../ratings/index.js';
import type { DecodedAxle, DecodedTrailer } from '../../spec/index.js';
import type { TiresError } from '../../tires/index.js';
import { type Decision, type Derived, over, plus, result } from '../../trace/index.js';
import { collected } from '../../units/internal.js';
import type { MissingFact } from '../errors.js';
import { axlePlaces } from './axle-places.js';
import type { OpenQuestion } from './open-questions.js';
import { joined } from './part-of-answer.js';
import { rated } from './rated-axles.js';
import type { RatedTires } from './tires.js';
import { axleName, wantingOfAxles } from './wanting-keys.js';

export interface Stack {
  /** Each axle that something rates, by its weakest part, in lb. */
  readonly systems: readonly AxleSystem[];
  /** The tires of each axle; undefined where the spec has none. */
  readonly tires: readonly (RatedTires | undefined)[];
  /** Absent when the axles' places, ratings or their sharing are not given. */
  readonly group?: AxleGroup;
  /** Where the axles act together; known where their places and sharing are, rated or not. */
  readonly at?: Derived<'in'>;
  /** Remarks: what was assumed, and where sources disagree. */
  readonly notes: readonly Note[];
  /** Open questions, each with the missing facts. */
  readonly notChecked: readonly OpenQuestion[];
  /** Where the program went one way because of a figure; for studies. */
  readonly decisions: readonly Decision[];
}

type Problem = AxlesError | TiresError | MissingFact;

/** Where the axles act together, where that is known though they cannot be rated: alike, in their middle. */
function middleOf(
  { axles, sharing }: DecodedTrailer,
  places: readonly (Derived<'in'> | undefined)[],
): Derived<'in'> | undefined {
  const [first, ...others] = places.filter((place) => place !== undefined);
  if (first === undefined || others.length + 1 < axles.length || sharing === 'independent') return undefined;
  if (others.length === 0) return first;
  return sharing === undefined ? undefined : result('axle group position', over(plus(first, ...others), axles.length));
}

/** Rates of only some axles do not give the sharing: a note names this, and the axles count as without rates. */
function unusedRates({ axles, sharing }: DecodedTrailer): readonly OpenQuestion[] {
  const missing = collected(axles, ({ rate }, i) => (rate === undefined ? [i] : []));
  if (sharing !== 'independent' || missing.length === 0 || missing.length === axles.length) return [];
  return [
    {
      id: 'spring-rates',
      what: 'axle loads by the spring rates that are given',
      missing: `the spring rate of ${missing.map((i) => `axle ${i + 1}`).join(', ')}`,
      paths: missing.map((i) => `${axleName(i).path}.rate`),
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
    notes: collected(tires, (tire) => tire?.notes ?? []),
    notChecked: [...found.right.notChecked, ...unusedRates(trailer)],
    decisions: joined([...systems, ...tires].map((part) => part?.decisions ?? [])),
  };
  const places = axlePlaces(trailer);
  const at = middleOf(trailer, places);
  const open = (question: OpenQuestion): Either<Problem, Stack> =>
    right({ ...base, ...(at && { at }), notChecked: [...base.notChecked, question] });
  if (axles.length > 1 && sharing === undefined)
    return open({
      id: 'sharing',
      what: 'axle loads, and payload by axles and tires',
      missing: 'how the axles share (equalised or independent)',
      paths: ['trailer.sharing'],
    });
  const unplaced = wantingOfAxles(trailer, 'at');
  const asked = { id: 'axle-places', what: 'axle loads, tongue, and payload by axles and tires' };
  if (unplaced.length > 0) return open({ ...asked, missing: 'places of the axles', paths: unplaced });
  if (systems.length < axles.length) return right({ ...base, ...(at && { at }) });
  const standing = systems.map((system, i) => ({
    system,
    at: places[i] as Derived<'in'>,
    rate: (axles[i] as DecodedAxle).rate,
  }));
  const group = axleGroup(standing, sharing ?? 'equalised');
  if (isLeft(group)) {
    if (group.left.tag !== 'SharingUnknown') return left({ ...group.left, path: 'trailer.axles' });
    return open({
      ...asked,
      missing: 'spring rates: three or more independent axles do not share alike',
      paths: wantingOfAxles(trailer, 'rate'),
    });
  }
  return right({
    systems,
    tires,
    group: group.right,
    at: group.right.at,
    notChecked: base.notChecked,
    notes: joined([base.notes, group.right.notes]),
    decisions: joined([base.decisions, group.right.decisions]),
  });
}
