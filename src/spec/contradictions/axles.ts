/** Contradictions of an axle: its label against its parts, its tires against its wheels; and of the axles among each other. */
import { isLeft } from 'fp-ts/lib/Either.js';
import { type AxleParts, axleSystem } from '../../axles/index.js';
import { tireLoadRating, wordsForTires } from '../../tires/index.js';
import type { Derived } from '../../trace/index.js';
import { fromWire, lb, roundCapacityDown, roundLoadUp, show } from '../../units/index.js';
import { orNone } from '../../units/internal.js';
import type { Problem } from '../errors.js';
import type { DecodedAxle, DecodedTires } from '../types/axles.js';
import { contradiction, type Found, gathered, inOrder, nothingFound, type Partly } from './found.js';

type Axle = Partly<DecodedAxle>;
type Tires = Partly<DecodedTires>;

const fitsFitment = (count: number, fitment: DecodedTires['fitment'] | undefined): boolean =>
  fitment === 'single' ? count === 2 : count % 4 === 0;

/** An axle has a tire on either side, or a pair, and a wheel under each. */
function countsOf({ tires, wheels }: Axle, path: string): readonly Problem[] {
  const { count, fitment } = orNone(tires);
  if (count === undefined) return [];
  const fits = fitsFitment(count, fitment);
  const needed =
    fitment === 'single'
      ? '2 tires when single, or the fitment "dual"'
      : '4 or 8 tires when dual, or the fitment "single"';
  return [
    ...(fits || fitment === undefined
      ? []
      : [contradiction(`${path}.tires.count`, `${count} tires, ${fitment}`, needed)]),
    ...(wheels?.count === undefined || wheels.count === count
      ? []
      : [contradiction(`${path}.wheels.count`, `${wheels.count} wheels for ${count} tires`, 'a wheel for each tire')]),
  ];
}

interface RatedTire {
  readonly each?: Derived<'lb'>;
  readonly problems: readonly Problem[];
}

/** What one tire may carry; a sidewall that cannot be read is a fault of the spec, a size that no table has is not. */
function rated({ designation, fitment, molded }: Tires, path: string): RatedTire {
  if (designation === undefined || fitment === undefined) return { problems: [] };
  const { dual } = orNone(molded);
  const tire = { designation, ...(molded && { molded }) };
  const found = tireLoadRating(tire, { fitment, on: 'trailer' });
  if (!isLeft(found)) return { each: found.right.rating, problems: [] };
  const { left } = found;
  if (left.tag !== 'UnreadableDesignation' && left.tag !== 'DualAboveSingle') return { problems: [] };
  const dualMolded = left.tag === 'DualAboveSingle' && dual !== undefined;
  const at = dualMolded ? `${path}.molded.dual` : `${path}.designation`;
  return { problems: [{ path: at, fault: 'refused', got: `"${designation}"`, needed: wordsForTires(left) }] };
}

/** The key that says what a part bears: of tires, the molded load where there is one. */
function keyOf(part: string, { tires }: Axle): string {
  if (part === 'wheels') return 'wheels.each';
  if (part !== 'tires') return part;
  const molded = tires?.fitment === undefined ? undefined : tires.molded?.[tires.fitment];
  return molded === undefined ? 'tires.designation' : `tires.molded.${tires?.fitment}`;
}

/** The label against every part, each reported at the GAWR and at the part. */
function againstLabel(axle: Axle, path: string, each: Derived<'lb'> | undefined): readonly Problem[] {
  const { gawr, beam, springs, hubs, wheels, tires } = axle;
  const [wheel, count] = [wheels?.each, tires?.count];
  // Parts whose number is wrong are not weighed against the label: one fault is enough.
  const agree = count === undefined || wheels?.count === count;
  let parts: AxleParts = {
    gawr,
    beam,
    springs,
    hubs,
    wheels: wheel && wheels?.count !== undefined && agree ? { each: wheel, count: wheels.count } : undefined,
    tires: each && count !== undefined && fitsFitment(count, tires?.fitment) ? { each, count } : undefined,
  };
  const problems: Problem[] = [];
  for (;;) {
    const system = axleSystem(parts, path);
    if (!isLeft(system) || system.left.tag !== 'GawrAboveParts') return problems;
    const { part, bears } = system.left;
    const [label, borne] = [
      show(roundLoadUp(fromWire(system.left.gawr), lb(1))),
      show(roundCapacityDown(fromWire(bears), lb(1))),
    ];
    problems.push(
      contradiction(`${path}.gawr`, label, `at most ${borne}, the rating of its ${part}`),
      contradiction(
        `${path}.${keyOf(part, axle)}`,
        `${borne} for the axle`,
        `at least ${label}, the GAWR on the label`,
      ),
    );
    parts = { ...parts, [part]: undefined };
  }
}

/** Contradictions of one axle. */
export function axleContradictions(axle: Axle, index: number): Found {
  const path = `trailer.axles.${index}`;
  const tire = rated(orNone(axle.tires), `${path}.tires`);
  const problems = [...countsOf(axle, path), ...tire.problems, ...againstLabel(axle, path, tire.each)];
  return { problems, decisions: [] };
}

/** Axles are listed from the front, no two at one place. */
export function orderOfAxles(axles: readonly (Axle | undefined)[]): Found {
  const found = axles.map((axle, i): Found => {
    const before = axles[i - 1];
    if (before === undefined) return nothingFound;
    return inOrder([`trailer.axles.${i - 1}.at`, `where axle ${i} stands`, before.at], '<', [
      `trailer.axles.${i}.at`,
      `where axle ${i + 1} stands; list the axles from the front`,
      axle?.at,
    ]);
  });
  return gathered(found);
}
