/** The running gear of a spec: each axle rated by its weakest part, and the axles as a group. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AxleGroup, type AxleSystem, type AxlesError, axleGroup, axleSystem } from '../../axles/index.js';
import type { Note } from '../../ratings/index.js';
import type { DecodedAxle, DecodedTrailer } from '../../spec/index.js';
import type { TiresError } from '../../tires/index.js';
import { type Decision, type Derived, inInches, inPounds, renamed } from '../../trace/index.js';
import type { MissingFact } from '../errors.js';
import type { NotChecked } from './not-checked.js';
import { joined } from './part-of-answer.js';
import { type RatedTires, tiresOf } from './tires.js';

export interface Stack {
  readonly systems: readonly AxleSystem[];
  /** The tires of each axle; undefined where the spec has none. */
  readonly tires: readonly (RatedTires | undefined)[];
  /** Absent when the axles' places or their sharing are not given. */
  readonly group?: AxleGroup;
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

/** Rates every axle and, where their places are known, joins them into a group. */
export function stackOf(trailer: DecodedTrailer): Either<Problem, Stack> {
  const systems: AxleSystem[] = [];
  const tires: (RatedTires | undefined)[] = [];
  const notChecked: NotChecked[] = [];
  for (const [index, axle] of trailer.axles.entries()) {
    const of = `axle ${index + 1}`;
    const rated = axle.tires === undefined ? undefined : tiresOf(axle.tires, of);
    if (rated !== undefined && isLeft(rated)) return left({ ...rated.left, path: `trailer.axles.${index}.tires` });
    const tire = rated?.right;
    tires.push(tire);
    notChecked.push(...(tire?.notChecked ?? []));
    const system = systemOf(axle, of, tire);
    if (isLeft(system)) return left({ ...system.left, path: `trailer.axles.${index}` });
    systems.push(system.right);
    if (system.right.gawr === undefined) notChecked.push({ what: `${of} parts against its GAWR`, missing: 'GAWR' });
    if (system.right.notGiven.length > 0)
      notChecked.push({ what: `${of} parts`, missing: `ratings of ${system.right.notGiven.join(', ')}` });
  }
  const notes = tires.flatMap((tire) => tire?.notes ?? []);
  const base = {
    systems,
    tires,
    notes,
    notChecked,
    decisions: joined([...systems, ...tires].map((part) => part?.decisions ?? [])),
  };
  if (systems.length === 0) return left({ chapter: 'axles', tag: 'NoAxles', path: 'trailer.axles' });
  const { sharing } = trailer;
  if (systems.length > 1 && sharing === undefined) {
    return right({
      ...base,
      notChecked: [
        ...notChecked,
        {
          what: 'axle loads, and payload by axles and tires',
          missing: 'how the axles share (equalised or independent)',
        },
      ],
    });
  }
  const standing = systems.flatMap((system, index) => {
    const { at, rate } = trailer.axles[index] as DecodedAxle;
    return at === undefined
      ? []
      : [
          {
            system,
            at: inInches(`${system.label} position`, renamed(`${system.label} position`, at)),
            ...(rate && { rate: rate as Derived<'lb/in'> }),
          },
        ];
  });
  if (standing.length < systems.length)
    return right({
      ...base,
      notChecked: [
        ...notChecked,
        { what: 'axle loads, tongue, and payload by axles and tires', missing: 'places of the axles' },
      ],
    });
  const group = axleGroup(standing, sharing ?? 'equalised');
  if (isLeft(group)) return left({ ...group.left, path: 'trailer.axles' });
  return right({
    systems,
    tires,
    group: group.right,
    notes: joined([notes, group.right.notes]),
    notChecked,
    decisions: joined([base.decisions, group.right.decisions]),
  });
}
