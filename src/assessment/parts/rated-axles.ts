/** Each axle of a spec with its tires, rated by its parts. */
import { type Either, isLeft, left, right } from 'fp-ts/lib/Either.js';
import { type AxleSystem, type AxlesError, axleSystem } from '../../axles/index.js';
import { checkId } from '../../ratings/index.js';
import type { DecodedAxle } from '../../spec/index.js';
import type { TiresError } from '../../tires/index.js';
import { type Derived, inPounds, renamed } from '../../trace/index.js';
import type { OpenQuestion } from './open-questions.js';
import { type RatedTires, tiresOf } from './tires.js';
import { axleName } from './wanting-keys.js';

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
  /** One per axle; undefined where no part of it has a rating. */
  readonly systems: readonly (AxleSystem | undefined)[];
  readonly tires: readonly (RatedTires | undefined)[];
  readonly notChecked: readonly OpenQuestion[];
}

/** Rates each axle by its parts; an axle without any rating stays an open question. */
export function rated(axles: readonly DecodedAxle[]): Either<AxlesError | TiresError, RatedAxles> {
  const systems: (AxleSystem | undefined)[] = [];
  const tires: (RatedTires | undefined)[] = [];
  const notChecked: OpenQuestion[] = [];
  for (const [index, axle] of axles.entries()) {
    const name = axleName(index);
    const { of, id, path } = name;
    const found = axle.tires === undefined ? undefined : tiresOf(axle.tires, name);
    if (found !== undefined && isLeft(found)) return left({ ...found.left, path: `${path}.tires` });
    tires.push(found?.right);
    notChecked.push(...(found?.right.notChecked ?? []));
    const system = systemOf(axle, of, found?.right);
    if (isLeft(system)) {
      if (system.left.tag !== 'AxleUnknown') return left({ ...system.left, path });
      systems.push(undefined);
      notChecked.push({
        id: `${id}/rating`,
        what: `${of}, and payload by axles and tires`,
        missing: `a rating of ${of}: its GAWR, or its parts`,
        paths: [`${path}.gawr`],
      });
      continue;
    }
    systems.push(system.right);
    if (system.right.gawr === undefined)
      notChecked.push({
        id: checkId('GAWR', of),
        what: `${of} parts against its GAWR`,
        missing: 'GAWR',
        paths: [`${path}.gawr`],
      });
    if (system.right.notGiven.length > 0)
      notChecked.push({
        id: `${id}/parts`,
        what: `${of} parts`,
        missing: `ratings of ${system.right.notGiven.join(', ')}`,
        paths: system.right.notGiven.map((part) => `${path}.${part}${axle[part] === undefined ? '' : '.molded'}`),
      });
  }
  return right({ systems, tires, notChecked });
}
