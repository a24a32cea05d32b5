/** Contradictions of the tow side: where the ball stands against the kind of hitch, and the two ratings of one label. */
import { constant, type Derived, minus } from '../../trace/index.js';
import { inch } from '../../units/index.js';
import type { DecodedRules } from '../types/rules.js';
import type { DecodedTow } from '../types/tow.js';
import type { DecodedTrailer } from '../types/trailer.js';
import { contradiction, type Found, gathered, inOrder, type Partly } from './found.js';

type Hitch = DecodedTrailer['hitch'] | undefined;
type Inches = Derived<'in'>;

const atAxle = constant(inch(0));

/** A coupler stands over or behind the rear axle, a gooseneck over or ahead of it. */
function ofHitch(hitch: Hitch, overhang: Inches): Found {
  const key = 'tow.overhang';
  const axle = 'the rear axle';
  const found =
    hitch === 'ball'
      ? inOrder(['', axle, atAxle], '<=', [key, 'the ball', overhang])
      : inOrder([key, 'the ball', overhang], '<=', ['', axle, atAxle]);
  const here = found.problems.filter(({ path }) => path === key);
  const needed = hitch === 'ball' ? '"gooseneck" for a ball ahead of the rear axle' : '"ball" for one behind it';
  return {
    problems: here.length === 0 ? [] : [...here, contradiction('trailer.hitch', `"${hitch}"`, needed)],
    decisions: found.decisions,
  };
}

/** The ball stands behind the front axle. */
const behindFront = (overhang: Inches, wheelbase: Inches | undefined): Found =>
  inOrder(['tow.overhang', 'how far the ball stands ahead of the rear axle', minus(atAxle, overhang)], '<', [
    'tow.wheelbase',
    'the wheelbase',
    wheelbase,
  ]);

/** Contradictions of the tow side. */
export function towContradictions(hitch: Hitch, tow: Partly<DecodedTow>, rules: Partly<DecodedRules>): Found {
  const { overhang, wheelbase, gvwr } = tow;
  const measured = overhang === undefined || overhang === 'unknown' ? undefined : overhang;
  const gcwr = rules.labelGcwr === 'not shown' ? undefined : rules.labelGcwr;
  const found = [
    ...(measured === undefined || hitch === undefined ? [] : [ofHitch(hitch, measured)]),
    ...(measured === undefined || hitch !== 'gooseneck' ? [] : [behindFront(measured, wheelbase)]),
    inOrder(['tow.gvwr', 'the GVWR of the vehicle', gvwr], '<=', [
      'rules.labelGcwr',
      'the combination rating on its label',
      gcwr,
    ]),
  ];
  return gathered(found);
}
